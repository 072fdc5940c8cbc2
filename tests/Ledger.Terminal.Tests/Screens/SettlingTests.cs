namespace Ledger.Terminal.Tests.Screens;

/// <summary>Enter on a notice opens the form that settles it, filled in.</summary>
public sealed class SettlingTests : OnASmallLedger
{
    [Fact]
    public void A_spent_pair_opens_its_rotation_and_saving_it_settles_the_notice()
    {
        Assert.Contains("!! now  bath F4", Screen.Text);

        var form = Opened(Screen);
        Assert.Equal("F4", form.Fields.Single(field => field.Label == "Pair of").Text);
        Screen.Press(Key.F8);

        Assert.DoesNotContain("!! now  bath F4", Screen.Text);
    }

    [Fact]
    public void A_spent_bath_that_stands_alone_is_discarded_and_then_a_fresh_one_is_mixed()
    {
        Ledger.Did(new Discard { Key = Some.Key(), Date = Some.Today, What = "F5", Reason = "specks" });
        Assert.IsType<DiscardForm>(Opened(Screen));
        Screen.Type("expired").Press(Key.F8);

        Assert.IsType<BathForm>(Assert.IsType<FormPage>(Screen.Shell.Page).Form);
        Assert.Contains("Entry 12: ", Screen.Text);
    }

    [Fact]
    public void The_good_bath_of_a_pair_that_ended_goes_with_it_and_the_form_says_why()
    {
        Ledger.Did(new SettingChange { Key = Some.Key(), Date = Some.Today, Setting = "rotation-ceiling", Value = "0" });

        var second = Opened(Screen);
        Assert.Equal("F5", second.Fields.Single(field => field.Label == "What").Text);
        Assert.Contains("F4 ended", Reason(second));
        Screen.Press(Key.F8);

        var first = Assert.IsType<FormPage>(Screen.Shell.Page).Form;
        Assert.Equal("F4", first.Fields.Single(field => field.Label == "What").Text);
        Assert.DoesNotContain("F4 ended", Reason(first));
        Screen.Press(Key.F8);
        Assert.IsType<BathForm>(Assert.IsType<FormPage>(Screen.Shell.Page).Form);

        static string Reason(Form form) => form.Fields.Single(field => field.Label == "Reason").Text;
    }

    [Fact]
    public void Stock_below_its_minimum_opens_the_order()
    {
        Screen.Press(Key.CursorDown);
        Assert.Contains("syrup", Screen.Lines.First(line => line.Contains("! soon", StringComparison.Ordinal)));

        Assert.IsType<OrderForm>(Opened(Screen));
    }

    [Fact]
    public void A_late_order_opens_its_news()
    {
        Ledger.Did(new OrderPlacement
        {
            Key = Some.Key(), Date = new(2026, 2, 1), Order = "syr-1",
            Lines = [new() { Item = "syrup", Packs = 1, ExpectedOn = new(2026, 3, 1) }],
        });
        while (!Screen.Lines.Any(line => line.Contains("Order syr-1:", StringComparison.Ordinal)))
            Screen.Press(Key.CursorDown);

        Assert.Equal("syr-1", Opened(Screen).Fields.Single(field => field.Label == "Order").Text);
    }

    [Fact]
    public void Sides_that_were_loaded_long_ago_are_one_line_and_open_one_unloading()
    {
        foreach (var holder in new[] { "E01", "E02" })
        {
            Ledger.Did(new HolderDefinition
            {
                Key = Some.Key(), Date = new(2025, 9, 1), Holder = holder, Format = Format.Parse("8x10"),
                Sides = ["1", "2"],
            });
            Ledger.Did(new Load { Key = Some.Key(), Date = new(2025, 9, 2), Sides = [$"{holder}-1", $"{holder}-2"],
                From = "fen80", Anyway = true });
        }

        var screen = Look(120, 40);
        Assert.Single(screen.Lines, line => line.Contains("  note", StringComparison.Ordinal));
        Assert.Contains("E01-1, like 3 more, was loaded", screen.Text);
        screen.Press(Key.End);

        Assert.Equal("E01-1, E01-2, E02-1, E02-2", Opened(screen).Fields.Single(field => field.Label == "From").Text);
    }

    private static Form Opened(Screen screen) => Assert.IsType<FormPage>(screen.Press(Key.Enter).Shell.Page).Form;
}
