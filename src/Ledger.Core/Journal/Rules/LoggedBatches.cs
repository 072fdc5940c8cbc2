using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>
/// The batches of a session as it was logged. Where no developer is said, each line is a batch; otherwise a line without any went into the
/// tray together with the one before it.
/// </summary>
internal sealed class LoggedBatches
{
    private readonly List<List<(SessionLine Line, Item Film)>> _batches = [];
    private readonly Dictionary<int, int> _numbers = [];

    public LoggedBatches(SessionLog session, List<Item> films)
    {
        var (said, hasBegun) = (session.Lines.Any(line => line.Developer is not null), false);
        foreach (var (index, (line, film)) in session.Lines.Zip(films).Index().Where(pair => pair.Item.First.Fate != Fate.Dummy))
        {
            var begins = !said || line.Developer is not null;
            if (_batches.Count == 0 || (begins && hasBegun))
                _batches.Add([]);
            _batches[^1].Add((line, film));
            _numbers.Add(index + 1, _batches.Count);
            hasBegun |= begins;
        }
    }

    /// <summary>The batch, from 1, of a line that is no dummy.</summary>
    /// <param name="line">The line's number, from 1.</param>
    public int NumberOf(int line) => _numbers[line];

    /// <summary>What lay in the trays together, batch by batch.</summary>
    public IReadOnlyList<TrayLoad> Loads => [.. _batches.Select(batch => new TrayLoad(batch[0].Film.Format, batch.Sum(part => part.Line.Sheets)))];

    /// <summary>What a careful worker would ask about: films or groups in one tray, more sheets than the user's hands move.</summary>
    public IEnumerable<string> Remarks(TrayPractice practice)
    {
        for (var i = 0; i < _batches.Count; i++)
        {
            var (batch, name) = (_batches[i], $"batch {i + 1}");
            var films = batch.Select(part => part.Film.Code).Distinct().ToList();
            var groups = batch.Select(part => part.Line.Group.Trim()).Distinct(StringComparer.OrdinalIgnoreCase).ToList();
            var sheets = batch.Where(part => part.Film.Unit == Unit.Sheet).Sum(part => part.Line.Sheets);
            if (films.Count > 1)
                yield return $"{name} mixes {string.Join(" and ", films)}";
            else if (groups.Count > 1)
                yield return $"{name} mixes the groups {string.Join(" and ", groups)}";
            if (batch[0].Film.Format is { } format && sheets > practice.Limit.Of(format))
                yield return $"{name} has {sheets} sheets of {films[0]}; your limit is {practice.Limit.Of(format)} (setting batch-sheets)";
        }
    }
}
