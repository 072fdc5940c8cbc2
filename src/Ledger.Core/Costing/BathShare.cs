using Ledger.Core.Measures;

namespace Ledger.Core.Costing;

/// <summary>The cost of a bath, charged to its work by area against its capacity.</summary>
/// <param name="Bath">The bath's name.</param>
/// <param name="Value">What the chemicals in it cost.</param>
/// <param name="Capacity">The area it can take in all; none when the user has set no capacity.</param>
public sealed record BathShare(string Bath, Money Value, Area Capacity)
{
    /// <summary>What so much work, from the first square inch on, has used up: never more than the whole.</summary>
    public Money UsedUpBy(Area weighted) => Capacity.Hundredths == 0 ? Money.Zero
        : Value.PartOf(Math.Min(weighted.Hundredths, Capacity.Hundredths), Capacity.Hundredths);

    /// <summary>What is left after so much work.</summary>
    public Money LeftAfter(Area weighted) => Value - UsedUpBy(weighted);
}
