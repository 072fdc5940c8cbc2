using Ledger.Terminal.Forms;
using Ledger.Terminal.Tests.Fakes;
using Terminal.Gui.Input;

namespace Ledger.Terminal.Tests.Forms;

/// <summary>What was typed waits for its form, and what a form lacks is made from inside it.</summary>
public sealed class ParkedFormTests
{
    private readonly FakeLedger _ledger = Some.Ledger();

    [Fact]
    public void Esc_keeps_what_was_typed_and_the_form_comes_back_as_it_was()
    {
        using var screen = new Screen(_ledger);

        screen.Type("s").Type("7").Press(Key.Tab).Type("N+1").Press(Key.Esc);
        Assert.StartsWith(" Today", screen.Title);
        Assert.Contains("kept as you left it", screen.Text);

        screen.Type("s");
        Assert.Contains("This is as you left it. Ctrl+E empties it.", screen.Text);
        Assert.Matches("Sheets +7 +Group +N\\+1", screen.Text);
        screen.Press(Key.F8);
        Assert.Equal(7, _ledger.Sessions(Some.Today, null, 1)[0].Sheets);
        Assert.Empty(_ledger.Drafts);
    }

    [Fact]
    public void A_window_that_is_closed_loses_nothing_that_was_typed()
    {
        using (var screen = new Screen(_ledger))
            screen.Type("s").Type("7").Press(Key.Q.WithCtrl);

        using var again = new Screen(_ledger);
        Assert.Matches("Sheets +7", again.Type("s").Text);
    }

    [Fact]
    public void A_second_after_it_was_typed_it_is_kept_so_that_a_crash_loses_nothing()
    {
        using var screen = new Screen(_ledger);

        screen.Type("s").Type("7");
        Assert.Empty(_ledger.Drafts);
        screen.After(TimeSpan.FromSeconds(1.5));

        Assert.Contains("\"7\",\"typed\"", Assert.Single(_ledger.Drafts).Value);
    }

    [Fact]
    public void One_key_empties_the_form_and_nothing_is_kept_of_it()
    {
        using var screen = new Screen(_ledger);
        screen.Type("s").Type("7").Press(Key.Esc).Type("s");

        screen.Press(Key.E.WithCtrl);

        Assert.DoesNotMatch("Sheets +7", screen.Text);
        Assert.Empty(_ledger.Drafts);
    }

    [Fact]
    public void Each_bath_has_a_form_of_its_own_to_come_back_to()
    {
        using var screen = new Screen(_ledger);
        screen.Type("3d").Press(Key.Tab).Type("leaking jug").Press(Key.Esc);

        screen.Press(Key.CursorDown).Type("d");

        Assert.DoesNotContain("leaking jug", screen.Text);
        Assert.Equal("F5", Assert.IsType<FormPage>(screen.Shell.Page).Form.Fields.First(field => field.Label == "What").Text);
    }

    [Fact]
    public void All_lines_come_back()
    {
        var form = new SessionForm(_ledger);
        form.Lines[0]["sheets"].Type("3");
        form.Keys.Single(key => key.Key == Key.F4).Press(form.Lines[0]["sheets"]);
        form.Lines[1]["sheets"].Type("2");
        form.Lines[1]["from"].Type("E01-1");
        Assert.True(form.Park());

        var again = new SessionForm(_ledger);
        again.PutBack(_ledger.Draft(again.ParkedAs!)!);

        Assert.Equal(["3", "2"], again.Lines.Select(line => line["sheets"].Text));
        Assert.Contains(again.Lines[1]["from"], again.Fields);
        Assert.True(again.IsTouched);
    }

    [Fact]
    public void A_form_that_cannot_be_kept_is_left_at_the_second_time_only()
    {
        using var screen = new Screen(_ledger);
        screen.Type("s").Type("7");
        _ledger.Trouble = "the ledger is locked";

        Assert.Contains("cannot be kept", screen.Press(Key.Esc).Text);
        Assert.IsType<FormPage>(screen.Shell.Page);
    }

    [Fact]
    public void An_unknown_item_is_written_down_from_inside_a_delivery_which_goes_on_with_it()
    {
        using var screen = new Screen(_ledger);
        screen.Type("r").Type("pan100");
        Assert.Contains("Ctrl+N in Item writes down a new item", screen.Text);
        Assert.Contains("Ctrl+N New item", screen.Text);

        screen.Press(Key.N.WithCtrl);
        Assert.StartsWith(" New item", screen.Title);
        screen.Type("Pan 100").Press(Key.Tab, Key.Tab, Key.Tab, Key.Tab).Type("25").Press(Key.F8);

        Assert.True(screen.Title.StartsWith(" Delivery", StringComparison.Ordinal), screen.Text);
        Assert.Equal("pan100", Assert.IsType<FormPage>(screen.Shell.Page).Form.Fields.Single(field => field.Label == "Item").Text);
        Assert.NotNull(_ledger.HoldingsOn(Some.Today).Item("pan100"));
    }

    [Fact]
    public void A_jug_is_begun_from_inside_a_discarding_which_goes_on_with_it()
    {
        using var screen = new Screen(_ledger);
        var form = Assert.IsType<FormPage>(screen.Type("3d").Shell.Page).Form;
        for (var tabs = 0; tabs < 9 && (screen.Shell.MostFocused as FieldBox)?.Field.Label != "Into jug"; tabs++)
            screen.Press(Key.Tab);

        screen.Press(Key.N.WithCtrl);
        Assert.StartsWith(" New waste jug", screen.Title);
        screen.Type("5l").Press(Key.Tab).Type("used fixer").Press(Key.F8);

        Assert.True(screen.Shell.Page is FormPage { Form: DiscardForm }, screen.Text);
        Assert.Equal(form, Assert.IsType<FormPage>(screen.Shell.Page).Form);
        Assert.Equal("J1", form.Fields.Single(field => field.Label == "Into jug").Text);
    }

    [Fact]
    public void In_an_empty_ledger_a_session_says_how_to_go_on()
    {
        using var screen = new Screen(Some.EmptyLedger());

        Assert.Contains("Ctrl+N in", screen.Type("s").Text);
    }
}
