namespace Ledger.Core.Film;

/// <summary>How a side stands.</summary>
public enum SideState
{
    /// <summary>Nothing in it.</summary>
    Empty,

    /// <summary>An unexposed sheet in it.</summary>
    Loaded,

    /// <summary>An exposed sheet in it, which waits to be unloaded.</summary>
    Exposed,
}

/// <summary>A side of a holder on a day.</summary>
/// <param name="Side">The side.</param>
/// <param name="Sheet">The sheet in it; null when it is empty.</param>
/// <param name="Today">The day.</param>
public sealed record SideReading(HolderSide Side, Sheet? Sheet, LocalDate Today)
{
    private static readonly string[] Names = ["empty", "loaded", "exposed"];

    /// <summary>Empty, loaded or exposed. A side that is out of service keeps its film.</summary>
    public SideState State =>
        Sheet is null ? SideState.Empty : Sheet.Exposure is null ? SideState.Loaded : SideState.Exposed;

    /// <summary>The state in words: loaded, out of service…</summary>
    public string StateName => Side.OutOfService is null ? Names[(int)State]
        : Sheet is null ? "out of service" : $"out of service, {Names[(int)State]}";

    /// <summary>How many days the sheet has been in this state; null when the side is empty.</summary>
    public int? Days => Sheet is null ? null : Period.DaysBetween(Sheet.Exposure?.Date ?? Sheet.LoadedOn, Today);

    /// <summary>Whether that is longer than the user's limit for it.</summary>
    public bool IsOverdue(FilmSettings limits) => State switch
    {
        SideState.Loaded => Days > limits.LoadedDays,
        SideState.Exposed => Days > limits.ExposedDays,
        _ => false,
    };

    /// <summary>Whether it has spoiled so many sheets that the user should look at it.</summary>
    public bool IsFlagged(FilmSettings limits) =>
        limits.SideFaults > 0 && Side.OutOfService is null && Side.OwnFaults >= limits.SideFaults;
}
