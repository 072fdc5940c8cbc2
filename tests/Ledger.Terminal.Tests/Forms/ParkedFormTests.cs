namespace Ledger.Terminal.Tests.Forms;

/// <summary>What was typed waits for its form, and what a form lacks is made from inside it.</summary>
public sealed class ParkedFormTests : OnASmallLedger
{
    [Fact]
    public void Esc_keeps_what_was_typed_and_the_form_comes_back_as_it_was()
    {
        Screen.Type("s").Type("7").Press(Key.Tab).Type("N+1").Press(Key.Esc);
        Assert.StartsWith(" Today", Screen.Title);
        Assert.Contains("kept as you left it", Screen.Text);

        Screen.Type("s");
        Assert.Contains("This is as you left it. Ctrl+E empties it.", Screen.Text);
        Assert.Matches("Sheets +7 +Group +N\\+1", Screen.Text);
        Screen.Press(Key.F8);
        Assert.Equal(7, Ledger.Sessions(Some.Today, null, 1)[0].Sheets);
        Assert.Empty(Ledger.Drafts);
    }

    [Fact]
    public void A_window_that_is_closed_loses_nothing_that_was_typed()
    {
        Look().Type("s").Type("7").Press(Key.Q.WithCtrl);

        Assert.Matches("Sheets +7", Look().Type("s").Text);
    }

    [Fact]
    public void A_second_after_it_was_typed_it_is_kept_so_that_a_crash_loses_nothing()
    {
        Screen.Type("s").Type("7");
        Assert.Empty(Ledger.Drafts);
        Screen.After(TimeSpan.FromSeconds(1.5));

        Assert.Contains("\"7\",\"typed\"", Assert.Single(Ledger.Drafts).Value);
    }

    [Fact]
    public void One_key_empties_the_form_and_nothing_is_kept_of_it()
    {
        Screen.Type("s").Type("7").Press(Key.Esc).Type("s");

        Screen.Press(Key.E.WithCtrl);

        Assert.DoesNotMatch("Sheets +7", Screen.Text);
        Assert.Empty(Ledger.Drafts);
    }

    [Fact]
    public void Each_bath_has_a_form_of_its_own_to_come_back_to()
    {
        Screen.Type("3d").Press(Key.Tab).Type("leaking jug").Press(Key.Esc);

        Screen.Press(Key.CursorDown).Type("d");

        Assert.DoesNotContain("leaking jug", Screen.Text);
        Assert.Equal("F5",
            Assert.IsType<FormPage>(Screen.Shell.Page).Form.Fields.First(field => field.Label == "What").Text);
    }

    [Fact]
    public void All_lines_come_back()
    {
        var form = new SessionForm(Ledger);
        form.Lines[0]["sheets"].Type("3");
        form.Keys.Single(key => key.Key == Key.F4).Press(form.Lines[0]["sheets"]);
        form.Lines[1]["sheets"].Type("2");
        form.Lines[1]["from"].Type("E01-1");
        Assert.True(form.Park());

        var again = new SessionForm(Ledger);
        again.PutBack(Ledger.Draft(again.ParkedAs!)!);

        Assert.Equal(["3", "2"], again.Lines.Select(line => line["sheets"].Text));
        Assert.Contains(again.Lines[1]["from"], again.Fields);
        Assert.True(again.IsTouched);
    }

    [Fact]
    public void A_form_that_cannot_be_kept_is_left_at_the_second_time_only()
    {
        Screen.Type("s").Type("7");
        Ledger.Trouble = "the ledger is locked";

        Assert.Contains("cannot be kept", Screen.Press(Key.Esc).Text);
        Assert.IsType<FormPage>(Screen.Shell.Page);
        Assert.DoesNotContain("kept as you left it", Screen.Press(Key.Esc).Text, StringComparison.Ordinal);
        Assert.IsNotType<FormPage>(Screen.Shell.Page);
    }

    [Fact]
    public void An_unknown_item_is_written_down_from_inside_a_delivery_which_goes_on_with_it()
    {
        Screen.Type("r").Type("pan100");
        Screen.Shows("Ctrl+N in Item writes down a new item", "Ctrl+N New item");

        Screen.Press(Key.N.WithCtrl);
        Assert.StartsWith(" New item", Screen.Title);
        Screen.Type("Pan 100").Press(Key.Tab, Key.Tab, Key.Tab, Key.Tab).Type("25").Press(Key.F8);

        Assert.True(Screen.Title.StartsWith(" Delivery", StringComparison.Ordinal), Screen.Text);
        Assert.Equal("pan100",
            Assert.IsType<FormPage>(Screen.Shell.Page).Form.Fields.Single(field => field.Label == "Item").Text);
        Assert.NotNull(Ledger.HoldingsOn(Some.Today).Item("pan100"));
    }

    [Fact]
    public void A_jug_is_begun_from_inside_a_discarding_which_goes_on_with_it()
    {
        var form = Assert.IsType<FormPage>(Screen.Type("3d").Shell.Page).Form;
        for (var tabs = 0; tabs < 9 && (Screen.Shell.MostFocused as FieldBox)?.Field.Label != "Into jug"; tabs++)
            Screen.Press(Key.Tab);

        Screen.Press(Key.N.WithCtrl);
        Assert.StartsWith(" New waste jug", Screen.Title);
        Screen.Type("5l").Press(Key.Tab).Type("used fixer").Press(Key.F8);

        Assert.True(Screen.Shell.Page is FormPage { Form: DiscardForm }, Screen.Text);
        Assert.Equal(form, Assert.IsType<FormPage>(Screen.Shell.Page).Form);
        Assert.Equal("J1", form.Fields.Single(field => field.Label == "Into jug").Text);
    }

    [Fact]
    public void In_an_empty_ledger_a_session_says_how_to_go_on()
    {
        using var screen = new Screen(Some.EmptyLedger());

        Assert.Contains("Ctrl+N in", screen.Type("s").Text);
    }
}
