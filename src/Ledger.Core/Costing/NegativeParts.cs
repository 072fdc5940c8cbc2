using Ledger.Core.Measures;

namespace Ledger.Core.Costing;

/// <summary>What a negative cost on the average, by what it went for. The four parts add up to the whole.</summary>
/// <param name="Film">The film of the negative itself.</param>
/// <param name="Spoiled">Film that became no negative, laid upon those that did.</param>
/// <param name="Chemistry">Chemistry.</param>
/// <param name="Supplies">Supplies.</param>
public sealed record NegativeParts(Money Film, Money Spoiled, Money Chemistry, Money Supplies)
{
    /// <summary>The names of the parts in their order.</summary>
    public static IReadOnlyList<string> Names { get; } = ["film", "spoiled film", "chemistry", "supplies"];

    /// <summary>The parts in the order of their names.</summary>
    public IReadOnlyList<Money> All => [Film, Spoiled, Chemistry, Supplies];

    /// <summary>All of it.</summary>
    public Money Total => Film + Spoiled + Chemistry + Supplies;

    /// <summary>The parts of what a negative cost; null when there is none.</summary>
    public static NegativeParts? Of(FilmCost cost)
    {
        if (cost.PerNegative is not { } whole)
            return null;
        Money Each(Money part) => part.Per(cost.Negatives)!.Value;
        var (spoiled, chemistry, supplies) = (Each(cost.Spoiled), Each(cost.Chemistry), Each(cost.Supplies));
        return new(whole - spoiled - chemistry - supplies, spoiled, chemistry, supplies);
    }
}
