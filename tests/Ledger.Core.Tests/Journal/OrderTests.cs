namespace Ledger.Core.Tests.Journal;

public sealed class OrderTests
{
    [Fact]
    public void An_order_is_incoming_until_it_comes()
    {
        var ledger = Shelves.Stocked();
        ledger.Post(
            "order order=spring line=2_fen80_at_186_expected_2026-04-01 line=1_syrup_expected_2026-04-01 "
                + "supplier=the_shop prepaid=yes");
        var order = ledger.Holdings.Orders.Order("SPRING")!;
        Assert.Equal(("the shop", true, Some.Today), (order.Supplier, order.IsPrepaid, order.PlacedOn));
        Assert.Equal(("50 sheets", "on order"), (OnOrder(ledger, "fen80"), order.LineOf("fen80")!.State(Some.Today)));
        Assert.Equal("50 sheets", ledger.Holdings.OnHand(ledger.Holdings.Item("fen80")!).ToString());
    }

    [Fact]
    public void Part_of_a_delivery_leaves_the_rest_open_and_the_last_part_closes_it()
    {
        var ledger = Shelves.Stocked();
        ledger.Post("order line=2_fen80_expected_2026-02-15 date=2026-02-01");
        var first = ledger.Post("delivery item=fen80 packs=1 order=a1");
        Assert.Equal("25 sheets of fen80 are still to come of order A1", Assert.Single(first.Remarks));
        Assert.Equal(("25 sheets", "part delivered, late"), (OnOrder(ledger, "fen80"), Line(ledger).State(Some.Today)));
        Assert.Equal(1, Line(ledger).OutstandingPacks);
        ledger.Post("delivery item=fen80 packs=1 order=A1");
        Assert.Empty(ledger.Holdings.Orders.Open);
    }

    [Fact]
    public void What_the_supplier_says_changes_the_lines_it_is_about()
    {
        var ledger = Shelves.Stocked();
        ledger.Post("order line=2_fen80_expected_2026-02-15 line=1_syrup_expected_2026-02-15 date=2026-02-01");
        ledger.Post("order-change item=fen80 expected=2026-04-20 back_ordered=yes");
        Assert.Equal("back-ordered", Line(ledger).State(Some.Today));
        Assert.Equal("late", ledger.Holdings.Orders.Order("A1")!.LineOf("syrup")!.State(Some.Today));
        ledger.Post("order-change back_ordered=no");
        Assert.Equal(new(2026, 4, 20), Line(ledger).ExpectedOn);
        Assert.False(Line(ledger).IsBackOrdered);
    }

    [Fact]
    public void Packs_and_price_of_a_line_can_change_until_it_has_come()
    {
        var ledger = Shelves.Stocked();
        ledger.Post("order line=2_fen80_at_186 line=1_syrup");
        Assert.Equal(
            "order A1 waits for fen80, syrup; say of which the packs or the price are new",
            ledger.Refuse("order-change packs=3").Sentence);
        Assert.Equal(
            "order A1: fen80 3 packs instead of 2, a pack costs 191.50 instead of 186.00",
            ledger.Post("order-change item=fen80 packs=3 price=191.50").Summary);
        Assert.Equal(("75 sheets", 3, Money.Of(191.50m)),
            (OnOrder(ledger, "fen80"), Line(ledger).Packs, Line(ledger).Price));
        var came = ledger.Post("delivery item=fen80 packs=2 order=A1");
        Assert.Contains(new Effect("fen80 on order", "75 sheets", "25 sheets"), came.Effects);
        Assert.Equal(
            "50 sheets of fen80 have come of order A1 already; to have no more of it, cancel the rest",
            ledger.Refuse("order-change item=fen80 packs=2").Sentence);
        Assert.Equal(
            [new("fen80 on order", "25 sheets", "50 sheets"), new("fen80 expected", "-", "2026-04-01")],
            ledger.Post("order-change item=fen80 packs=4 expected=2026-04-01").Effects);
        Assert.Equal(("50 sheets", "part delivered"), (OnOrder(ledger, "fen80"), Line(ledger).State(Some.Today)));
    }

    [Fact]
    public void Cancelling_takes_back_what_has_not_come()
    {
        var ledger = Shelves.Stocked();
        ledger.Post("order line=2_fen80 line=1_syrup prepaid=yes");
        var cancelled = ledger.Post("order-cancellation item=fen80");
        Assert.Equal("order A1 was prepaid: see that the money comes back", Assert.Single(cancelled.Remarks));
        Assert.Equal(("0 sheets", "1000 ml"), (OnOrder(ledger, "fen80"), OnOrder(ledger, "syrup")));
        ledger.Post("order-cancellation");
        Assert.Empty(ledger.Holdings.Orders.Open);
    }

    [Fact]
    public void A_line_without_a_day_is_expected_after_the_items_lead_time()
    {
        var ledger = new InMemoryLedger();
        ledger.Post(Some.Definition(Some.Syrup with { LeadTimeDays = 21 }));
        ledger.Post("order line=1_syrup");
        Assert.Equal(Some.Today.PlusDays(21), ledger.Holdings.Orders.Order("A1")!.Lines[0].ExpectedOn);
    }

