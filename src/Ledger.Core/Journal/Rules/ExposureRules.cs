using Ledger.Core.Film;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Rules;

/// <summary>Sheets are exposed: each once, unless the user says that it was twice.</summary>
internal static class ExposureRules
{
    private const int LongestSubject = 200;

    public static void Post(ExposureNote note, Draft draft)
    {
        var exposure = new Exposure(note.Date, FilmDraft.Group(note.Group), note.Subject.Trim());
        Require.That(
            exposure.Subject.Length <= LongestSubject,
            $"the subject has {exposure.Subject.Length} characters; at most {LongestSubject} are kept; shorten it");
        var sides = draft.Film.Sides(note.Sides);
        var sheets = sides.Select(draft.Film.In).ToList();
        for (var i = 0; i < sides.Count; i++)
        {
            var (side, sheet) = (sides[i], sheets[i]);
            Require.That(
                note.Date >= sheet.LoadedOn,
                    $"{side.Code} was loaded on {Dates.Text(sheet.LoadedOn)}, after {Dates.Text(note.Date)}; date the "
                        + "exposure then or later");
            if (sheet.Exposure is { } before)
                draft.Doubt(
                    $"{side.Code} was exposed on {Dates.Text(before.Date)} already ({before.Group}); again, it is a "
                        + "double exposure");
            draft.Add(new SheetExposed(sheet, exposure));
            draft.Film.Show(side, FilmDraft.State(sheet), FilmDraft.State(sheet with { Exposure = exposure }));
        }

        draft.Summary = $"exposed {string.Join(", ", sides.Select(side => side.Code))} for {exposure.Group}"
            + (exposure.Subject.Length == 0 ? "" : $": {exposure.Subject}");
    }
}
