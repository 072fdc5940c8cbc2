using Ledger.Core.Film;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>
/// The sheets of a session: each leaves its place, meets its fate, and is numbered when it is a negative.
/// </summary>
internal sealed class DevelopedSheets(LoggedBatches batches, Draft draft)
{
    private readonly List<(int Batch, string Kind, string Subject, string Holder)> _sheets = [];
    private int _position;
    private int _new;

    public void Take(int number, SessionLine line, Item film)
    {
        Require.That(line.Cause is null || line.Fate == Fate.Reject,
            $"a {line.Fate.Name()} has no cause; only a reject has one: leave the cause out");
        if (line.Fate == Fate.Dummy)
            draft.Add(new DummyUsed(number, film.Code, line.Sheets, film.AreaOf(line.Sheets),
                line.Group.Trim(), line.Note.Trim()));
        else if (line.From is { Length: > 0 } from)
            TakeKnown(number, line, film, draft.Film.Draw(from, film, line.Sheets));
        else
            TakeCounted(number, line, film);
    }

    /// <summary>What would have been better spread over the batches: looked at as a plan is.</summary>
    public IEnumerable<string> Together() => Batching.Together(
        [
            .. _sheets.GroupBy(sheet => sheet.Batch).OrderBy(batch => batch.Key).Select(batch => (
                batch.First().Kind,
                (IReadOnlyList<(string, string)>)[.. batch.Select(sheet => (sheet.Subject, sheet.Holder))])),
        ]).Select(together => together.Sentence);

    private void TakeCounted(int number, SessionLine line, Item film)
    {
        _new = 0;
        foreach (var draw in draft.Take(
            film, film.Of(line.Sheets), line.Container, Destination(line), booksDifference: false,
                isForTest: line.Fate == Fate.Test))
        {
            Add(number, line, line.Group, film, draw.From.Lot.Id, draw.Quantity.Base, draw.Cost);
            _sheets.AddRange(Enumerable.Repeat((batches.NumberOf(number), Kind(film, line.Group), "", ""),
                (int)draw.Quantity.Base));
            foreach (var cost in Share.Split(draw.Cost.Millionths, new long[draw.Quantity.Base]))
                Develop(number, line, film, New(number, film), draw.From.Lot.Id, new(cost), draw.From.Place, null);
        }
    }

    private SheetId New(int line, Item film) =>
        film.Unit == Unit.Sheet ? draft.Film.NewSheet($"{line}.{++_new}") : default;

    private void TakeKnown(int number, SessionLine line, Item film, IReadOnlyList<Sheet> sheets)
    {
        Require.That(line.Container is null, "name a box of unexposed film or the known sheets, not both");
        foreach (var sheet in sheets)
            Question(sheet, line);
        var groups = sheets.Select(sheet => sheet.Exposure?.Group).OfType<string>()
            .Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        var group = line.Group.Trim().Length == 0 && groups.Count == 1 ? groups[0] : line.Group;
        _sheets.AddRange(sheets.Select(sheet => (
            batches.NumberOf(number), Kind(film, group), sheet.Exposure?.Subject ?? "",
            draft.Holdings.Film.Side(sheet.Side)?.Holder ?? "")));
        foreach (var run in Runs(sheets))
        {
            var lot = run[0].Lot.Id;
            Add(number, line, group, film, lot, run.Count, run.Aggregate(Money.Zero, (sum, sheet) => sum + sheet.Cost));
            foreach (var sheet in run)
            {
                draft.Film.Move(sheet, Destination(line));
                Develop(number, line, film, sheet.Id, lot, sheet.Cost, null, sheet.Side);
            }
        }
    }

    private static string Kind(Item film, string group) => $"{film.Code} {group.Trim()}";

    /// <summary>
    /// Sheets of one lot that follow each other: they are numbered in the order in which they went through the trays.
    /// </summary>
    private static IEnumerable<IReadOnlyList<Sheet>> Runs(IEnumerable<Sheet> sheets)
    {
        var run = new List<Sheet>();
        foreach (var sheet in sheets)
        {
            if (run.Count > 0 && run[0].Lot.Id != sheet.Lot.Id)
            {
                yield return run;
                run = [];
            }

            run.Add(sheet);
        }

        if (run.Count > 0)
            yield return run;
    }

    private void Question(Sheet sheet, SessionLine line)
    {
        var where = draft.Film.Whereabouts(sheet);
        if (draft.Holdings.SuspicionOf(sheet) is { } suspicion)
            draft.Remark($"the film of the sheet in {where} is {suspicion.Text}");
        if (sheet.Exposure is not { } exposure)
            draft.Doubt($"the sheet in {where} has no exposure on record");
        else if (line.Group.Trim() is { Length: > 0 } group
            && !group.Equals(exposure.Group, StringComparison.OrdinalIgnoreCase))
            draft.Remark($"the sheet in {where} was exposed for {exposure.Group} and is developed {group}");
    }

    private void Add(int number, SessionLine line, string group, Item film, LotId lot, long sheets, Money cost) =>
        draft.Add(new SheetsDeveloped(number, lot, sheets, film.AreaOf(sheets), cost, group.Trim(),
            line.Fate, line.Note.Trim()));

    /// <summary>A roll is counted and has no number of its own.</summary>
    private void Develop(int number, SessionLine line, Item film, SheetId sheet, LotId lot,
        Money cost, PlaceId? box, PlaceId? side)
    {
        _position++;
        if (film.Unit == Unit.Sheet)
            draft.Add(new SheetDeveloped(
                sheet, lot, cost, box, _position, batches.NumberOf(number), line.Fate, line.Cause, side,
                line.Fate.IsNegative() ? draft.Film.NextNegative(sheet) : null));
    }

    private static PlaceId Destination(SessionLine line) =>
        line.Fate.IsNegative() ? Places.FiledNegatives : Places.Rejects;
}
