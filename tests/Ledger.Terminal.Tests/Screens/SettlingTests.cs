using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Terminal.Forms;
using Ledger.Terminal.Pages;
using Ledger.Terminal.Tests.Fakes;
using Terminal.Gui.Input;

namespace Ledger.Terminal.Tests.Screens;

/// <summary>Enter on a notice opens the form that settles it, filled in.</summary>
public sealed class SettlingTests
{
    private readonly FakeLedger _ledger = Some.Ledger();

    [Fact]
    public void A_spent_pair_opens_its_rotation_and_saving_it_settles_the_notice()
    {
        using var screen = new Screen(_ledger);
        Assert.Contains("!! now  bath F4", screen.Text);

        var form = Opened(screen);
        Assert.Equal("F4", form.Fields.Single(field => field.Label == "Pair of").Text);
        screen.Press(Key.F8);

        Assert.DoesNotContain("!! now  bath F4", screen.Text);
    }

    [Fact]
    public void A_spent_bath_that_stands_alone_is_discarded_and_then_a_fresh_one_is_mixed()
    {
        _ledger.Did(new Discard { Key = Some.Key(), Date = Some.Today, What = "F5", Reason = "specks" });
        using var screen = new Screen(_ledger);

        Assert.IsType<DiscardForm>(Opened(screen));
        screen.Type("expired").Press(Key.F8);

        Assert.IsType<BathForm>(Assert.IsType<FormPage>(screen.Shell.Page).Form);
        Assert.Contains("Entry 12: ", screen.Text);
    }

    [Fact]
    public void Stock_below_its_minimum_opens_the_order()
    {
        using var screen = new Screen(_ledger);
        screen.Press(Key.CursorDown);
        Assert.Contains("syrup", screen.Lines.First(line => line.Contains("! soon", StringComparison.Ordinal)));

        Assert.IsType<OrderForm>(Opened(screen));
    }

    [Fact]
    public void A_late_order_opens_its_news()
    {
        _ledger.Did(new OrderPlacement
        {
            Key = Some.Key(), Date = new(2026, 2, 1), Order = "syr-1",
            Lines = [new() { Item = "syrup", Packs = 1, ExpectedOn = new(2026, 3, 1) }],
        });
        using var screen = new Screen(_ledger);
        while (!screen.Lines.Any(line => line.Contains("Order syr-1:", StringComparison.Ordinal)))
            screen.Press(Key.CursorDown);

        Assert.Equal("syr-1", Opened(screen).Fields.Single(field => field.Label == "Order").Text);
    }

    [Fact]
    public void Sides_that_were_loaded_long_ago_are_one_line_and_open_one_unloading()
    {
        foreach (var holder in new[] { "E01", "E02" })
        {
            _ledger.Did(new HolderDefinition
            {
                Key = Some.Key(), Date = new(2025, 9, 1), Holder = holder, Format = Format.Parse("8x10"), Sides = ["1", "2"],
            });
            _ledger.Did(new Load { Key = Some.Key(), Date = new(2025, 9, 2), Sides = [$"{holder}-1", $"{holder}-2"], From = "fen80", Anyway = true });
        }

        using var screen = new Screen(_ledger, 120, 40);
        Assert.Single(screen.Lines, line => line.Contains("  note", StringComparison.Ordinal));
        Assert.Contains("E01-1, like 3 more, was loaded", screen.Text);
        screen.Press(Key.End);

        Assert.Equal("E01-1, E01-2, E02-1, E02-2", Opened(screen).Fields.Single(field => field.Label == "From").Text);
    }

    private static Form Opened(Screen screen) => Assert.IsType<FormPage>(screen.Press(Key.Enter).Shell.Page).Form;
}
