namespace Ledger.Core.Journal.Entries;

/// <summary>
/// Sheets leave their holders: exposed ones for the box of their film and group, the others back to a box or envelope.
/// Sheets in a box of exposed ones that was labelled wrongly go to another one in the same way.
/// </summary>
public sealed record Unload : Entry
{
    /// <summary>
    /// The sides, such as E07-2, or sheets such as #12, or a box of exposed sheets such as "fen80 N".
    /// </summary>
    public required IReadOnlyList<string> From { get; init; }

    /// <summary>Another group than the exposure notes say; empty for the one they say.</summary>
    public string Group { get; init; } = "";

    /// <summary>The box or envelope for sheets that were not exposed; null for the one they came out of.</summary>
    public string? To { get; init; }

    /// <inheritdoc/>
    public override string Kind => "unload";
}
