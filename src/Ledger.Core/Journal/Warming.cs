using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal;

/// <summary>
/// How long a box stays closed after the cold. The ledger knows days, not hours, so hours that end within a day leave
/// that day open: on it the box may have been warm or not, and who opens it is asked.
/// </summary>
/// <param name="Since">The day it was taken out.</param>
/// <param name="From">The first day on which it may be warm.</param>
/// <param name="Hours">How many hours it stays closed; null where the user named the day.</param>
public sealed record Warming(LocalDate Since, LocalDate From, int? Hours)
{
    private const int HoursOfADay = 24;

    /// <summary>After a move out of the cold; null where nothing has to warm up.</summary>
    /// <param name="since">The day of the move.</param>
    /// <param name="hours">How many hours it stays closed; 0 for none.</param>
    /// <param name="named">The first day on which it may be opened, where the user named one.</param>
    public static Warming? Of(LocalDate since, int hours, LocalDate? named) => named is { } day ? new(since, day, null)
        : hours == 0 ? null : new(since, since.PlusDays(hours / HoursOfADay), hours);

    /// <summary>A box that was taken out of the cold; null for one that was not.</summary>
    public static Warming? Of(Container container, Item item, Settings settings)
    {
        if (container is not { OpensFrom: { } from, Moves: [.., var last] })
            return null;
        var before = container.Places.SkipLast(1).Last().Name;
        var usual = Of(last.Since, settings.ThawHours(item, before, last.Name), null);
        return usual?.From == from ? usual : new(last.Since, from, null);
    }

    /// <summary>Whether it may still be cold on a day.</summary>
    public bool IsDoubtfulOn(LocalDate day) => day < From || (day == From && Hours % HoursOfADay > 0);

    /// <summary>The same in a few words: "for 6 hours", "until 2026-03-16 at the earliest".</summary>
    public string InBrief => From > Since ? $"until {Dates.Text(From)} at the earliest" : Text;

    /// <summary>"for 6 hours", "for 30 hours, until 2026-03-16 at the earliest", "until 2026-03-16".</summary>
    public string Text => Hours is not { } hours ? $"until {Dates.Text(From)}"
        : $"for {Counted.Of(hours, "hour")}{(From > Since ? $", until {Dates.Text(From)} at the earliest" : "")}";
}
