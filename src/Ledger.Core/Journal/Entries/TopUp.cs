using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Entries;

/// <summary>
/// Fresh solution is added to a bath: replenisher to a developer, working solution to what the film has carried away.
/// It does not add to the bath's capacity: what the film left in it is still there.
/// </summary>
public sealed record TopUp : Entry
{
    /// <summary>The bath.</summary>
    public required string Bath { get; init; }

    /// <summary>The fresh solution that was added.</summary>
    public required Volume Added { get; init; }

    /// <summary>The code of the item it was made from; null for the bath's own.</summary>
    public string? Item { get; init; }

    /// <summary>How it was diluted; null for the bath's own dilution.</summary>
    public Dilution? Dilution { get; init; }

    /// <summary>What was measured out; null for what the dilution asks for.</summary>
    public Quantity? Amount { get; init; }

    /// <summary>The used solution that was poured off to make room.</summary>
    public Volume Bled { get; init; }

    /// <summary>The waste jug that takes what was poured off; null when it goes elsewhere.</summary>
    public string? Jug { get; init; }

    /// <summary>The container to draw from; null for the one used first.</summary>
    public string? Container { get; init; }

    /// <summary>
    /// Whether more may be poured than the book holds; the difference is then booked as found by a count.
    /// </summary>
    public bool BooksDifference { get; init; }

    /// <inheritdoc/>
    public override string Kind => "top-up";
}
