using Ledger.Core.Measures;

namespace Ledger.Core.Costing;

/// <summary>The cost of a bath, charged to its work by area against its capacity.</summary>
/// <param name="Bath">The bath's name.</param>
/// <param name="Value">What the chemicals cost that it was mixed from.</param>
/// <param name="Capacity">The area it can take in all; none when the user has set no capacity.</param>
public sealed record BathShare(string Bath, Money Value, Area Capacity)
{
    /// <summary>What was added to it later, each spread over the capacity that was left then.</summary>
    public IReadOnlyList<AddedValue> TopUps { get; init; } = [];

    /// <summary>What all of it cost.</summary>
    public Money Total => TopUps.Aggregate(Value, (sum, added) => sum + added.Value);

    /// <summary>What so much work, from the first square inch on, has used up: never more than the whole.</summary>
    public Money UsedUpBy(Area weighted) => TopUps.Aggregate(
        Part(Value, Area.Zero, weighted), (sum, added) => sum + Part(added.Value, added.Worked, weighted));

    /// <summary>What is left after so much work.</summary>
    public Money LeftAfter(Area weighted) => Total - UsedUpBy(weighted);

    private Money Part(Money value, Area from, Area weighted)
    {
        var room = Capacity.LessUsed(from).Hundredths;
        var used = Math.Min(weighted.LessUsed(from).Hundredths, room);
        return room == 0 ? Money.Zero : value.PartOf(used, room);
    }
}

/// <summary>Value that was added to a bath.</summary>
/// <param name="Value">What it cost.</param>
/// <param name="Worked">The weighted area that had passed through the bath before.</param>
public sealed record AddedValue(Money Value, Area Worked);
