using static Ledger.Core.Tests.Reordering.Fen80;

namespace Ledger.Core.Tests.Reordering;

/// <summary>What planned sessions and trips do to the stock of 50 sheets and to its orders.</summary>
public sealed class PlannedUseTests
{
    [Fact]
    public void What_is_planned_is_set_aside()
    {
        var reading = Read(FourEverySecondWeek, known: [Planned(10, 44), Planned(60, 6)]);
        Assert.Equal(("50 sheets", "6 sheets", true),
            (reading.Planned.ToString(), reading.Position.ToString(), reading.IsDue));
        Assert.Equal(Some.Today.PlusDays(33), reading.RunsOutOn); // 44 on day 10, and 6 ÷ 1.9 weeks more
        Assert.Contains("; 50 sheets are planned in 2 plans from 2026-03-25 to 2026-05-14",
            reading.Basis, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_trip_needs_is_ordered_a_delivery_time_and_a_week_before_it()
    {
        var reading = Read(FourEverySecondWeek, known: [Planned(60, 60)]);
        Assert.False(reading.IsDue);
        Assert.Equal(Some.Today.PlusDays(60 - 14 - 7), reading.Suggestion!.OrderBy);
        Assert.Equal(2, reading.Suggestion.Packs); // 8 + 60 days' 16.3 - (50 - 60) = 34.3
        Assert.EndsWith("; 60 sheets are planned for north on 2026-05-14.", reading.Basis, StringComparison.Ordinal);
        Assert.True(Read(FourEverySecondWeek, known: [Planned(21, 60)]).IsDue);
    }

    [Fact]
    public void A_plan_whose_day_is_past_is_set_aside_until_it_is_done_or_given_up() =>
        Assert.Equal("6 sheets", Read(FourEverySecondWeek, known: [Planned(-3, 44)]).Position.ToString());

    [Fact]
    public void A_yearly_order_carries_what_is_planned_until_the_next_one_would_come()
    {
        var reading = Read(
            FourEverySecondWeek,
            ledger => ledger.Post(
                Terms(OrderTerms.None("fen80") with { WindowOpens = new(5, 1), WindowCloses = new(5, 31) })),
            known: [Planned(150, 200)]);
        Assert.Equal(10,
            reading.Suggestion!.Packs); // 335 days use 90.9, the plan 165 more than usual, 8 are kept; 29.1 are left: 234.8
    }

    [Fact]
    public void Stock_that_a_plan_uses_before_it_expires_counts() =>
        Assert.Equal("30 sheets", Read(FourEverySecondWeek, expires: Some.Today.PlusDays(27),
            known: [Planned(20, 30), Planned(40, 10)]).Usable.ToString());

    [Fact]
    public void An_order_that_is_due_soon_is_called_for_although_another_is_on_its_way()
    {
        var ledger = Stocked(null, null, null, _ => { });
        ledger.Post("order line=1_fen80_expected_2026-02-20 date=2026-02-01");
        var readings = ReorderReading.Of(ledger.Holdings, new Uses(FourEverySecondWeek), [Planned(35, 90)]);
        var due = Assert.Single(TodayReading.Of(ledger.Holdings, readings),
            notice => notice.Kind == NoticeKind.OrderDue);
        Assert.Equal(("order fen80 by 2026-03-29", "order 2 packs of Corvane fen80; it takes 14 days"),
            (due.Text, due.Step));
    }
}
