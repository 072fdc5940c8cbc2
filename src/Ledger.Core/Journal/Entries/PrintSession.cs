namespace Ledger.Core.Journal.Entries;

/// <summary>A session of printing: sheets of paper and test strips go through the baths for paper.</summary>
public sealed record PrintSession : Entry
{
    /// <summary>The session's name, such as P12.</summary>
    public required string Session { get; init; }

    /// <summary>What was printed.</summary>
    public required IReadOnlyList<PrintLine> Lines { get; init; }

    /// <summary>
    /// The fixer that the paper went through, the first one of a pair; null for the only one for paper.
    /// </summary>
    public string? Bath { get; init; }

    /// <summary>The negatives that were printed, by their numbers or those of their sheets; may be empty.</summary>
    public IReadOnlyList<string> Negatives { get; init; } = [];

    /// <inheritdoc/>
    public override string Kind => "print-session";
}

/// <summary>Sheets of one paper for one purpose, or strips cut from them.</summary>
public sealed record PrintLine
{
    /// <summary>The paper's code.</summary>
    public required string Item { get; init; }

    /// <summary>
    /// How many sheets left the box, whole or to be cut; none when the strips come from a sheet that was cut before.
    /// </summary>
    public int Sheets { get; init; }

    /// <summary>How many strips went through the baths; 0 when the sheets did whole.</summary>
    public int Strips { get; init; }

    /// <summary>Into how many strips a sheet is cut.</summary>
    public int StripsPerSheet { get; init; } = 4;

    /// <summary>What they were for.</summary>
    public Sessions.PrintPurpose Purpose { get; init; }

    /// <summary>The box to draw from; null for the one used first.</summary>
    public string? Container { get; init; }

    /// <summary>The user's note.</summary>
    public string Note { get; init; } = "";
}
