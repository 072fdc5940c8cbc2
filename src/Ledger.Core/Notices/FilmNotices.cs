using Ledger.Core.Film;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.Core.Notices;

/// <summary>
/// The notices about film that waits: in holders, in boxes of exposed sheets; and about sides that spoil it.
/// </summary>
internal static class FilmNotices
{
    public static IEnumerable<Notice> Of(Holdings holdings)
    {
        var limits = holdings.Settings.Film;
        foreach (var holder in holdings.Film.HoldersInUse)
            foreach (var reading in holder.Sides.Select(side => holdings.Film.Read(side, holdings.AsOf)))
            {
                if (reading.IsOverdue(limits))
                    yield return InHolder(reading, limits);
                if (reading.IsFlagged(limits))
                    yield return Flagged(reading.Side, limits);
            }

        foreach (var box in holdings.Film.ExposedBoxes)
        {
            var sheets = holdings.Film.At(box.Place).ToList();
            var oldest = sheets.Min(sheet => sheet.Exposure!.Date);
            if (Period.DaysBetween(oldest, holdings.AsOf) > limits.ExposedDays)
                yield return new(
                    NoticeKind.ExposedLong, Severity.Soon, box.Code,
                    $"{Counted.Of(sheets.Count, "sheet")} in \"{box.Code}\" {(sheets.Count == 1 ? "waits" : "wait")} "
                        + "for development, "
                        + $"the oldest {Since(oldest, holdings.AsOf)}",
                    $"your limit for exposed film is {Counted.Of(limits.ExposedDays, "day")}",
                    "plan a session", oldest.PlusDays(limits.ExposedDays));
        }
    }

    private static Notice InHolder(SideReading reading, FilmSettings limits)
    {
        var (sheet, side) = (reading.Sheet!, reading.Side);
        return sheet.Exposure is { } exposure
            ? new(
                NoticeKind.ExposedLong, Severity.Soon, side.Code,
                $"{side.Code} holds a sheet that was exposed {Since(exposure.Date, reading.Today)}",
                $"your limit for exposed film is {Counted.Of(limits.ExposedDays, "day")}",
                "develop it, or unload it into its box of exposed sheets", exposure.Date.PlusDays(limits.ExposedDays))
            : new(
                NoticeKind.LoadedLong, Severity.Note, side.Code,
                $"{side.Code} was loaded {Since(sheet.LoadedOn, reading.Today)}",
                $"your limit for loaded film is {Counted.Of(limits.LoadedDays, "day")}", "use it next, or unload it",
                sheet.LoadedOn.PlusDays(limits.LoadedDays));
    }

    private static Notice Flagged(HolderSide side, FilmSettings limits) => new(
        NoticeKind.SideFaulty, Severity.Soon, side.Code, $"{side.Code} spoiled {Counted.Of(side.OwnFaults, "sheet")}",
        $"{string.Join(", ", side.Faults.Select(fault => $"{fault.Sheets} {fault.Cause.Name()}"))}; your limit is "
            + $"{limits.SideFaults}",
        "test it for leaks, and take it out of service", null);

    private static string Since(LocalDate day, LocalDate today) =>
        $"{Counted.Of(Period.DaysBetween(day, today), "day")} ago, on {Dates.Text(day)}";
}
