using Ledger.Core.Baths;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.Core.Notices;

/// <summary>
/// What needs the user about waste jugs: full, nearly full, standing for long. Where a jug may go is not for the ledger
/// to say.
/// </summary>
internal static class JugNotices
{
    private const int NearlyFullPercent = 90;
    private const string HandOver =
        "hand it over and start another; the maker's safety data sheet and your local rules say where it may go";

    public static IEnumerable<Notice> Of(Holdings holdings)
    {
        foreach (var jug in holdings.Jugs)
        {
            if (jug.Held.Microlitres * 100 >= jug.Size.Microlitres * NearlyFullPercent)
                yield return Full(jug, holdings.Settings.Style);
            var (limit, days) = (holdings.Settings.JugDays, Period.DaysBetween(jug.StartedOn, holdings.AsOf));
            if (limit > 0 && days > limit)
                yield return new(
                    NoticeKind.JugOld, Severity.Soon, jug.Code,
                    $"jug {jug.Code} has stood for {Counted.Of(days, "day")}",
                    $"{jug.Held.ToText(holdings.Settings.Style)} of {jug.Contents}; started "
                        + $"{Dates.Text(jug.StartedOn)}; your reminder comes after {Counted.Of(limit, "day")}",
                    HandOver, jug.StartedOn.PlusDays(limit));
        }
    }

    private static Notice Full(WasteJug jug, MeasureStyle style)
    {
        var isFull = jug.Held >= jug.Size;
        return new(
            NoticeKind.JugFull, isFull ? Severity.Soon : Severity.Note, jug.Code,
            isFull ? $"jug {jug.Code} is full" : $"jug {jug.Code} is nearly full: {jug.Room.ToText(style)} fit in",
            $"{jug.Held.ToText(style)} of {jug.Contents} in a jug of {jug.Size.ToText(style)}", HandOver, null);
    }
}
