namespace Ledger.Core.Journal.Entries;

/// <summary>
/// Reverses an earlier entry and names it. Its date is always that of the entry it reverses, so that no day shows a state that never was.
/// </summary>
public sealed record Correction : Entry
{
    /// <summary>The number of the entry to reverse; the rules put it in when <see cref="Reference"/> names the entry.</summary>
    public long Reverses { get; init; }

    /// <summary>The caller's own name for the entry to reverse, its key, in place of the number; null when the number is given.</summary>
    public string? Reference { get; init; }

    /// <summary>Why.</summary>
    public required string Reason { get; init; }

    /// <inheritdoc/>
    public override string Kind => "correction";
}
