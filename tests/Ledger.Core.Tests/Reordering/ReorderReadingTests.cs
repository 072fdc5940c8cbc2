using static Ledger.Core.Tests.Reordering.Fen80;

namespace Ledger.Core.Tests.Reordering;

/// <summary>Readings over a stock of 50 sheets in two boxes, with the uses given week by week.</summary>
public sealed class ReorderReadingTests
{
    [Fact]
    public void Enough_stock_is_ordered_later_and_says_when_it_runs_out()
    {
        var reading = Read(FourEverySecondWeek);
        Assert.Equal("50 sheets", reading.Usable.ToString());
        Assert.Equal(("8 sheets", false), (reading.ReorderPoint.ToString(), reading.IsDue));
        Assert.Equal(DemandPattern.Intermittent, reading.Pattern);
        Assert.Equal(1.9m, reading.PerWeek); // (4 ÷ 2) × 0.95
        Assert.Equal(Some.Today.PlusDays(185), reading.RunsOutOn); // 50 ÷ 1.9 × 7 = 184.2
        Assert.Equal((Some.Today.PlusDays(154), 1L, false),
            (reading.Suggestion!.OrderBy, reading.Suggestion.Packs, reading.Suggestion.IsNow));
        Assert.Equal(
            "Used in 20 of 40 weeks, now and then, in like amounts, about 1.9 sheets a week; ordered with 8 sheets "
                + "left, 100 % of deliveries after 14 days come in time, you ask for 95 %.", reading.Basis);
    }

    [Fact]
    public void Stock_down_to_the_reorder_point_is_ordered_now()
    {
        var reading = Read(FourEverySecondWeek, ledger => ledger.Post("discard what=fen80 quantity=42sheet"));
        Assert.True(reading.IsDue);
        Assert.Equal((Some.Today, true), (reading.Suggestion!.OrderBy, reading.Suggestion.IsNow));
    }

    [Fact]
    public void One_sheet_above_the_reorder_point_is_not() =>
        Assert.False(Read(FourEverySecondWeek, ledger => ledger.Post("discard what=fen80 quantity=41sheet")).IsDue);

    [Fact]
    public void What_is_on_order_counts_as_incoming_and_not_as_stock()
    {
        var reading = Read(FourEverySecondWeek, ledger =>
        {
            ledger.Post("discard what=fen80 quantity=45sheet");
            ledger.Post("order line=1_fen80_expected_2026-04-01");
        });
        Assert.Equal(("5 sheets", "25 sheets", false),
            (reading.Usable.ToString(), reading.OnOrder.ToString(), reading.IsDue));
        Assert.Equal(Some.Today.PlusDays(111),
            reading.RunsOutOn); // the box comes on day 17, before 5 ÷ 1.9 weeks are over; 30 ÷ 1.9 × 7 = 110.5
    }

    [Fact]
    public void A_late_order_is_expected_a_lead_time_from_today()
    {
        var reading = Read(FourEverySecondWeek, ledger =>
        {
            ledger.Post("discard what=fen80 quantity=48sheet");
            ledger.Post("order line=1_fen80_expected_2026-02-20 date=2026-02-01");
        });
        Assert.Equal(Some.Today.PlusDays(14), reading.ExpectedOn(reading.Lines[0].Line));
        Assert.Equal(Some.Today.PlusDays(8), reading.RunsOutOn); // 2 ÷ 1.9 × 7 = 7.4
    }

