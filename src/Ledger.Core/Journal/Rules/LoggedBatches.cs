using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>The batches of a session as it was logged, and what a careful worker asks about them.</summary>
internal sealed class LoggedBatches
{
    private readonly List<List<(SessionLine Line, Item Film)>> _batches;
    private readonly Dictionary<int, int> _numbers;
    private readonly bool _isSaid;

    public LoggedBatches(SessionLog session, List<Item> films)
    {
        _isSaid = session.SaysDeveloper;
        var batches = session.Batches();
        _batches = [.. batches.Select(batch => batch.Select(line => (session.Lines[line], films[line])).ToList())];
        _numbers = batches.SelectMany((batch, number) => batch.Select(line => (Line: line + 1, Number: number + 1)))
            .ToDictionary(pair => pair.Line, pair => pair.Number);
    }

    /// <summary>The batch, from 1, of a line that is no dummy.</summary>
    /// <param name="line">The line's number, from 1.</param>
    public int NumberOf(int line) => _numbers[line];

    /// <summary>What lay in the trays together, batch by batch.</summary>
    public IReadOnlyList<TrayLoad> Loads =>
        [.. _batches.Select(batch => new TrayLoad(batch[0].Film.Format, batch.Sum(part => part.Line.Sheets)))];

    /// <summary>
    /// The batches that had less developer than their film asks for, each by itself: one that had more does not make up
    /// for it.
    /// </summary>
    public IEnumerable<string> Thin(Process process, Draft draft)
    {
        if (process.Developer is not { Item: { } code } step
            || draft.Item(code) is not { MinimumPer80SquareInches: { } minimum } developer)
            yield break;
        for (var i = 0; i < _batches.Count; i++)
        {
            var area = _batches[i].Aggregate(Area.Zero, (sum, part) => sum + part.Film.AreaOf(part.Line.Sheets));
            var least = Volume.FromMicrolitres(Share.UpTo(minimum.Microlitres, area.Hundredths,
                Area.Unit80.Hundredths));
            var had = _batches[i].Aggregate(default(Volume), (sum, part) => sum + Had(part, step, developer));
            if (had < least)
                yield return $"{had.ToText(draft.Style)} of {code} for {area.ToText(draft.Style)} in batch {i + 1}; "
                    + $"at least {least.ToText(draft.Style)} are asked for";
        }
    }

    private Volume Had((SessionLine Line, Item Film) part, ProcessStep step, Item developer) => _isSaid
        ? part.Line.Developer ?? default
        : BatchDeveloper.Of(step, developer, part.Film, part.Line.Sheets, graduate: null)?.Measured ?? default;

    /// <summary>
    /// What a careful worker would ask about: films or groups in one tray, more sheets than the user's hands move.
    /// </summary>
    public IEnumerable<string> Remarks(TrayPractice practice)
    {
        for (var i = 0; i < _batches.Count; i++)
        {
            var (batch, name) = (_batches[i], $"batch {i + 1}");
            var films = batch.Select(part => part.Film.Code).Distinct().ToList();
            var groups = batch.Select(part => part.Line.Group.Trim())
                .Distinct(StringComparer.OrdinalIgnoreCase).ToList();
            var sheets = batch.Where(part => part.Film.Unit == Unit.Sheet).Sum(part => part.Line.Sheets);
            if (films.Count > 1)
                yield return $"{name} mixes {string.Join(" and ", films)}";
            else if (groups.Count > 1)
                yield return $"{name} mixes the groups {string.Join(" and ", groups)}";
            if (batch[0].Film.Format is { } format && sheets > practice.Limit.Of(format))
                yield return $"{name} has {sheets} sheets of {films[0]}; your limit is {practice.Limit.Of(format)} "
                    + "(setting batch-sheets)";
        }
    }
}
