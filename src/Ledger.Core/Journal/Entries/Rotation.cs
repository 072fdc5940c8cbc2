using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Entries;

/// <summary>
/// Two-bath fixing goes on by one step: the first bath is discarded, the second moves up, a new one is second.
/// </summary>
public sealed record Rotation : Entry
{
    /// <summary>Either bath of the pair; null when there is only one pair.</summary>
    public string? Bath { get; init; }

    /// <summary>The name of the new bath.</summary>
    public required string NewBath { get; init; }

    /// <summary>
    /// The code of the item it is mixed from; null for that of the bath that moves up. So are the next three.
    /// </summary>
    public string? Item { get; init; }

    /// <summary>How much working solution is made.</summary>
    public Volume? WorkingVolume { get; init; }

    /// <summary>The dilution.</summary>
    public Dilution? Dilution { get; init; }

    /// <summary>What a litre can take.</summary>
    public Capacity? Capacity { get; init; }

    /// <summary>What was measured out; null for what the dilution asks for.</summary>
    public Quantity? Amount { get; init; }

    /// <summary>The container to draw from; null for the one used first.</summary>
    public string? Container { get; init; }

    /// <summary>Why the first bath goes.</summary>
    public string Reason { get; init; } = "rotated";

    /// <summary>The waste jug that takes the first bath; null when it goes elsewhere.</summary>
    public string? Jug { get; init; }

    /// <summary>
    /// Whether more may be poured than the book holds; the difference is then booked as found by a count.
    /// </summary>
    public bool BooksDifference { get; init; }

    /// <inheritdoc/>
    public override string Kind => "rotation";
}
