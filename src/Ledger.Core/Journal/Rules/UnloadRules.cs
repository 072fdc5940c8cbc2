using Ledger.Core.Film;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>
/// Holders are emptied: exposed sheets into the box of their film and group, the others back to where sheets are
/// counted.
/// </summary>
internal static class UnloadRules
{
    public static void Post(Unload unload, Draft draft)
    {
        Require.That(unload.From.Count > 0, "name at least one side of a holder, such as E07-2");
        var sheets = unload.From.SelectMany(name => Named(name, draft)).ToList();
        Require.That(sheets.DistinctBy(sheet => sheet.Id).Count() == sheets.Count,
            "a sheet is named twice; name it once");
        if (sheets.Count == 0)
            throw new RefusedException(RefusalKind.Empty,
                $"{string.Join(", ", unload.From)} is empty; name a side that holds a sheet");

        var exposed = sheets.Where(sheet => sheet.Exposure is not null).ToList();
        var fresh = sheets.Where(sheet => sheet.Exposure is null).ToList();
        Require.That(
            unload.To is null || exposed.Count == 0,
            "an exposed sheet never goes back to unexposed film; leave the box out, and it goes to the box of its "
                + "group");
        Require.That(
            unload.Group.Trim().Length == 0 || fresh.Count == 0,
            $"{string.Join(", ", fresh.Select(draft.Film.Whereabouts))} was not exposed and has no group; record the "
                + "exposure first");
        foreach (var sheet in exposed)
            ToBox(sheet, unload, draft);
        foreach (var lot in fresh.GroupBy(sheet => sheet.Lot.Id))
            PutBack([.. lot], unload.To, draft);
        draft.Film.RemindOfLabels();
        draft.Summary = $"unloaded {string.Join(", ", unload.From)}"
            + (exposed.Count == 0 ? "" : $": {Counted.Of(exposed.Count, "sheet")} exposed")
            + (fresh.Count == 0
                ? ""
                : $"{(exposed.Count == 0 ? ":" : ",")} {Counted.Of(fresh.Count, "sheet")} back unexposed");
    }

    private static IEnumerable<Sheet> Named(string name, Draft draft) =>
        draft.Film.Find(name) ?? throw new RefusedException(
            RefusalKind.Unknown,
            $"there is no holder side or box of exposed sheets \"{name}\"; `show holders` lists them");

    private static void ToBox(Sheet sheet, Unload unload, Draft draft)
    {
        var note = sheet.Exposure!;
        var group = unload.Group.Trim().Length == 0 ? note.Group : FilmDraft.Group(unload.Group);
        var box = draft.Film.BoxFor(sheet.Item, group);
        Require.That(box.Place != sheet.At, $"the sheet is in the box of exposed sheets \"{box.Code}\" already");
        if (group != note.Group)
            draft.Add(new SheetExposed(sheet, note with { Group = group }));
        draft.Film.Move(sheet, box.Place);
    }

    /// <summary>
    /// Back into the box they came out of while it has room; else into an open one of the same delivery, or a new
    /// envelope.
    /// </summary>
    private static void PutBack(List<Sheet> sheets, string? to, Draft draft)
    {
        var film = draft.Item(sheets[0].Item);
        var left = new List<Sheet>();
        foreach (var sheet in sheets)
            if (Room(sheet, film, to, draft) is { } box)
            {
                draft.Film.Move(sheet, box.Place);
                draft.Touch(box with { Held = box.Held + film.Of(1), Value = box.Value + sheet.Cost });
            }
            else
                left.Add(sheet);

        if (left.Count > 0)
            Envelope(left, film, draft);
    }

    private static Container? Room(Sheet sheet, Item film, string? to, Draft draft)
    {
        if (to is not null)
        {
            var named = draft.Container(to);
            Require.That(named.Lot.Id == sheet.Lot.Id,
                $"{named.Code} holds another delivery; a box holds one only; name another box");
            Require.That(named.Held < named.Size, $"{named.Code} is full; name another box");
            return named;
        }

        var open = draft.ContainersOf(film)
            .Where(box => !box.IsSealed && box.Lot.Id == sheet.Lot.Id && box.Held < box.Size && !box.Held.IsZero)
            .ToList();
        return open.Find(box => box.Place == sheet.Box) ?? open.FirstOrDefault();
    }

    private static void Envelope(List<Sheet> sheets, Item film, Draft draft)
    {
        var number = draft.NextContainerNumber(film.Code);
        var (place, code, lot, size) = (draft.NewPlace(), $"{film.Code}/{number}", sheets[0].Lot,
            film.Of(sheets.Count));
        draft.Add(new ContainerArrived(place, code, number, lot, size));
        draft.Add(new ContainerOpened(place));
        foreach (var sheet in sheets)
            draft.Film.Move(sheet, place);
        var value = sheets.Aggregate(Money.Zero, (sum, sheet) => sum + sheet.Cost);
        draft.Touch(new(place, code, lot, size, size, value, draft.Date));
        draft.Remark($"the box is gone: the sheets are in envelope {code} now");
    }
}