    [Fact]
    public void Stock_that_expires_before_its_turn_does_not_count()
    {
        // Good for 27 more days: 28 days with today, 28 ÷ 7 × 1.9 = 7.6 sheets.
        var reading = Read(FourEverySecondWeek, expires: Some.Today.PlusDays(27));
        Assert.Equal("7 sheets", reading.Usable.ToString());
        Assert.Contains("not counted: 43 sheets that will expire before they are used", reading.Basis,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Stock_past_its_date_does_not_count() =>
        Assert.Equal("0 sheets", Read(FourEverySecondWeek, expires: Some.Today.PlusDays(-1)).Usable.ToString());

    [Fact]
    public void Too_little_history_says_so_and_takes_the_minimum()
    {
        var reading = Read([0, 0, 4, 0, 0], minimum: 60);
        Assert.Null(reading.Forecast);
        Assert.Equal(("60 sheets", true, 1L),
            (reading.ReorderPoint.ToString(), reading.IsDue, reading.Suggestion!.Packs));
        Assert.Equal("Used in 1 of 5 weeks, too little for a forecast; your minimum of 60 sheets decides.",
            reading.Basis);
    }

    [Fact]
    public void Without_history_and_minimum_nothing_is_suggested()
    {
        var reading = Read([]);
        Assert.Equal((null, null, false), (reading.Suggestion, reading.RunsOutOn, reading.IsDue));
        Assert.Equal("It was never delivered; no minimum is set, so nothing is suggested.", reading.Basis);
    }

    [Fact]
    public void The_users_minimum_holds_where_it_is_higher()
    {
        var reading = Read(FourEverySecondWeek, minimum: 25);
        Assert.Equal("25 sheets", reading.ReorderPoint.ToString());
        Assert.EndsWith("your minimum of 25 sheets is higher and decides.", reading.Basis, StringComparison.Ordinal);
    }

    [Fact]
    public void An_order_lasts_as_long_as_the_user_wants()
    {
        // Due at 8: up to 8 and a year's use of 98.8 is 98.8 more, four boxes.
        var reading = Read(FourEverySecondWeek, ledger =>
        {
            ledger.Post("discard what=fen80 quantity=42sheet");
            ledger.Post(Terms(OrderTerms.None("fen80") with { CoverDays = 364 }));
        });
        Assert.Equal(4, reading.Suggestion!.Packs);
    }

    [Fact]
    public void An_order_is_of_the_economic_size_where_its_costs_are_known()
    {
        // D 99.07 a year, an order 20, keeping 10 % of 6.48 a sheet: √(2 × 99.07 × 20 ÷ 0.648) = 78.2 sheets.
        var reading = Read(FourEverySecondWeek, ledger =>
        {
            ledger.Post("discard what=fen80 quantity=42sheet");
            ledger.Post(Terms(OrderTerms.None("fen80") with { OrderCost = Money.Of(20), HoldingThousandths = 100 }));
        });
        Assert.Equal(4, reading.Suggestion!.Packs);
    }

    [Fact]
    public void A_yearly_window_is_waited_for_and_lasts_until_the_next()
    {
        var reading = Read(FourEverySecondWeek, ledger =>
            ledger.Post(Terms(OrderTerms.None("fen80") with { WindowOpens = new(5, 1), WindowCloses = new(5, 31) })));
        Assert.Equal(new LocalDate(2026, 5, 1), reading.Suggestion!.OpensOn);
        Assert.Equal(new LocalDate(2026, 5, 31),
            reading.Suggestion.OrderBy); // it would be due in August, when nothing can be ordered
        Assert.Equal(3,
            reading.Suggestion.Packs); // 335 days to the next window use 90.9 and 8 are kept; 50 - 20.9 are left by then
    }

    [Fact]
    public void Packs_that_could_not_be_used_in_their_life_are_not_suggested() => Assert.Equal(1, Read(
        FourEverySecondWeek,
        ledger =>
        {
            ledger.Post("discard what=fen80 quantity=42sheet");
            ledger.Post(Terms(OrderTerms.None("fen80") with { CoverDays = 364 }));
        },
        keeping: new(SealedDays: 150)).Suggestion!.Packs);

    [Fact]
    public void A_price_rise_says_what_to_buy_before_and_what_is_saved()
    {
        var reading = Read(FourEverySecondWeek,
            ledger => ledger.Post("price-rise item=fen80 from=2026-05-01 percent=6"));
        Assert.Equal("6 %", reading.PriceRise!.PercentText);
        Assert.Equal(3, reading.Suggestion!.PacksBeforeRise); // 99.07 + 8 - (50 - 46 days' 12.5) = 69.6
        Assert.Equal(Money.Of(3 * 162 * 0.06m), reading.Suggestion.Saved);
    }

    [Fact]
    public void Today_tells_orders_to_place_late_orders_and_price_rises()
    {
        var ledger = Stocked(null, null, null, _ => { });
        ledger.Post("discard what=fen80 quantity=48sheet");
        ledger.Post("order line=1_fen80_expected_2026-02-20 supplier=the_shop date=2026-02-01");
        ledger.Post("price-rise item=fen80 from=2026-05-01 percent=6");
        var readings = ReorderReading.Of(ledger.Holdings, new Uses(FourEverySecondWeek), []);
        var notices = TodayReading.Of(ledger.Holdings, readings);
        Assert.Contains(notices,
            notice => notice is { Kind: NoticeKind.OrderLate, By: { } by } && by == new LocalDate(2026, 2, 20)
                && notice.Text == "order A1: 25 sheets of fen80 are 23 days late");
        Assert.Contains(notices,
            notice => notice.Kind == NoticeKind.PriceRise && notice.By == new LocalDate(2026, 4, 30));
        Assert.DoesNotContain(notices, notice => notice.Kind == NoticeKind.OrderDue); // 2 + 25 on order are more than 8
        ledger.Post("order-cancellation reason=too_late");
        notices = TodayReading.Of(ledger.Holdings,
            ReorderReading.Of(ledger.Holdings, new Uses(FourEverySecondWeek), []));
        var due = Assert.Single(notices, notice => notice.Kind == NoticeKind.OrderDue);
        Assert.Equal((Severity.Now, "order fen80 now, 6 days late",
            "order 1 pack of Corvane fen80 now; it takes 14 days"), (due.Severity, due.Text, due.Step));
    }

    [Fact]
    public void Months_of_cover_follow_the_usual_use()
    {
        Assert.Equal(6.0m, Read(FourEverySecondWeek).MonthsOfCover); // 50 ÷ (1.9 ÷ 7 × 30.4375) = 6.05
        Assert.Null(Read([0, 0, 4]).MonthsOfCover);
    }

    [Fact]
    public void Reminders_hold_every_day_to_come_once()
    {
        var ledger = Stocked(null, Some.Today.PlusDays(400), null, _ => { });
        ledger.Post("order line=1_fen80_expected_2026-04-01");
        ledger.Post("price-rise item=fen80 from=2026-05-01 percent=6");
        var reminders = Reminders.Of(ledger.Holdings,
            ReorderReading.Of(ledger.Holdings, new Uses(FourEverySecondWeek), []));
        Assert.Equal(
            ["delivery A1/fen80", "price-rise fen80", "order-by fen80", "good-until fen80/1", "good-until fen80/2"],
            reminders.Select(reminder => $"{reminder.Kind.Name()} {reminder.Subject}"));
    }
}
