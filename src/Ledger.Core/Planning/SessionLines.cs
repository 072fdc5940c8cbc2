using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;

namespace Ledger.Core.Planning;

/// <summary>
/// The lines that a batch has in the journal: the known sheets by number, the counted ones, and the dummy.
/// </summary>
internal static class SessionLines
{
    public static IEnumerable<SessionLine> Of(PlannedBatch batch)
    {
        var line = new SessionLine { Item = batch.Film.Code, Sheets = 0, Group = batch.Group };
        var known = batch.Sheets.Select(sheet => sheet.Known).OfType<Film.Sheet>().ToList();
        IReadOnlyList<Volume> others = [.. batch.Developer?.OtherParts.Select(part => part.Measured) ?? []];
        var counted = batch.Sheets.Count - known.Count;
        if (known.Count > 0)
            yield return line with
            {
                Sheets = known.Count, From = string.Join(", ", known.Select(sheet => sheet.Id)),
                Developer = batch.Developer?.Measured, OtherParts = others,
            };
        if (counted > 0)
            yield return known.Count > 0 ? line with { Sheets = counted }
                : line with { Sheets = counted, Developer = batch.Developer?.Measured, OtherParts = others };
        if (batch.HasDummy)
            yield return line with { Sheets = 1, Fate = Fate.Dummy };
    }
}
