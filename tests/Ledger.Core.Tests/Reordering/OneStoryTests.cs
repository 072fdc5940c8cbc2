using CsCheck;
using static Ledger.Core.Tests.Reordering.Fen80;

namespace Ledger.Core.Tests.Reordering;

/// <summary>Reorder point, safety stock, day to order and day of running out never contradict each other.</summary>
public sealed class OneStoryTests
{
    [Fact]
    public void Rising_use_is_ordered_before_it_runs_out()
    {
        long[] rising = [.. Enumerable.Repeat(1L, 92), .. Enumerable.Repeat(8L, 8)];
        var reading = Read(rising, leadDays: 35);
        Assert.True(reading.ReorderPoint.Value >= 24, $"{reading.ReorderPoint}"); // 4.74 a week for five weeks
        Assert.Equal(reading.ReorderPoint.Value, reading.LeadTimeDemand + reading.SafetyStock);
        Assert.True(reading.Suggestion!.OrderBy.PlusDays(35) <= reading.RunsOutOn);
    }

    [Fact]
    public void The_story_holds_for_any_past_stock_and_delivery_time() => Gen.Select(
        Gen.OneOf(Gen.Const(0L), Gen.Long[1, 30]).Array[8, 60], Gen.Int[1, 60], Gen.Int[0, 50],
        Gen.Int[1, 40].Array[0, 2]).Sample(
        (uses, leadDays, discarded, plans) =>
        {
            var reading = Read(
                uses, ledger => { if (discarded > 0) ledger.Post($"discard what=fen80 quantity={discarded}sheet"); },
                leadDays: leadDays, known: [.. plans.Select(day => Planned(day, 5))]);
            if (reading.Forecast is { } forecast)
            {
                Assert.True(reading.ReorderPoint.Base >= forecast.PerPeriod * leadDays / 7 - 1e-6);
                Assert.True(reading.ReachedLevel >= 0.95m, $"{reading.ReachedLevel}");
                Assert.Equal(reading.Computed!.Value.Value, reading.LeadTimeDemand + reading.SafetyStock);
            }

            if (reading is { Suggestion: { } order, RunsOutOn: { } out_ })
            {
                Assert.True(order.OrderBy.PlusDays(leadDays) <= out_, $"{order.OrderBy} + {leadDays} > {out_}");
                Assert.Equal(order.OrderBy <= reading.Today, order.IsNow);
            }
        },
        iter: 300);

    [Fact]
    public void The_day_to_order_is_the_last_in_time_and_not_a_day_later()
    {
        var reading = Read([.. Enumerable.Repeat(7L, 20)], leadDays: 14); // one a day, 14 in two weeks, 50 there
        Assert.Equal(("14 sheets", 1m), (reading.ReorderPoint.ToString(), reading.ReachedLevel));
        Assert.Equal((Some.Today.PlusDays(36), Some.Today.PlusDays(50)),
            (reading.Suggestion!.OrderBy, reading.RunsOutOn));
    }

    [Fact]
    public void An_order_that_comes_too_late_is_due_now_and_says_how_late()
    {
        var reading = Read([.. Enumerable.Repeat(7L, 20)], ledger => ledger.Post("discard what=fen80 quantity=40sheet"),
            leadDays: 14);
        Assert.Equal(
            (Some.Today.PlusDays(-4), true, ", 4 days late", Some.Today.PlusDays(10)),
            (reading.Suggestion!.OrderBy, reading.Suggestion.IsNow, reading.LateText, reading.RunsOutOn));
    }

    [Fact]
    public void A_gap_before_what_is_on_order_comes_that_no_order_of_today_could_close_is_no_reason_to_order()
    {
        var path = new StockPath(Some.Today, 5, 1, [(Some.Today.PlusDays(10), 50)], []);
        Assert.Equal((Some.Today.PlusDays(5), Some.Today.PlusDays(55 - 14)), (path.RunsOutOn(), path.LastChance(14)));
        Assert.Equal(Some.Today.PlusDays(2), path.LastChance(3)); // three days after tomorrow's tomorrow it is in time
    }

    [Fact]
    public void Use_that_died_away_below_a_tenth_is_said_once() =>
        Assert.Contains(
            "the use fell to less than 0.1 sheets a week",
            Read([.. Enumerable.Range(0, 30).Select(week => week % 3 == 0 ? 2L : 0),
                .. Enumerable.Repeat(0L, 60)]).Basis, StringComparison.Ordinal);

    [Fact]
    public void One_month_is_one_month() =>
        Assert.Equal("1 month", Read([.. Enumerable.Repeat(11L, 20)]).CoverText); // 50 ÷ (11 ÷ 7 × 30.4375) = 1.05
}
