using Ledger.Core.Baths;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Entries;

/// <summary>A working solution is mixed that will be used again.</summary>
public sealed record BathMixing : Entry
{
    /// <summary>The name of the new bath.</summary>
    public required string Bath { get; init; }

    /// <summary>The code of the item it is mixed from.</summary>
    public required string Item { get; init; }

    /// <summary>How much working solution is made.</summary>
    public required Volume WorkingVolume { get; init; }

    /// <summary>The dilution; null for the item's usual one.</summary>
    public Dilution? Dilution { get; init; }

    /// <summary>What was measured out; null for what the dilution asks for.</summary>
    public Quantity? Amount { get; init; }

    /// <summary>What will pass through it.</summary>
    public BathMaterial Material { get; init; }

    /// <summary>What a litre can take; null for the item's own.</summary>
    public Capacity? Capacity { get; init; }

    /// <summary>The bath that stands before it in two-bath fixing; null when it stands alone or first.</summary>
    public string? PairedWith { get; init; }

    /// <summary>What it stands in between sessions.</summary>
    public Keeping.WorkingContainer StandsIn { get; init; }

    /// <summary>The container to draw from; null for the one used first.</summary>
    public string? Container { get; init; }

    /// <summary>
    /// Whether more may be poured than the book holds; the difference is then booked as found by a count.
    /// </summary>
    public bool BooksDifference { get; init; }

    /// <inheritdoc/>
    public override string Kind => "bath";
}
