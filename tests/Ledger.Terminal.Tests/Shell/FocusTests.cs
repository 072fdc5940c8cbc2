using Ledger.Terminal.Blocks;

namespace Ledger.Terminal.Tests.Shell;

/// <summary>No key leads to where nothing happens.</summary>
public sealed class FocusTests : OnASmallLedger
{
    public static TheoryData<char> Digits => [.. "1234569"];

    [Theory]
    [MemberData(nameof(Digits))]
    public void An_arrow_at_the_end_of_a_table_stays_in_it(char digit)
    {
        using var screen = new Screen(Some.Ledger());
        screen.Type(digit.ToString());
        Assert.IsType<LedgerTable>(screen.Shell.MostFocused);
        foreach (var end in new[] { Key.CursorUp, Key.CursorLeft, Key.Home, Key.CursorUp, Key.End,
            Key.CursorDown, Key.CursorDown, Key.CursorRight })
        {
            screen.Press(end);
            Assert.True(screen.Shell.MostFocused is LedgerTable, $"{end} leads to {screen.Shell.MostFocused}");
        }
    }

    [Fact]
    public void Tab_goes_to_the_details_and_back_and_a_thick_line_shows_which_has_the_keys()
    {
        Screen.Type("2");
        Assert.DoesNotContain("====", Screen.Text);
        Assert.IsType<TextPane>(Screen.Press(Key.Tab).Shell.MostFocused);
        Assert.Contains("====", Screen.Text);
        Assert.IsType<LedgerTable>(Screen.Press(Key.Tab).Shell.MostFocused);
        Assert.DoesNotContain("====", Screen.Text);
        Assert.IsType<LedgerTable>(Screen.Press(Key.Tab.WithShift, Key.Tab.WithShift).Shell.MostFocused);
    }

    [Fact]
    public void After_the_first_item_of_an_empty_ledger_Enter_opens_it()
    {
        using var screen = new Screen(Some.EmptyLedger());
        screen.Type("2n").Type("ortho").Press(Key.Tab).Type("Mirrin Ortho").Press(Key.Tab, Key.Tab, Key.Tab)
            .Type("4x5").Press(Key.Tab).Type("50")
            .Press(Key.F8);
        Assert.IsType<LedgerTable>(screen.Shell.MostFocused);
        Assert.StartsWith(" Shelf: ortho", screen.Press(Key.Enter).Title);
    }

    [Theory]
    [InlineData("s")]
    [InlineData("r")]
    [InlineData("b")]
    [InlineData("2n")]
    [InlineData("7n")]
    [InlineData("3t")]
    public void Tab_goes_through_all_fields_and_the_saving_and_begins_again(string keys)
    {
        Screen.Type(keys);
        var form = Assert.IsType<FormPage>(Screen.Shell.Page).Form;
        var stops = form.Fields.Count() + 1;
        foreach (var tab in new[] { Key.Tab, Key.Tab.WithShift })
        {
            var first = Screen.Shell.MostFocused;
            var seen = new HashSet<object>();
            for (var i = 0; i < stops; i++)
            {
                var here = Screen.Shell.MostFocused;
                Assert.True(here is FieldBox or PressBox, $"{tab} leads to {here}");
                Assert.True(seen.Add(here), "a field is met twice");
                Screen.Press(tab);
            }

            Assert.Same(first, Screen.Shell.MostFocused);
        }
    }

    [Fact]
    public void What_came_of_a_form_scrolls_by_pages_from_every_field()
    {
        var screen = Look(80, 15);
        var before = screen.Type("s").Press(Key.F3).Text;
        Assert.True(before != screen.Press(Key.PageDown, Key.PageDown).Text, before);
        Assert.IsType<FieldBox>(screen.Shell.MostFocused);
    }

    [Fact]
    public void A_date_with_the_cursor_keeps_its_first_digit()
    {
        Screen.Type("2c");
        while ((Screen.Shell.MostFocused as FieldBox)?.Field.Kind != FieldKind.Date)
            Screen.Press(Key.Tab);
        Assert.Contains("2026-03-15", string.Join('\n', Screen.Lines[1..10]));
        Screen.Type("2026-03-1");
        Assert.Contains("2026-03-1", string.Join('\n', Screen.Lines[1..10]));
        Assert.Equal("2026-03-1", ((FieldBox)Screen.Shell.MostFocused!).Field.Text);
        Screen.Type("4");
        Assert.Contains("2026-03-14", string.Join('\n', Screen.Lines[1..10]));
    }

    [Fact]
    public void A_message_goes_when_its_fault_is_mended()
    {
        Screen.Type("2c").Type("x").Press(Key.F8);
        const string Fault = "\n Found: found \"x\"";
        Assert.Contains(Fault, Screen.Text.ReplaceLineEndings("\n"));
        Screen.Press(Key.Backspace).Type("30").Press(Key.Tab).Type("miscounted");
        Assert.DoesNotContain(Fault, Screen.Text.ReplaceLineEndings("\n"));
    }

    [Fact]
    public void Saving_a_setting_that_stays_as_it_is_writes_nothing()
    {
        var screen = Look();
        var before = Ledger.Journal(Ledger.Today, null, 1000).Count;
        Assert.Contains("stays as it is; nothing was written",
            screen.Type("9").Press(Key.Enter, Key.Enter, Key.F8).Text);
        Assert.Equal(before, Ledger.Journal(Ledger.Today, null, 1000).Count);
    }
}
