namespace Ledger.Core.Journal.Entries;

/// <summary>
/// Reverses an earlier entry and names it. Its date is always that of the entry it reverses, so that no day shows a state that never was.
/// </summary>
public sealed record Correction : Entry
{
    /// <summary>The number of the entry to reverse.</summary>
    public required long Reverses { get; init; }

    /// <summary>Why.</summary>
    public required string Reason { get; init; }

    /// <inheritdoc/>
    public override string Kind => "correction";
}
