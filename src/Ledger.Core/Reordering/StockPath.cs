namespace Ledger.Core.Reordering;

/// <summary>
/// How the stock is expected to go: down by the usual use, up by what is on order on the day it is expected. What is
/// planned counts as part of the usual use up to its day; what it takes beyond that comes on top, and the usual use
/// goes on afterwards.
/// </summary>
public sealed class StockPath
{
    /// <summary>How far ahead the path is looked at.</summary>
    public const int HorizonDays = 3650;

    /// <summary>By so much of a base unit the arithmetic may be off.</summary>
    private const double Rounding = 1e-9;

    private readonly LocalDate _today;
    private readonly double _start;
    private readonly double _perDay;
    private readonly int _ahead;
    private readonly List<(int Day, long Quantity)> _onOrder;
    private readonly List<(int Day, long Quantity)> _known;

    /// <summary>A path.</summary>
    /// <param name="today">The day it begins.</param>
    /// <param name="start">What can be used on that day, in base units.</param>
    /// <param name="perDay">What a day uses on average.</param>
    /// <param name="onOrder">What is on order and when it is expected; a day that is past counts as tomorrow.</param>
    /// <param name="known">What is planned; a day that is past counts as today.</param>
    /// <param name="ahead">So many days before what is planned it must be ordered at the latest.</param>
    public StockPath(
        LocalDate today, long start, double perDay, IEnumerable<(LocalDate Day, long Quantity)> onOrder,
            IEnumerable<(LocalDate Day, long Quantity)> known, int ahead = 0)
    {
        (_today, _start, _perDay, _ahead) = (today, start, perDay, ahead);
        _onOrder = [.. onOrder.Select(one => (Math.Max(1, Period.DaysBetween(today, one.Day)), one.Quantity))
            .OrderBy(one => one.Item1)];
        _known = [.. known.Select(one => (Math.Max(0, Period.DaysBetween(today, one.Day)), one.Quantity))
            .OrderBy(one => one.Item1)];
    }

    /// <summary>What is expected to be there at the end of a day.</summary>
    public double On(LocalDate day)
    {
        var days = Period.DaysBetween(_today, day);
        return _start + _onOrder.Where(one => one.Day <= days).Sum(one => one.Quantity) - UseUntil(days, 0);
    }

    /// <summary>
    /// What an order of a day has to allow for: all that is there and on order, less what is used until then and what
    /// is planned until the order would have come.
    /// </summary>
    public double Position(LocalDate day) => All - UseUntil(Period.DaysBetween(_today, day), _ahead);

    /// <summary>The first day on which nothing is left; null when that is far away.</summary>
    public LocalDate? RunsOutOn() => RunsOutOn(0);

    /// <summary>
    /// The last day on which an order still comes before the stock runs out; it may be past. A gap that something on
    /// order ends before an order of today could come is no reason to order. Null when the stock lasts.
    /// </summary>
    /// <param name="leadDays">The days that an order takes.</param>
    public LocalDate? LastChance(int leadDays)
    {
        var soon = _onOrder.Where(one => one.Day <= leadDays).Select(one => one.Day).DefaultIfEmpty(0).Last();
        return RunsOutOn(soon)?.PlusDays(-leadDays);
    }

    /// <summary>The last day on which the position is not yet below a level; null when that is far away.</summary>
    public LocalDate? ReachesOn(long level) =>
        UsedUp(_ => All - level, _ahead, 0, left => Math.Floor((left + Rounding) / _perDay));

    private LocalDate? RunsOutOn(int from) => UsedUp(
        day => _start + _onOrder.TakeWhile(one => one.Day <= day).Sum(one => one.Quantity), 0, from,
        left => Math.Ceiling((left - Rounding) / _perDay));

    private double All => _start + _onOrder.Sum(one => one.Quantity);

    /// <summary>
    /// The day by which as much has been used as there was. From one day on which something comes or is planned to the
    /// next nothing but the usual use goes, so that each such stretch is worked out at once.
    /// </summary>
    /// <param name="supply">What there was until the end of a day; it changes with deliveries only.</param>
    /// <param name="ahead">So many days beforehand what is planned counts.</param>
    /// <param name="from">The first day that is looked at.</param>
    /// <param name="days">How many whole days something lasts at the usual use.</param>
    private LocalDate? UsedUp(Func<int, double> supply, int ahead, int from, Func<double, double> days)
    {
        if (_perDay <= 0 && _known.Count == 0)
            return null;
        var planned = _known.Select(one => Math.Max(0, one.Day - ahead));
        int[] starts = [.. _onOrder.Select(one => one.Day).Concat(planned).Append(from).Where(day => day >= from)
            .Distinct().Order()];
        for (var i = 0; i < starts.Length && starts[i] <= HorizonDays; i++)
        {
            var left = supply(starts[i]) - UseUntil(starts[i], ahead);
            var day = left <= Rounding ? starts[i] : _perDay > 0 ? starts[i] + days(left) : double.PositiveInfinity;
            if (day <= HorizonDays && (i + 1 == starts.Length || day < starts[i + 1]))
                return _today.PlusDays((int)day);
        }

        return null;
    }

    /// <summary>
    /// The usual use, and the most by which the plans up to some day were beyond the usual use up to that day.
    /// </summary>
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
