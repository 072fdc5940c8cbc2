namespace Ledger.Exchange.Tests.Import;

public sealed class OrderFileTests
{
    [Fact]
    public void The_rows_of_an_order_make_one_entry()
    {
        var order = Csv.One<OrderPlacement>("orders", """
            order,date,item,packs,price,expected,back_ordered,supplier,prepaid,note
            spring,2026-01-18,pan,2,186.00,2026-02-01,yes,mail-order shop,yes,8-10 weeks
            Spring,,syrup,1,,,,,,
            """);
        Assert.Equal(("orders:spring", "spring", new(2026, 1, 18), "mail-order shop", true, "8-10 weeks"),
            (order.Key, order.Order, order.Date, order.Supplier, order.IsPrepaid, order.Note));
        Assert.Equal(
        [
            new() { Item = "pan", Packs = 2, Price = Money.Of(186), ExpectedOn = new(2026, 2, 1),
                IsBackOrdered = true },
            new() { Item = "syrup", Packs = 1 },
        ], order.Lines);
    }

    [Theory]
    [InlineData("spring,2026-01-18,pan,1.5,", "packs")]
    [InlineData("spring,2026-01-18,,1,", "item")]
    [InlineData("spring,,pan,1,", "date")]
    [InlineData("spring,2026-01-18,pan,1,perhaps", "back_ordered")]
    public void A_bad_row_names_its_column(string row, string column) =>
        Assert.Equal(column, Csv.Problem("orders", $"order,date,item,packs,back_ordered\n{row}\n").Column);

    [Fact]
    public void A_change_of_an_order_says_what_is_new_and_leaves_the_rest()
    {
        var change = Csv.One<OrderChange>(
            "order_changes", "date,order,item,expected,back_ordered,packs,price\n2026-02-01,spring,pan,,no,3,191.50\n");
        Assert.Equal(
            ("spring", "pan", null, false, 3, Money.Of(191.50m)),
            (change.Order, change.Item, change.ExpectedOn, change.IsBackOrdered, change.Packs, change.Price));
        var day = Csv.One<OrderChange>("order_changes", "date,order,expected\n2026-02-01,spring,2026-04-24\n");
        Assert.Equal((null, new(2026, 4, 24), null, null, null),
            (day.Item, day.ExpectedOn, day.IsBackOrdered, day.Packs, day.Price));
    }

    [Fact]
    public void A_cancellation_has_a_file_of_its_own()
    {
        var cancelled = Csv.One<OrderCancellation>("order_cancellations",
            "date,order,item,reason\n2026-02-01,spring,pan,no longer made\n");
        Assert.Equal(("spring", "pan", "no longer made"), (cancelled.Order, cancelled.Item, cancelled.Reason));
        Assert.Equal("reason",
            Csv.Problem("order_cancellations", "date,order,item,reason\n2026-02-01,spring,pan,\n").Column);
    }

    [Fact]
    public void A_delivery_names_its_order() =>
        Assert.Equal("spring",
            Csv.One<Delivery>("deliveries", "date,item,packs,order\n2026-03-06,pan,1,spring\n").Lines[0].Order);

    [Fact]
    public void A_price_rise_is_read()
    {
        var rise = Csv.One<PriceRiseNotice>("price_rises",
            "date,item,percent,from,note\n2026-03-06,pan,6.5,2026-05-01,a slip\n");
        Assert.Equal(("pan", 6.5m, new(2026, 5, 1), "a slip"), (rise.Item, rise.Percent, rise.From, rise.Note));
    }
}
