using NodaTime;

namespace Ledger.Core.Reordering;

/// <summary>
/// How the stock is expected to go: down by the usual use, up by what is on order on the day it is expected. What is planned counts as part
/// of the usual use up to its day; what it takes beyond that comes on top, and the usual use goes on afterwards.
/// </summary>
public sealed class StockPath
{
    /// <summary>How far ahead the path is looked at.</summary>
    public const int HorizonDays = 3650;

    private readonly LocalDate _today;
    private readonly double _start;
    private readonly double _perDay;
    private readonly int _ahead;
    private readonly List<(int Day, long Quantity)> _incoming;
    private readonly List<(int Day, long Quantity)> _known;

    /// <summary>A path.</summary>
    /// <param name="today">The day it begins.</param>
    /// <param name="start">What can be used on that day, in base units.</param>
    /// <param name="perDay">What a day uses on average.</param>
    /// <param name="incoming">What is on order and when it is expected; a day that is past counts as tomorrow.</param>
    /// <param name="known">What is planned; a day that is past counts as today.</param>
    /// <param name="ahead">So many days before what is planned it must be ordered at the latest.</param>
    public StockPath(
        LocalDate today, long start, double perDay, IEnumerable<(LocalDate Day, long Quantity)> incoming,
            IEnumerable<(LocalDate Day, long Quantity)> known, int ahead = 0)
    {
        (_today, _start, _perDay, _ahead) = (today, start, perDay, ahead);
        _incoming = [.. incoming.Select(one => (Math.Max(1, Period.DaysBetween(today, one.Day)), one.Quantity)).OrderBy(one => one.Item1)];
        _known = [.. known.Select(one => (Math.Max(0, Period.DaysBetween(today, one.Day)), one.Quantity)).OrderBy(one => one.Item1)];
    }

    /// <summary>What is expected to be there at the end of a day.</summary>
    public double On(LocalDate day)
    {
        var days = Period.DaysBetween(_today, day);
        return _start + _incoming.Where(one => one.Day <= days).Sum(one => one.Quantity) - UseUntil(days, 0);
    }

    /// <summary>
    /// What an order of a day has to reckon with: all that is there and on order, less what is used until then and what is planned until
    /// the order would have come.
    /// </summary>
    public double Position(LocalDate day) => All - UseUntil(Period.DaysBetween(_today, day), _ahead);

    /// <summary>The first day on which nothing is left; null when that is far away.</summary>
    public LocalDate? RunsOutOn() => UsedUp(day => _start + _incoming.TakeWhile(one => one.Day <= day).Sum(one => one.Quantity), 0);

    /// <summary>The first day on which the position is down to a level; null when that is far away.</summary>
    public LocalDate? ReachesOn(long level) => UsedUp(_ => All - level, _ahead);

    private double All => _start + _incoming.Sum(one => one.Quantity);

    /// <summary>
    /// The first day by which as much has been used as there was. From one day on which something comes or is planned to the next nothing
    /// but the usual use goes, so that each such stretch is reckoned at once.
    /// </summary>
    /// <param name="supply">What there was until the end of a day; it changes with deliveries only.</param>
    /// <param name="ahead">So many days beforehand what is planned counts.</param>
    private LocalDate? UsedUp(Func<int, double> supply, int ahead)
    {
        if (_perDay <= 0 && _known.Count == 0)
            return null;
        var planned = _known.Select(one => Math.Max(0, one.Day - ahead));
        int[] starts = [.. _incoming.Select(one => one.Day).Concat(planned).Append(0).Distinct().Order()];
        for (var i = 0; i < starts.Length && starts[i] <= HorizonDays; i++)
        {
            var left = supply(starts[i]) - UseUntil(starts[i], ahead) - 1e-9;
            var day = left <= 0 ? starts[i] : _perDay > 0 ? starts[i] + Math.Ceiling(left / _perDay) : double.PositiveInfinity;
            if (day <= HorizonDays && (i + 1 == starts.Length || day < starts[i + 1]))
                return _today.PlusDays((int)day);
        }

        return null;
    }

    /// <summary>The usual use, and the most by which the plans up to some day were beyond the usual use up to that day.</summary>
    private double UseUntil(int day, int ahead)
    {
        var (planned, beyond) = (0L, 0.0);
        foreach (var one in _known)
        {
            var counts = Math.Max(0, one.Day - ahead);
            if (counts > day)
                break;
            planned += one.Quantity;
            beyond = Math.Max(beyond, planned - _perDay * counts);
        }

        return _perDay * day + beyond;
    }
}
