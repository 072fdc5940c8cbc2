namespace Ledger.Core.Journal.Entries;

/// <summary>
/// An earlier entry is amended: some of its fields say something else from now on. What it said before stays in the
/// journal beside it.
/// </summary>
public sealed record Amendment : Entry
{
    /// <summary>The number of the entry to amend; 0 when <see cref="Reference"/> names it.</summary>
    public long Number { get; init; }

    /// <summary>The key of the entry to amend; null when the number is given.</summary>
    public string? Reference { get; init; }

    /// <summary>What it says in place of what it said.</summary>
    public required IReadOnlyList<FieldChange> Changes { get; init; }

    /// <summary>Why.</summary>
    public required string Reason { get; init; }

    /// <inheritdoc/>
    public override string Kind => "amendment";
}

/// <summary>A field of an entry, or of a line of it, says something else.</summary>
/// <param name="Line">The line, counting from 1; 0 for a field of the entry itself. One past the last line adds a
/// line.</param>
/// <param name="Field">The field's name as a column has it; empty to take the whole line away.</param>
/// <param name="Value">The new value as text; empty to leave it unsaid.</param>
public sealed record FieldChange(int Line, string Field, string Value);
