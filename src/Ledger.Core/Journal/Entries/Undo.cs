namespace Ledger.Core.Journal.Entries;

/// <summary>
/// Undoes an earlier entry and names it. Its date is always that of the entry it takes back, so that no day shows a
/// state that never was.
/// </summary>
public sealed record Undo : Entry
{
    /// <summary>
    /// The number of the entry to take back; the rules put it in when <see cref="Reference"/> names the entry.
    /// </summary>
    public long Number { get; init; }

    /// <summary>
    /// The caller's own name for the entry to take back, its key, in place of the number; null when the number is
    /// given.
    /// </summary>
    public string? Reference { get; init; }

    /// <summary>Why.</summary>
    public required string Reason { get; init; }

    /// <inheritdoc/>
    public override string Kind => "undo";
}
