using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Entries;

/// <summary>
/// What is really there is counted or measured; the difference from the book is posted with its reason.
/// </summary>
public sealed record StockCount : Entry
{
    /// <summary>The code of a container, or of an item for all its containers together.</summary>
    public required string What { get; init; }

    /// <summary>What is really there.</summary>
    public required Quantity Found { get; init; }

    /// <summary>Why it differs: dregs, spill, evaporation, miscounted…</summary>
    public required string Reason { get; init; }

    /// <inheritdoc/>
    public override string Kind => "count";
}
