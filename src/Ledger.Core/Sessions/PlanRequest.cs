namespace Ledger.Core.Sessions;

/// <summary>What is to be developed, before anything is worked out.</summary>
public sealed record PlanRequest
{
    /// <summary>The process's name; empty for a trip without one.</summary>
    public string Process { get; init; } = "";

    /// <summary>The sheets, in the user's order.</summary>
    public required IReadOnlyList<RequestedSheets> Sheets { get; init; }

    /// <summary>Developing times in place of the process's.</summary>
    public GroupTimes Times { get; init; } = GroupTimes.None;

    /// <summary>
    /// The baths, one of each item and the first of a pair, divided by commas or blanks; null or not named for the only
    /// one that fits.
    /// </summary>
    public string? Bath { get; init; }
}

/// <summary>Sheets or rolls of one film and group.</summary>
public sealed record RequestedSheets
{
    /// <summary>The film's code.</summary>
    public required string Film { get; init; }

    /// <summary>How many.</summary>
    public required int Count { get; init; }

    /// <summary>The development group; may be empty.</summary>
    public string Group { get; init; } = "";

    /// <summary>
    /// Where known sheets are: holder sides (E07-1, E07-2), a box of exposed sheets (fen80 N), or sheets by number
    /// (#12); null for sheets that are only counted and come out of a box of unexposed film.
    /// </summary>
    public string? From { get; init; }

    /// <summary>What is on them; may be empty.</summary>
    public string Subject { get; init; } = "";

    /// <summary>
    /// The batch that the user puts them into; null where the plan chooses. Lines of one film, group and number make a
    /// batch, whatever the limit.
    /// </summary>
    public int? Batch { get; init; }

    /// <summary>The holder they were exposed in; may be empty.</summary>
    public string Holder { get; init; } = "";
}
