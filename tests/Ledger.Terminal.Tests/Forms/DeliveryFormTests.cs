using Ledger.Terminal.Tests.Year;

namespace Ledger.Terminal.Tests.Forms;

/// <summary>Deliveries of several items, by keys alone on 80 by 24.</summary>
public sealed class DeliveryFormTests : OnASmallLedger
{
    [Fact]
    public void A_delivery_of_three_lines_is_typed_and_equals_the_same_entry_to_the_last_millionth()
    {
        var typist = new Typist(Screen);
        Screen.Type("2r").Press(Key.F4, Key.F4);
        typist.Fill(
            ("Invoice", "inv-4711"), ("Discount on all", "7.77"), ("Shipping", "14.50"), ("Duty and tax", "3.01"),
            ("Note", "spring"), ("Item", "fen80"), ("Packs", "2"), ("Price of a pack", "186"),
            ("Batch", "CP-1"), ("Expiry date", "2028-01-31"), ("Kept in", "freezer"), ("Item", "syrup"),
            ("Packs", "1"), ("Price of a pack", "41.95"), ("Batch", "B 7"), ("Expiry date", ""),
            ("Kept in", "shelf"), ("Item", "tarnfix"), ("Packs", "3"), ("Price of a pack", "15.90"),
            ("Batch", ""), ("Expiry date", "2027-06-30"), ("Kept in", ""));

        var other = Some.Ledger();
        other.Did(new Delivery
        {
            Key = Some.Key(), Date = Some.Today, Reference = "inv-4711", Note = "spring",
            Discount = Money.Of(7.77m), Shipping = Money.Of(14.50m), Duty = Money.Of(3.01m),
            Lines =
            [
                new() { Item = "fen80", Packs = 2, Price = Money.Of(186), Batch = "CP-1", ExpiresOn = new(2028, 1, 31),
                    Storage = "freezer" },
                new() { Item = "syrup", Packs = 1, Price = Money.Of(41.95m), Batch = "B 7", Storage = "shelf" },
                new() { Item = "tarnfix", Packs = 3, Price = Money.Of(15.90m), ExpiresOn = new(2027, 6, 30) },
            ],
        });
        Assert.Equal(Shelf(other), Shelf(Ledger));
        var (wrote, same) = (Ledger.Journal(Some.Today, null, 1)[0], other.Journal(Some.Today, null, 1)[0]);
        Assert.Equal((same.Number, same.Kind, same.Summary, same.Note),
            (wrote.Number, wrote.Kind, wrote.Summary, wrote.Note));

        // 2 x 186 + 41.95 + 3 x 15.90 - 7.77 + 14.50 + 3.01
        var came = Ledger.HoldingsOn(Some.Today).Containers.Where(container => container.Lot.ReceivedOn == Some.Today);
        Assert.Equal(471_390_000, came.Sum(container => container.Value.Millionths));
    }

    [Fact]
    public void What_each_line_costs_on_the_shelf_is_shown_exactly_before_it_is_saved()
    {
        Screen.Type("2r").Type("1");
        Go(Screen, "Price of a pack").Type("100").Press(Key.F4).Type("syrup");
        Go(Screen, "Price of a pack", 1).Type("50");
        Go(Screen, "Shipping").Type("10");

        Assert.Contains("Cost on the shelf, EUR", Screen.Text);
        Assert.Matches(@"fen80 +25 sheets +106\.666667 +4\.266667 a sheet", Screen.Text);
        Assert.Matches(@"syrup +1000 ml +53\.333333 +0\.053333 a ml", Screen.Text);
        Assert.Matches(@"together +160\.000000", Screen.Text);
    }

    [Fact]
    public void One_line_is_a_delivery_too_and_shows_its_cost_too()
    {
        var form = new DeliveryForm(Ledger, "fen80");
        form["shipping"].Type("4.5");
        var ready = Assert.IsType<Ready>(form.Judge());
        Assert.IsType<Delivery>(ready.Entry);
        Assert.Equal(["fen80  25 sheets  182.500000  7.30 a sheet"], ready.More.Single().Lines(76));
    }

    [Fact]
    public void Bad_input_names_its_line_and_writes_nothing()
    {
        Screen.Type("2r").Press(Key.F4);
        Assert.Contains("line 2, Item: found nothing; accepted is the item", Screen.Text);

        Screen.Type("syrup").Press(Key.Tab.WithShift).Type("two").Press(Key.F8);
        Assert.Contains("Line 2, Packs: found \"two\"; accepted is a number from", Screen.Text);

        Screen.Press(Key.Tab.WithShift, Key.Tab).Type("0").Press(Key.F8);
        Assert.Contains("Line 2, Packs: found \"0\"; accepted is a number from", Screen.Text);

        Screen.Press(Key.Tab.WithShift, Key.Tab).Type("1");
        Go(Screen, "Discount on all").Type("9999").Press(Key.F8);
        Assert.Contains("The discount, 9999.00, is more than the", Screen.Text);
        Assert.Equal(10, Ledger.Journal(Some.Today, null, 1)[0].Number);
    }

    [Fact]
    public void A_line_is_dropped_and_what_stands_in_the_others_stays()
    {
        Screen.Type("2r").Press(Key.F4).Type("syrup").Press(Key.F4).Type("tarnfix");
        var form = Assert.IsType<DeliveryForm>(Assert.IsType<FormPage>(Screen.Shell.Page).Form);
        Assert.Equal(["fen80", "syrup", "tarnfix"], form.Lines.Select(line => line["item"].Text));

        Go(Screen, "Item", 1).Press(Key.F5);
        Assert.Equal(["fen80", "tarnfix"], form.Lines.Select(line => line["item"].Text));
        Assert.Same(form.Lines[1]["packs"], Here(Screen));

        Go(Screen, "Note").Press(Key.F5);
        Assert.Equal(2, form.Lines.Count);

        Go(Screen, "Item").Press(Key.F5, Key.F5);
        Assert.Equal("tarnfix", Assert.Single(form.Lines)["item"].Text);
        Screen.Press(Key.F8);
        Assert.Equal("delivery", Ledger.Journal(Some.Today, null, 1)[0].Kind);
    }

    private static FormField? Here(Screen screen) => (screen.Shell.MostFocused as FieldBox)?.Field;

    private static Screen Go(Screen screen, string label, int before = 0)
    {
        var fields = Assert.IsType<FormPage>(screen.Shell.Page).Form.Fields.ToList();
        var field = fields.Where(one => one.Label == label).ElementAt(before);
        var step = fields.IndexOf(Here(screen)!) < fields.IndexOf(field) ? Key.Tab : Key.Tab.WithShift;
        for (var tried = 0; Here(screen) != field && tried < fields.Count; tried++)
            screen.Press(step);
        Assert.Same(field, Here(screen));
        return screen;
    }

    private static IEnumerable<(string, Quantity, Money, string, LocalDate?, string)> Shelf(FakeLedger ledger) =>
        ledger.HoldingsOn(Some.Today).Containers.Select(container => (
            container.Code, container.Held, container.Value, container.Lot.Batch, container.Lot.ExpiresOn,
            container.Storage));
}
