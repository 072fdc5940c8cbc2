using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;

namespace Ledger.Core.Planning;

/// <summary>
/// The developer that a plan measures out, for lines that the user wrote in place of the plan's: a reject or a keeper
/// has a line of its own and still went through the tray with its batch.
/// </summary>
public static class PlannedDeveloper
{
    /// <summary>
    /// The lines with the plan's amounts: of each film and group the sheets fill the plan's batches in order, and the
    /// line that begins a batch takes its developer. Lines that say an amount, or a film and group that the plan does
    /// not know, stay as they are, all of them.
    /// </summary>
    /// <param name="lines">What was developed.</param>
    /// <param name="plan">The plan that was carried out.</param>
    public static IReadOnlyList<SessionLine> Over(IReadOnlyList<SessionLine> lines, SessionPlan plan)
    {
        ArgumentNullException.ThrowIfNull(lines);
        ArgumentNullException.ThrowIfNull(plan);
        var batches = plan.Batches.ToLookup(batch => Key(batch.Film.Code, batch.Group),
            StringComparer.OrdinalIgnoreCase);
        if (lines.Any(line => line.Developer is not null || line.DeveloperWeight is not null
            || !batches.Contains(Key(line.Item, line.Group))))
            return lines;
        var trays = batches.ToDictionary(group => group.Key, group => new Trays([.. group]),
            StringComparer.OrdinalIgnoreCase);
        return [
            .. lines.Select(line => line.Fate == Fate.Dummy
                ? line
                : Measured(line, trays[Key(line.Item, line.Group)].Take(line.Sheets)))];
    }

    private static SessionLine Measured(SessionLine line, List<BatchDeveloper> batches) =>
        batches.Count == 0 ? line : line with
        {
            Developer = batches.Aggregate(default(Volume), (sum, batch) => sum + batch.Measured),
            OtherParts =
            [
                .. batches[0].OtherParts.Select((_, part) => batches.Aggregate(default(Volume),
                    (sum, batch) => sum + batch.OtherParts[part].Measured)),
            ],
        };

    private static string Key(string film, string group) => $"{film.Trim()}\n{group.Trim()}";

    /// <summary>The batches of one film and group, filled in order.</summary>
    private sealed class Trays(List<PlannedBatch> batches)
    {
        private int _batch;
        private int _filled;

        /// <summary>The developer of the batches that begin with so many more sheets.</summary>
        public List<BatchDeveloper> Take(int sheets)
        {
            List<BatchDeveloper> developers = [];
            for (var left = sheets; left > 0 && _batch < batches.Count;)
            {
                if (_filled == 0 && batches[_batch].Developer is { } measured)
                    developers.Add(measured);
                var taken = Math.Min(left, batches[_batch].Sheets.Count - _filled);
                (left, _filled) = (left - taken, _filled + taken);
                if (_filled == batches[_batch].Sheets.Count)
                    (_batch, _filled) = (_batch + 1, 0);
            }

            return developers;
        }
    }
}
