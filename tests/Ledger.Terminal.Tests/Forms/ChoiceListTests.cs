namespace Ledger.Terminal.Tests.Forms;

/// <summary>What can be chosen opens under the field while it is typed in.</summary>
public sealed class ChoiceListTests : OnASmallLedger
{
    [Fact]
    public void Typing_opens_what_fits_with_what_a_person_needs_to_choose()
    {
        Screen.Type("2c").Press(Key.Tab.WithShift).Type("t");

        Assert.Matches("tarnfix/1 +[0-9]+ ml, open", Screen.Text);
        Assert.Matches("tarnfix +Tarnbeck rapid fixer", Screen.Text);
        Assert.DoesNotContain("syrup/1 ", Screen.Text);
    }

    [Fact]
    public void Down_goes_through_what_fits_and_Esc_closes_the_list_before_the_form()
    {
        Screen.Type("2c").Press(Key.Tab.WithShift).Type("fen").Press(Key.CursorDown);
        var form = Assert.IsType<FormPage>(Screen.Shell.Page).Form;
        Assert.Equal("fen80/1", form.Fields.Single(field => field.Label == "What").Text);
        Assert.Contains("> fen80/1", Screen.Text);

        Screen.Press(Key.CursorDown);
        Assert.Contains("> fen80/2", Screen.Text);

        Screen.Press(Key.Esc);
        Assert.DoesNotContain("> fen80/2", Screen.Text);
        Assert.IsType<FormPage>(Screen.Shell.Page);
    }

    [Fact]
    public void A_bath_is_offered_with_what_it_has_left()
    {
        var form = new SessionForm(Ledger);

        Assert.Contains("sq in left", form["bath"].NoteOf("F5"));
    }

    [Fact]
    public void A_click_takes_a_row()
    {
        Screen.Type("2c").Press(Key.Tab.WithShift).Type("fen");
        var row = Array.FindIndex(Screen.Lines, line => line.Contains("fen80/2", StringComparison.Ordinal));

        Screen.Click(Screen.Lines[row].IndexOf("fen80/2", StringComparison.Ordinal), row);

        Assert.Equal("fen80/2",
            Assert.IsType<FormPage>(Screen.Shell.Page).Form.Fields.Single(field => field.Label == "What").Text);
    }
}
