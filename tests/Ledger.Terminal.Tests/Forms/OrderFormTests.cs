using Ledger.Terminal.Tests.Year;

namespace Ledger.Terminal.Tests.Forms;

/// <summary>Orders of several items from the Reorder screen of the demo year.</summary>
public sealed class OrderFormTests : OnTheDemoYear
{
    [Fact]
    public void An_order_of_two_lines_is_typed_and_equals_the_same_entry()
    {
        Screen.Type("8").Type("n").Press(Key.F4);
        new Typist(Screen).Fill(
            ("Order", "summer"), ("Item", "syrup"), ("Packs", "3"), ("Price of a pack", "42.5"),
            ("Expected", "2026-04-10"), ("Back-ordered", ""), ("Item", "tarnfix"), ("Packs", "2"),
            ("Price of a pack", ""), ("Expected", ""), ("Back-ordered", "yes"), ("From", "mail-order shop"),
            ("Prepaid", "yes"));

        var other = Another("other");
        Assert.IsType<Posted>(other.Post(new OrderPlacement
        {
            Key = Some.Key(), Date = other.Today, Order = "summer", Supplier = "mail-order shop", IsPrepaid = true,
            Lines =
            [
                new() { Item = "syrup", Packs = 3, Price = Money.Of(42.5m), ExpectedOn = new(2026, 4, 10) },
                new() { Item = "tarnfix", Packs = 2, IsBackOrdered = true },
            ],
        }));
        var (typed, same) = (Summer(Ledger), Summer(other));
        Assert.Equal(2, typed.Lines.Count);
        Assert.Equal(same.Lines, typed.Lines);
        Assert.Equal((same.Supplier, same.IsPrepaid, same.PlacedOn), (typed.Supplier, typed.IsPrepaid, typed.PlacedOn));
        Assert.Equal(other.Journal(other.Today, null, 1)[0].Summary, Ledger.Journal(Ledger.Today, null, 1)[0].Summary);
    }

    [Fact]
    public void Its_delivery_offers_what_else_is_to_come_of_it_and_delivers_both()
    {
        Assert.IsType<Posted>(Ledger.Post(new OrderPlacement
        {
            Key = Some.Key(), Date = Ledger.Today, Order = "summer",
            Lines = [new() { Item = "syrup", Packs = 3, Price = Money.Of(42.5m) },
                new() { Item = "tarnfix", Packs = 2, Price = Money.Of(16) }],
        }));
        var delivery = new DeliveryForm(Ledger, "syrup");
        delivery.Keys.Single(key => key.Key == Key.F4).Press(null);
        Assert.Equal(
            [("syrup", "3", "42.50", "summer"), ("tarnfix", "2", "16.00", "summer")],
            delivery.Lines.Select(line => (line["item"].Text, line["packs"].Text, line["price"].Text,
                line["order"].Text)));
        var saving = delivery.Save();
        Assert.True(saving.IsDone, saving.Sentence);
        Assert.DoesNotContain(Ledger.HoldingsOn(Ledger.Today).Orders.Open, order => order.Code == "summer");
        Assert.True(Ledger.Check(null, default).Ok);
    }

    [Fact]
    public void What_is_wrong_is_said_with_its_line_and_a_line_is_dropped()
    {
        var screen = Look();
        var before = Ledger.Journal(Ledger.Today, null, 1)[0].Number;
        screen.Type("8").Type("n").Press(Key.F4, Key.Tab).Type("syrup").Press(Key.F8);
        Assert.Contains("names an item twice; put its packs together", screen.Text);

        screen.Press(Key.Tab.WithShift).Type("99999999999").Press(Key.F8);
        Assert.Contains("Line 2, Packs: found \"99999999999\"; accepted is a whole number from 1 to", screen.Text);
        Assert.Equal(before, Ledger.Journal(Ledger.Today, null, 1)[0].Number);

        screen.Press(Key.F5, Key.F8);
        var order = Ledger.HoldingsOn(Ledger.Today).Orders.Open.Single(one => one.Code == "2026-03-15-syrup");
        Assert.Equal("syrup", Assert.Single(order.Lines).Item);
    }

    [Fact]
    public void Another_item_in_a_line_brings_its_own_price_and_packs()
    {
        var readings = ReorderReading.Of(Ledger, Ledger.HoldingsOn(Ledger.Today));
        var form = new OrderForm(Ledger, readings, "syrup");
        var line = form.Lines[0];
        var fixer = readings.Single(reading => reading.Item.Code == "tarnfix");
        Assert.NotEqual(fixer.LastPrice!.Pack.Text(MeasureStyle.Metric), line["price"].Text);
        line["item"].Type("tarnfix");
        form.Edited(line["item"]);
        Assert.Equal(fixer.LastPrice.Pack.Text(MeasureStyle.Metric), line["price"].Text);
    }

    private static Order Summer(LedgerFile ledger) => ledger.HoldingsOn(ledger.Today).Orders.Order("summer")!;
}
