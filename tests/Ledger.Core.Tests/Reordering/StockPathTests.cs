using CsCheck;

namespace Ledger.Core.Tests.Reordering;

public sealed class StockPathTests
{
    private static readonly LocalDate _today = new(2026, 3, 15);

    private static readonly Gen<(LocalDate Day, long Quantity)[]> _events =
        Gen.Select(Gen.Int[-5, 60], Gen.Long[1, 40], (days, quantity) => (_today.PlusDays(days), quantity)).Array[0, 4];

    private static readonly Gen<StockPath> _path = Gen.Select(
        Gen.Long[0, 60], Gen.Double[0.01, 3], _events, _events,
        (start, perDay, incoming, known) => new StockPath(_today, start, perDay, incoming, known));

    [Fact]
    public void The_stock_runs_out_on_the_first_day_that_ends_with_nothing() => _path.Sample(path =>
        path.RunsOutOn() is not { } day ? Days(0, 200).All(later => path.On(later) > 0)
            : path.On(day) <= 1e-6 && Days(0, Period.DaysBetween(_today, day)).All(before => path.On(before) > 0));

    [Fact]
    public void A_delivery_in_time_puts_the_day_off()
    {
        Assert.Equal(_today.PlusDays(10), new StockPath(_today, 10, 1, [], []).RunsOutOn());
        Assert.Equal(_today.PlusDays(15), new StockPath(_today, 10, 1, [(_today.PlusDays(9), 5)], []).RunsOutOn());
        Assert.Equal(_today.PlusDays(10), new StockPath(_today, 10, 1, [(_today.PlusDays(11), 5)], []).RunsOutOn());
    }

    [Fact]
    public void What_is_planned_counts_from_its_day_on_where_it_is_more_than_the_usual_use()
    {
        Assert.Equal(_today.PlusDays(20), new StockPath(_today, 30, 1, [], [(_today.PlusDays(20), 30)]).RunsOutOn());
        Assert.Equal(_today.PlusDays(30), new StockPath(_today, 30, 1, [], [(_today.PlusDays(20), 15)]).RunsOutOn());
        Assert.Equal(_today.PlusDays(35), new StockPath(_today, 12, 0, [], [(_today.PlusDays(35), 12)]).RunsOutOn());
    }

    [Fact]
    public void A_stock_that_nobody_touches_does_not_run_out() =>
        Assert.Null(new StockPath(_today, 0, 0, [], []).RunsOutOn());

    [Fact]
    public void The_usual_use_goes_on_after_a_plan_that_took_more()
    {
        Assert.Equal(_today.PlusDays(30),
            new StockPath(_today, 50, 1, [], [(_today.PlusDays(10), 30)]).RunsOutOn()); // 30, and 20 days more
        Assert.Equal(_today.PlusDays(20),
            new StockPath(_today, 30, 1, [], [(_today.PlusDays(20), 15), (_today.PlusDays(20), 15)]).RunsOutOn());
    }

    [Fact]
    public void What_is_planned_counts_for_an_order_so_many_days_beforehand()
    {
        var path = new StockPath(_today, 30, 1, [(_today.PlusDays(50), 5)], [(_today.PlusDays(40), 40)], ahead: 21);
        Assert.Equal((35 - 18, 35 - 40), (path.Position(_today.PlusDays(18)), path.Position(_today.PlusDays(19))));
        Assert.Equal(_today.PlusDays(19), path.ReachesOn(8));
        Assert.Equal(35 - 40 - 31, path.Position(_today.PlusDays(50)));
        Assert.Equal(_today.PlusDays(30), path.RunsOutOn());
    }

    [Fact]
    public void A_level_is_reached_by_what_is_there_and_on_order_together()
    {
        Assert.Equal(_today.PlusDays(11), new StockPath(_today, 10, 1, [(_today.PlusDays(30), 5)], []).ReachesOn(4));
        Assert.Null(new StockPath(_today, 10, 0, [], []).ReachesOn(20));
        Assert.Null(new StockPath(_today, 1_000_000, 1, [], []).RunsOutOn());
    }

    private static IEnumerable<LocalDate> Days(int from, int until) =>
        Enumerable.Range(from, Math.Max(0, until - from)).Select(_today.PlusDays);
}
