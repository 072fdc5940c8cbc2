using Ledger.Core.Measures;

namespace Ledger.Core.Stock;

/// <summary>So much taken from one container, and what it cost.</summary>
/// <param name="From">The container before the draw.</param>
/// <param name="Quantity">What is taken.</param>
/// <param name="Cost">The cost of what is taken.</param>
public sealed record Draw(Container From, Quantity Quantity, Money Cost)
{
    /// <summary>
    /// Takes <paramref name="wanted"/> from containers in the order in which a worker reaches for them: open before
    /// sealed, then first in, first out. What could not be found is in <paramref name="missing"/>.
    /// </summary>
    public static IReadOnlyList<Draw> InOrder(IEnumerable<Container> containers, Quantity wanted,
        out Quantity missing) =>
        AsGiven(Reach(containers), wanted, out missing);

    /// <summary>As <see cref="InOrder"/>, from containers that are in their order already.</summary>
    public static IReadOnlyList<Draw> AsGiven(IEnumerable<Container> containers, Quantity wanted, out Quantity missing)
    {
        var draws = new List<Draw>();
        foreach (var container in containers)
        {
            if (wanted.IsZero)
                break;
            var taken = container.Held < wanted ? container.Held : wanted;
            if (taken.IsZero)
                continue;
            draws.Add(new(container, taken, container.CostOf(taken)));
            wanted -= taken;
        }

        missing = wanted;
        return draws;
    }

    /// <summary>The containers in the order in which they are reached for.</summary>
    public static IEnumerable<Container> Reach(IEnumerable<Container> containers) => containers
        .OrderBy(container => container.IsSealed)
        .ThenBy(container => container.Lot.ReceivedOn)
        .ThenBy(container => container.Lot.Id.Value)
        .ThenBy(container => container.Place.Value);
}
