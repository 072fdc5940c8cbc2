using Ledger.Core.Film;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>
/// What happens to sheets after their session: another fate, work and tests, the place they are filed in. A sheet's
/// number stays what it was.
/// </summary>
internal static class SheetLifeRules
{
    public static void Post(KeeperNaming keeper, Draft draft)
    {
        var sheet = NamedSheets.Developed(keeper.Negative, draft);
        if (sheet.Fate == Fate.Keeper)
            throw new RefusedException(RefusalKind.AlreadyThere, $"{sheet.Name} is a keeper already");
        Require.That(
            sheet.Fate == Fate.Negative,
            $"sheet {sheet.Id} is a {Words(sheet.Fate, sheet.Cause)}, not a negative; `record fate` gives it another "
                + "fate");
        Become(sheet, Fate.Keeper, null, draft);
        draft.Summary = $"{sheet.Name} is a keeper";
    }

    public static void Post(FateChange change, Draft draft)
    {
        Require.That(change.Fate != Fate.Dummy,
            "a developed sheet is a negative, a keeper, a reject, or was for a test or practice");
        Require.That(change.Cause is null || change.Fate == Fate.Reject,
            $"a {change.Fate.Name()} has no cause; only a reject has one: leave the cause out");
        var sheets = NamedSheets.Some(change.Sheets, draft);
        foreach (var sheet in sheets)
        {
            if (sheet.Fate == change.Fate && sheet.Cause == change.Cause)
                throw new RefusedException(RefusalKind.AlreadyThere,
                    $"{sheet.Name} is a {Words(sheet.Fate, sheet.Cause)} already");
            if (sheet.Negative is null && change.Fate.IsNegative())
                draft.Remark($"{sheet.Name} was given no number at its session and keeps the name {sheet.Name}");
            Become(sheet, change.Fate, change.Cause, draft);
        }

        var was = sheets.Select(sheet => Words(sheet.Fate, sheet.Cause)).Distinct().ToList();
        draft.Summary =
            $"{NamedSheets.Text(sheets)} {(sheets.Count == 1 ? "is a " : "are ")}{Words(change.Fate, change.Cause)} "
                + "from now on"
                + (was.Count == 1 ? $", no longer a {was[0]}" : "");
    }

    public static void Post(SheetNote note, Draft draft)
    {
        Require.That(
            note.HasPassed is null || note.What.IsTest(),
            $"only what is looked at or tested is passed or failed; \"{note.What.Name()}\" is neither; leave it out");
        Require.That(note.What != SheetWork.Other || note.Result.Trim().Length > 0, "say in the result what was done");
        var sheets = NamedSheets.Some(note.Sheets, draft);
        var finding = new SheetFinding(0, note.Date, note.What, note.Result.Trim(), HasPassed(note, draft));
        foreach (var sheet in sheets)
            draft.Add(new SheetNoted(sheet.Id, finding.What, finding.Result, finding.HasPassed));
        if (finding.HasPassed == false)
            draft.Remark(
                $"`record fate` makes a reject of what is spoiled; `trace {sheets[0].Name}` shows what shared its "
                    + "baths");
        draft.Summary = $"{NamedSheets.Text(sheets)}: {finding.Text}";
    }

    public static void Post(Filing filing, Draft draft)
    {
        var sheets = NamedSheets.Some(filing.Sheets, draft);
        var place = filing.Place.Trim();
        Require.That(place.Length is > 0 and <= 200,
            "say where it is filed, in at most 200 characters: binder B, page 12");
        foreach (var sheet in sheets)
            draft.Add(new SheetFiled(sheet.Id, place));
        draft.Summary = $"{NamedSheets.Text(sheets)} filed in {place}";
    }

    /// <summary>A negative that is one no longer goes from the negatives to the rejects, its cost with it; and
    /// back.</summary>
    private static void Become(DevelopedSheet sheet, Fate fate, RejectCause? cause, Draft draft)
    {
        var changed = new FateChanged(sheet, fate, cause);
        draft.Add(changed);
        if (changed.From != changed.To)
            draft.Add(new Movement(sheet.Lot, changed.From, changed.To, 1, sheet.Cost));
        draft.Show(sheet.Name, Words(sheet.Fate, sheet.Cause), Words(fate, cause));
    }

    /// <summary>The user says whether it was passed; a figure of hypo above their limit has failed all the
    /// same.</summary>
    private static bool? HasPassed(SheetNote note, Draft draft)
    {
        if (note.What != SheetWork.ResidualHypoTest || draft.Holdings.Settings.ResidualHypoLimit is not { } limit
            || Baths.ResidualTest.MilligramsPerSquareMetre(note.Result) is not { } found)
            return note.HasPassed;
        draft.Remark(
            $"your limit is {Scaled.InUnits(limit, 1000)} g per square metre: "
                + $"{(found <= limit ? "not above it" : "above it")}");
        return found <= limit && note.HasPassed != false;
    }

    private static string Words(Fate fate, RejectCause? cause) => cause is { } known ? $"{fate.Name()} ({known.Name()})"
        : fate.Name();
}
