using Ledger.Terminal.Pictures;

namespace Ledger.Terminal.Tests.Screens;

/// <summary>The Reorder screen by keys alone.</summary>
public sealed class ReorderTests : OnTheDemoYear
{
    [Fact]
    public void What_is_due_stands_first_with_its_reason_and_an_order_is_two_keys_away()
    {
        var screen = Look(120, 40);
        var text = screen.Type("8").Text;
        Assert.Contains("syrup", text);
        Assert.Contains("!! now", text);
        Assert.Contains("Stock by week", text);
        Assert.Contains("order 1 pack now", text);

        screen.Type("n").Press(Key.F8);
        var order = Assert.Single(Ledger.HoldingsOn(Ledger.Today).Orders.Open, one => one.LineOf("syrup") is not null);
        Assert.Equal((1, new LocalDate(2026, 4, 5)), (order.Lines[0].Packs, order.Lines[0].ExpectedOn));
    }

    [Fact]
    public void What_the_supplier_says_and_how_an_item_is_ordered_are_a_key_away()
    {
        var screen = Look(120, 40);
        screen.Type("8").Find("terms").Type("90").Press(Key.F8);
        Assert.Equal(90, Ledger.HoldingsOn(Ledger.Today).Orders.Terms("syrup").CoverDays);
        screen.Find("price rise").Type("6.5").Press(Key.Tab).Type("2026-06-01").Press(Key.F8);
        Assert.Contains(new("syrup", new(2026, 6, 1), 65), Ledger.HoldingsOn(Ledger.Today).Orders.PriceRises);
    }

    [Fact]
    public void An_order_gets_other_packs_and_its_delivery_is_offered_them()
    {
        var form = new KindForm(Ledger, "order-change", ("item", "fen80"));
        Assert.Equal("spring-film", form["order"].Text);
        form["packs"].Type("4");
        form["price"].Type("190");
        Assert.IsType<Posted>(Ledger.Post(Assert.IsType<Ready>(form.Judge()).Entry));
        var delivery = new DeliveryForm(Ledger, "fen80");
        var line = delivery.Lines[0];
        Assert.Equal(("spring-film", "3", "190.00"), (line["order"].Text, line["packs"].Text, line["price"].Text));
        line["order"].Type("");
        delivery.Edited(line["order"]);
        Assert.Equal("1", line["packs"].Text);
    }

    [Fact]
    public void A_narrow_chart_is_low_and_names_its_marks()
    {
        var chart = new StockChart([8, 6, null, 4], [4, 2, 0, 8], 2, [3], level => $"{level:0}");
        Assert.Equal(
        [
            "8 |#      o",
            "  |#      o",
            "  |##     o",
            "  |## #o  o",
            "2 |##-#oo-o",
            "0 +----....",
            "    now   ^",
            "# was  o expected  - order  ^ due",
        ], chart.Lines(36));
    }

    [Fact]
    public void The_level_at_the_top_is_the_highest_that_is_shown() => Assert.StartsWith(
        "12 |", new StockChart([99, .. Enumerable.Repeat<decimal?>(12, 20)], [6], 2, [],
            level => $"{level:0}").Lines(16).First(),
        StringComparison.Ordinal);

    [Fact]
    public void A_chart_shows_the_past_the_level_to_order_at_and_deliveries()
    {
        var chart = new StockChart([8, 6, null, 4], [4, 2, 0, 8], 2, [3], level => $"{level:0}");
        Assert.Equal(
        [
            "8 |#      o",
            "  |#      o",
            "  |##     o",
            "  |##     o",
            "  |## #o  o",
            "  |## #o  o",
            "2 |##-#oo-o",
            "  |## #oo o",
            "0 +----....",
            "    now   ^",
            "# was  o expected  - order  ^ due",
        ], chart.Lines(60));
    }
}
