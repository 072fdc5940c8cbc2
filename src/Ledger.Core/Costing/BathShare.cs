using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Costing;

/// <summary>The cost of a bath, charged to its work by area against its capacity.</summary>
/// <param name="Bath">The bath's name.</param>
/// <param name="Value">What the chemicals cost that it was mixed from.</param>
/// <param name="Capacity">The area it can take in all; none when the user has set no capacity.</param>
public sealed record BathShare(string Bath, Money Value, Area Capacity)
{
    /// <summary>Whether everything that was poured into it had a price.</summary>
    public bool IsPriced { get; init; } = true;

    /// <summary>Where it stands.</summary>
    public PlaceId Place { get; init; }

    /// <summary>
    /// Whether its work is counted by the films' fixer factors, as a fixer's is; every other bath's is counted by area
    /// alone.
    /// </summary>
    public bool IsWeighted { get; init; }

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
public sealed record AddedValue(Money Value, Area Worked)
{
    /// <summary>The number of the entry that added it.</summary>
    public long Entry { get; init; }

    /// <summary>Whether it was added in the period that is read, not before.</summary>
    public bool IsNew { get; init; }
}

/// <summary>Work on a bath: from so much that it had taken before to so much after.</summary>
/// <param name="Share">The bath's cost and capacity.</param>
/// <param name="Before">The weighted area it had taken before.</param>
/// <param name="After">The weighted area it had taken after.</param>
public sealed record BathPart(BathShare Share, Area Before, Area After)
{
    /// <summary>The part of the bath's cost that this work used up.</summary>
    public Money UsedUp => Share.UsedUpBy(After) - Share.UsedUpBy(Before);
}
