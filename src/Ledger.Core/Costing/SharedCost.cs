using Ledger.Core.Measures;

namespace Ledger.Core.Costing;

/// <summary>
/// What the lines of one delivery cost on the shelf. What was paid for all of them together is shared by their value
/// with the largest remainder; the sum is changed into the ledger's currency once and shared the same way, so that the
/// lines add up to the delivery.
/// </summary>
public sealed class SharedCost
{
    /// <summary>Shares the costs of a delivery.</summary>
    /// <param name="lines">The price of a pack and the packs of each line.</param>
    /// <param name="discount">Taken off for all lines; at most what they are worth.</param>
    /// <param name="shipping">The shipping.</param>
    /// <param name="duty">Duty and tax.</param>
    /// <param name="rate">What one unit of the delivery's currency is worth in the ledger's.</param>
    public SharedCost(IReadOnlyList<(Money Price, decimal Packs)> lines, Money discount, Money shipping,
        Money duty, decimal rate)
    {
        long[] values = [.. lines.Select(line => line.Price.At(line.Packs).Millionths)];
        Value = new(values.Sum());
        var discounts = Share.Split(discount.Millionths, values);
        var shippings = Share.Split(shipping.Millionths, values);
        var duties = Share.Split(duty.Millionths, values);
        Lines =
        [
            .. lines.Select((line, i) => new LandedCost(
                line.Price, line.Packs, new(discounts[i]), new(shippings[i]), new(duties[i]), rate)),
        ];
        Costs = OnShelf(Lines);
        Total = new(Costs.Sum(cost => cost.Millionths));
    }

    /// <summary>
    /// What each line of a delivery cost on the shelf: the delivery's whole sum changed into the ledger's currency
    /// once, and shared by what was paid for the lines. A line alone may so be a millionth off its own amount.
    /// </summary>
    /// <param name="lines">All lines of one delivery, with the same rate; at least one.</param>
    public static IReadOnlyList<Money> OnShelf(IReadOnlyList<LandedCost> lines)
    {
        long[] paid = [.. lines.Select(line => line.Paid.Millionths)];
        return [.. Share.Split(new Money(paid.Sum()).At(lines[0].Rate).Millionths,
            paid).Select(cost => new Money(cost))];
    }

    /// <summary>What the goods are worth before anything is taken off or added, in the delivery's currency.</summary>
    public Money Value { get; }

    /// <summary>Each line with its shares, in the delivery's currency.</summary>
    public IReadOnlyList<LandedCost> Lines { get; }

    /// <summary>What each line cost on the shelf, in the ledger's currency.</summary>
    public IReadOnlyList<Money> Costs { get; }

    /// <summary>What all of it cost, in the ledger's currency: the sum of <see cref="Costs"/>.</summary>
    public Money Total { get; }
}
