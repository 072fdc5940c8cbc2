namespace Ledger.Core.Film;

/// <summary>A number that was given to a negative once and that no negative has now: why there is a gap.</summary>
/// <param name="Sheet">The sheet that had it; null when it was not kept.</param>
/// <param name="Entry">The number of the entry that gave it.</param>
/// <param name="IsTakenBack">Whether that entry was taken back; otherwise the sheet became something else.</param>
public sealed record FormerNegative(SheetId? Sheet, long Entry, bool IsTakenBack)
{
    /// <summary>The gap as a sentence without a full stop.</summary>
    /// <param name="negative">The number.</param>
    public string Sentence(string negative) => IsTakenBack
        ? $"{negative} was given by entry {Entry}, which was undone; a number is not given twice"
        : $"{negative} was the number of {(Sheet is { } sheet ? $"sheet {sheet}" : "a sheet")} of entry "
            + $"{Entry}, which is not a negative now; a number is not given "
            + $"twice{(Sheet is { } known ? $" (`show sheet {known}` tells its story)" : "")}";
}
