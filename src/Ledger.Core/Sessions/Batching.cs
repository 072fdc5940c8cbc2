namespace Ledger.Core.Sessions;

/// <summary>
/// Puts sheets into batches: of one film and one group each, never more than the limit, filled as evenly as can be, and
/// with the sheets of one subject or one holder spread over them, so that an accident in one tray does not take all of
/// them. Where one batch would do and all sheets of a subject would lie in it, two are made, as long as none of them is
/// left with a lone sheet. What the user put into a batch stays there.
/// </summary>
public static class Batching
{
    /// <summary>The fewest sheets that can be divided without a lone one.</summary>
    private const int Divisible = 4;

    /// <summary>
    /// The batches, in the order in which their film and group are first named; those that the user arranged in the
    /// order of their numbers.
    /// </summary>
    public static IReadOnlyList<PlannedBatch> Of(IEnumerable<SheetsToDevelop> sheets, TrayPractice practice)
    {
        var batches = new List<PlannedBatch>();
        var number = 0;
        foreach (var lines in sheets.Where(line => line.Count > 0)
            .GroupBy(line => (Film: line.Film.Code.ToUpperInvariant(), Group: line.Group.Trim())))
        {
            var film = lines.First().Film;
            var limit = practice.Limit.Of(film.Format!);
            IEnumerable<List<PlannedSheet>> arranged = lines.Where(line => line.Batch is not null)
                .GroupBy(line => line.Batch)
                .OrderBy(batch => batch.Key).Select(batch => batch.SelectMany(Each).ToList());
            foreach (var stack in arranged.Concat(
                Spread([.. lines.Where(line => line.Batch is null).SelectMany(Each)], limit)))
            {
                var batch = new PlannedBatch(
                    batches.Count + 1, film, lines.Key.Group,
                    [.. stack.Select(sheet => sheet with { Number = ++number })]);
                batch = batch with { HasDummy = batch.IsShuffled && stack.Count == 1 && limit > 1 };
                batches.Add(batch with { ShuffleEverySeconds = batch.IsShuffled
                    ? practice.ShuffleEverySeconds(batch.InTray)
                    : null });
            }
        }

        return batches;
    }

    /// <summary>
    /// What could be spread and is not: the subjects of which all sheets lie in one batch, and the holders where no
    /// subject of the batch was said. Only where there is another batch of the same film and group, or the batch can be
    /// divided without leaving a lone sheet.
    /// </summary>
    /// <param name="batches">Film and group of each batch, and what is known of its sheets; an empty text where nothing
    /// is.</param>
    public static IReadOnlyList<(string Sentence, int Batch)> Together(
        IReadOnlyList<(string Kind, IReadOnlyList<(string Subject, string Holder)> Sheets)> batches)
    {
        var subjects = Together("subject", batches, sheet => sheet.Subject).ToList();
        return [.. subjects,
            .. Together("holder", batches,
                sheet => sheet.Holder).Where(holder => !subjects.Exists(one => one.Batch == holder.Batch))];
    }

    private static IEnumerable<(string Sentence, int Batch)> Together(
        string what, IReadOnlyList<(string Kind, IReadOnlyList<(string Subject, string Holder)> Sheets)> batches,
        Func<(string Subject, string Holder), string> nameOf) => batches
        .SelectMany((batch, i) => batch.Sheets.Select(sheet => (batch.Kind, Batch: i, Name: nameOf(sheet))))
        .Where(sheet => sheet.Name.Length > 0)
        .GroupBy(sheet => sheet.Name, StringComparer.OrdinalIgnoreCase)
        .Where(named => named.Count() > 1 && named.Select(sheet => sheet.Batch).Distinct().Count() == 1)
        .Where(named => batches[named.First().Batch].Sheets.Count >= Divisible
            || batches.Count(batch => batch.Kind == named.First().Kind) > 1)
        .Select(named => (
            $"{(named.Count() == 2 ? "both sheets" : $"all {named.Count()} sheets")} of the {what} {named.Key} are in "
                + "batch "
                + $"{named.First().Batch + 1}; an accident there would take them all",
            named.First().Batch + 1));

    private static IEnumerable<PlannedSheet> Each(SheetsToDevelop line) =>
        Enumerable.Repeat(new PlannedSheet(0, line.Subject.Trim(), line.Holder.Trim()) { Known = line.Known },
            line.Count);

    /// <summary>
    /// Deals the sheets out, those of one subject after each other and the largest subject first. Each goes to the
    /// batch that has the fewest of its subject, then to the emptiest, then to the one with the fewest of its holder:
    /// so the batches never differ by more than one.
    /// </summary>
    private static List<PlannedSheet>[] Spread(List<PlannedSheet> sheets, int limit)
    {
        if (sheets.Count == 0)
            return [];
        var count = (sheets.Count + limit - 1) / limit;
        if (count == 1 && sheets.Count >= Divisible && sheets.Where(sheet => sheet.Subject.Length > 0)
            .GroupBy(sheet => sheet.Subject, StringComparer.OrdinalIgnoreCase).Any(subject => subject.Count() > 1))
            count = 2;
        var batches = Enumerable.Range(0, count).Select(_ => new List<PlannedSheet>()).ToArray();
        var fullest = (sheets.Count + count - 1) / count;
        foreach (var sheet in Together(sheets))
            batches.Where(batch => batch.Count < fullest)
                .OrderBy(batch => sheet.Subject.Length == 0
                    ? 0
                    : batch.Count(other => Same(other.Subject, sheet.Subject)))
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