    [Fact]
    public void An_undo_of_a_delivery_opens_its_line_again()
    {
        var ledger = Shelves.Stocked();
        ledger.Post("order line=1_fen80");
        ledger.Post("delivery item=fen80 packs=1 order=A1");
        ledger.Post($"undo entry={ledger.Last}");
        Assert.Equal("25 sheets", OnOrder(ledger, "fen80"));
    }

    [Fact]
    public void An_undo_of_an_order_is_refused_while_something_rests_on_it()
    {
        var ledger = Shelves.Stocked();
        ledger.Post("order line=2_fen80");
        var placed = ledger.Last;
        ledger.Post("delivery item=fen80 packs=1 order=A1");
        Assert.Equal(RefusalKind.DependedOn, ledger.Refuse($"undo entry={placed}").Kind);
        ledger.Post($"undo entry={ledger.Last}");
        ledger.Post($"undo entry={placed}");
        Assert.Empty(ledger.Holdings.Orders.Open);
        ledger.Post("order line=1_fen80"); // the name is free again
    }

    [Fact]
    public void A_delivery_without_its_order_is_told_of_it()
    {
        var ledger = Shelves.Stocked();
        ledger.Post("order line=1_fen80");
        Assert.Equal(
            "order A1 waits for fen80; a delivery that names the order closes it",
            Assert.Single(ledger.Post("delivery item=fen80").Remarks));
    }

    [Theory]
    [InlineData("order order=A2", "order A2 names no item; name at least one")]
    [InlineData("order order=A1 line=1_fen80", "there was an order A1 already; give the new one a name of its own")]
    [InlineData("order order=A2 line=0_fen80", "the packs of fen80 must be from 1 to 10000, not 0")]
    [InlineData("order order=A2 line=1_fen80 line=2_FEN80", "order A2 names an item twice; put its packs together")]
    [InlineData("order order=A2 line=1_fen80_expected_2026-03-01",
        "fen80 cannot be expected before the order of 2026-03-15")]
    [InlineData("order-change",
        "say what is new: the day it is expected, that it is back-ordered, how many packs, or the price of a pack")]
    [InlineData("order-change packs=0", "the packs of fen80 must be from 1 to 10000, not 0")]
    [InlineData("order-change price=-1", "the price of fen80 cannot be negative: -1")]
    [InlineData("order-change order=A9 back_ordered=yes", "no order \"A9\" is open; open: A1")]
    [InlineData("order-change item=syrup back_ordered=yes", "order A1 waits for no syrup; still to come: fen80")]
    [InlineData("order-change expected=2026-01-01", "order A1 was placed on 2026-03-01; it cannot be expected before")]
    [InlineData("delivery item=syrup order=A1", "order A1 waits for no syrup; still to come: fen80")]
    [InlineData("delivery item=fen80 order=A1 date=2026-02-01",
        "order A1 was placed on 2026-03-01, after 2026-02-01; date the entry then or later")]
    [InlineData("price-rise item=fen80 percent=0",
        "the rise of fen80 must be from 0.1 to 1000 percent in tenths, not 0")]
    [InlineData("price-rise item=fen80 from=2026-03-15",
        "the new price must begin after 2026-03-15, not on 2026-03-15")]
    public void What_cannot_be_is_refused_with_a_sentence(string entry, string sentence)
    {
        var ledger = Shelves.Stocked();
        ledger.Post("order line=1_fen80 date=2026-03-01");
        Assert.Equal(sentence, ledger.Refuse(entry).Sentence);
    }

    [Theory]
    [InlineData("10-01", "10-31", "2026-03-15", "2026-10-01", "2026-10-31", 365)]
    [InlineData("10-01", "10-31", "2026-10-10", "2026-10-10", "2026-10-31", 356)]
    [InlineData("11-15", "01-15", "2026-12-24", "2026-12-24", "2027-01-15", 326)]
    [InlineData("11-15", "01-15", "2027-01-02", "2027-01-02", "2027-01-15", 317)]
    [InlineData("02-29", "03-31", "2027-01-01", "2027-02-28", "2027-03-31", 366)]
    public void A_yearly_window_comes_round(string opens, string closes, string today, string chance,
        string last, int following)
    {
        var terms = OrderTerms.None("fen80") with { WindowOpens = Dates.ParseAnnual(opens),
            WindowCloses = Dates.ParseAnnual(closes) };
        var next = terms.NextChance(Dates.Parse(today)!.Value);
        Assert.Equal((chance, last, following),
            (Dates.Text(next), Dates.Text(terms.LastChance(next)!.Value), terms.DaysToFollowingWindow(next)));
    }

    private static string OnOrder(InMemoryLedger ledger, string item) =>
        ledger.Holdings.Orders.OnOrder(ledger.Holdings.Item(item)!).ToString();

    private static OrderLine Line(InMemoryLedger ledger) => ledger.Holdings.Orders.Order("A1")!.LineOf("fen80")!;
}
