namespace Ledger.Core.Sessions;

/// <summary>
/// Puts sheets into batches: of one film and one group each, never more than the limit, filled as evenly as can be, and with the sheets of
/// one subject or one holder spread over them, so that an accident in one tray does not take all of them.
/// </summary>
public static class Batching
{
    /// <summary>The batches, in the order in which their film and group are first named.</summary>
    public static IReadOnlyList<PlannedBatch> Of(IEnumerable<SheetsToDevelop> sheets, TrayPractice practice)
    {
        var batches = new List<PlannedBatch>();
        var number = 0;
        foreach (var lines in sheets.Where(line => line.Count > 0).GroupBy(line => (Film: line.Film.Code.ToUpperInvariant(), Group: line.Group.Trim())))
        {
            var film = lines.First().Film;
            var limit = practice.Limit.Of(film.Format!);
            foreach (var stack in Spread([.. lines.SelectMany(Each)], limit))
            {
                var batch = new PlannedBatch
                {
                    Number = batches.Count + 1,
                    Film = film,
                    Group = lines.Key.Group,
                    Sheets = [.. stack.Select(sheet => sheet with { Number = ++number })],
                };
                batch = batch with { HasDummy = batch.IsShuffled && stack.Count == 1 && limit > 1 };
                batches.Add(batch with { ShuffleEverySeconds = batch.IsShuffled ? practice.ShuffleEverySeconds(batch.InTray) : null });
            }
        }

        return batches;
    }

    private static IEnumerable<PlannedSheet> Each(SheetsToDevelop line) =>
        Enumerable.Repeat(new PlannedSheet(0, line.Subject.Trim(), line.Holder.Trim()) { Known = line.Known }, line.Count);

    /// <summary>
    /// Deals the sheets out, those of one subject after each other and the largest subject first. Each goes to the batch that has the fewest
    /// of its subject, then to the emptiest, then to the one with the fewest of its holder: so the batches never differ by more than one.
    /// </summary>
    private static List<PlannedSheet>[] Spread(List<PlannedSheet> sheets, int limit)
    {
        var count = (sheets.Count + limit - 1) / limit;
        var batches = Enumerable.Range(0, count).Select(_ => new List<PlannedSheet>()).ToArray();
        var fullest = (sheets.Count + count - 1) / count;
        foreach (var sheet in Together(sheets))
            batches.Where(batch => batch.Count < fullest)
                .OrderBy(batch => sheet.Subject.Length == 0 ? 0 : batch.Count(other => Same(other.Subject, sheet.Subject)))
                .ThenBy(batch => batch.Count)
                .ThenBy(batch => sheet.Holder.Length == 0 ? 0 : batch.Count(other => Same(other.Holder, sheet.Holder)))
                .First()
                .Add(sheet);
        return batches;
    }

    private static IEnumerable<PlannedSheet> Together(List<PlannedSheet> sheets) => sheets
        .GroupBy(sheet => sheet.Subject.Length > 0 ? sheet.Subject : sheet.Holder, StringComparer.OrdinalIgnoreCase)
        .OrderBy(group => group.Key.Length == 0)
        .ThenByDescending(group => group.Count())
        .SelectMany(group => group);

    private static bool Same(string one, string other) => one.Equals(other, StringComparison.OrdinalIgnoreCase);
}
