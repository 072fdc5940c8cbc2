using Ledger.Core.Film;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Notices;

/// <summary>What is under suspicion until it is cleared or discarded, with what of it already sits in
/// holders.</summary>
internal static class SuspicionNotices
{
    private const int MostNamed = 8;

    public static IEnumerable<Notice> Of(Holdings holdings)
    {
        foreach (var bath in holdings.Baths.Where(bath => bath.Suspicion is not null))
            yield return Notice(bath.Code, $"bath {bath.Code}", bath.Suspicion!, "nothing goes through it", [],
                holdings);
        foreach (var container in holdings.Containers.Where(container => container.OwnSuspicion is not null))
            yield return Notice(
                container.Code, container.Code, container.OwnSuspicion!,
                    $"{container.Held.ToText(holdings.Settings.Style)} in it",
                holdings.Film.Sheets.Where(sheet => sheet.Box == container.Place), holdings);
        var lots = holdings.Containers.Select(container => container.Lot)
            .Concat(holdings.Film.Sheets.Select(sheet => sheet.Lot))
            .Where(lot => holdings.SuspicionOf(lot.Id) is not null);
        foreach (var lot in lots.GroupBy(lot => (lot.Item, lot.Batch)))
        {
            var (ids, kind) = (lot.Select(one => one.Id).ToHashSet(),
                holdings.Item(lot.Key.Item)?.Kind ?? ItemKind.Film);
            var boxes = holdings.Containers.Where(container => ids.Contains(container.Lot.Id)).ToList();
            var held = boxes.Count == 0 ? "no box or bottle of it is left"
                : (boxes[0].Held with { Base = boxes.Sum(box => box.Held.Base) }).ToText(holdings.Settings.Style)
                    + $" in {Names(boxes.Select(box => box.Code))}";
            yield return Notice(
                lot.Key.Batch, $"{lot.First().NumberText(kind)} of {lot.Key.Item}",
                    holdings.SuspicionOf(lot.First().Id)!, held,
                holdings.Film.Sheets.Where(sheet => ids.Contains(sheet.Lot.Id)), holdings);
        }
    }

    private static Notice Notice(string about, string what, Suspicion suspicion, string held, IEnumerable<Sheet> sheets,
        Holdings holdings)
    {
        var sitting = sheets.ToList();
        var places = Names(sitting.Select(sheet => Where(sheet, holdings)).Distinct());
        return new(
            NoticeKind.UnderSuspicion, sitting.Count > 0 ? Severity.Now : Severity.Soon, about,
                $"{what} is under suspicion",
            $"{suspicion.Reason}, since {Dates.Text(suspicion.Since)}; {held}"
                + (sitting.Count == 0 ? ""
                    : $"; {(sitting.Count == 1 ? "1 sheet of it sits" : $"{sitting.Count} sheets of it sit")} in "
                        + $"{places}"),
            (sitting.Count == 0 ? "" : "keep those sheets apart; ") + "find out, then clear it or discard it", null);
    }

    private static string Where(Sheet sheet, Holdings holdings) =>
        holdings.Film.Side(sheet.At)?.Code ?? $"\"{holdings.Film.ExposedBox(sheet.At)?.Code}\"";

    private static string Names(IEnumerable<string> names)
    {
        var all = names.ToList();
        return string.Join(", ", all.Take(MostNamed)) + (all.Count > MostNamed ? $" and {all.Count - MostNamed} more"
            : "");
    }
}
