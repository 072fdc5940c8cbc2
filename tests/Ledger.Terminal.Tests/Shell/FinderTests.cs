using Ledger.Terminal.Finder;

namespace Ledger.Terminal.Tests.Shell;

/// <summary>One key for everything: the list of actions.</summary>
public sealed class FinderTests : OnASmallLedger
{
    [Fact]
    public void F2_lists_what_can_be_done_here_first_with_its_keys()
    {
        var screen = Look(120, 40);

        var lines = screen.Type("3").Press(Key.F2).Lines;

        Assert.Contains(lines, line => line.Contains("D      Discard", StringComparison.Ordinal));
        Assert.Contains("Type a few letters", screen.Text);
        Assert.Contains(lines, line => line.Contains("Ctrl+C Copy", StringComparison.Ordinal));
        Assert.True(Array.FindIndex(lines, line => line.Contains("D      Discard", StringComparison.Ordinal)) < 5,
            screen.Text);
    }

    [Fact]
    public void An_action_of_another_screen_goes_there_and_does_it()
    {
        Screen.Find("fen80");
        Assert.StartsWith(" Shelf ", Screen.Title);

        Screen.Type("1").Find("count shelf");

        Assert.Equal("Count", Form(Screen).Title);
        Assert.Contains("fen80", Screen.Text);
        Assert.StartsWith(" Shelf ", Screen.Press(Key.Esc).Title);
    }

    [Theory]
    [InlineData("waste jugs", " Waste jugs ")]
    [InlineData("jug", " Waste jugs ")]
    [InlineData("prnt", " Print sessions ")]
    [InlineData("formats", " Formats ")]
    [InlineData("exposed sh", " Exposed sheets ")]
    [InlineData("processes", " Processes ")]
    [InlineData("forgotten", " Not used for ")]
    [InlineData("settings", " Settings ")]
    public void A_table_without_a_digit_is_found_from_everywhere(string words, string title)
    {
        using var screen = new Screen(Some.EmptyLedger());
        Assert.StartsWith(title, screen.Type("5").Find(words).Title);
    }

    [Theory]
    [InlineData("throw away baths", "Discard", "Baths")]
    [InlineData("top up baths", "Add", "Baths")]
    [InlineData("stocktake shelf", "Count", "Shelf")]
    [InlineData("price", "Price rise", "Reorder")]
    public void Words_that_a_user_may_look_for_find_the_action(string words, string name, string place)
    {
        using var screen = new Screen(Some.Ledger());
        var found = new Findings(Some.Ledger(), screen.Shell.Page, MainScreens.Of(Some.Ledger(), new FakeUpkeep(), ""),
            new(Some.Ledger(), []));
        Assert.Equal((name, place), (found.For(words)[0].Name, found.For(words)[0].Place));
        Assert.Empty(found.For("qqxz"));
    }

    [Fact]
    public void What_is_not_found_is_said_and_Enter_does_nothing()
    {
        Assert.Contains("Nothing is found by that.", Screen.Press(Key.F2).Type("qqxz").Press(Key.Enter).Text);
        Assert.DoesNotContain("Nothing is found", Screen.Press(Key.Esc).Text);
        Assert.StartsWith(" Shelf ", Screen.Type("2").Title);
    }

    [Fact]
    public void Digits_and_letters_are_typed_in_the_list_and_the_arrows_move_in_it()
    {
        Screen.Press(Key.F2).Type("s22").Press(Key.Enter);
        Assert.StartsWith(" Sessions ", Screen.Title);

        Screen.Type("1").Press(Key.F2, Key.CursorDown, Key.Enter);
        Assert.StartsWith(" Snooze a notice ", Screen.Title);
    }

    [Fact]
    public void The_screen_goes_black_from_the_list_too()
    {
        Screen.Press(Key.F2, Key.F9, Key.F2, Key.F9);
        Assert.True(Screen.Shell.IsBlank);
        Assert.StartsWith(" Today ", Screen.Press(Key.L.WithCtrl).Title);
    }

    [Fact]
    public void In_a_form_the_list_has_the_forms_own_actions_and_what_was_typed_stays()
    {
        Screen.Type("s").Type("12").Find("+4");
        Assert.Contains("16", Screen.Text);
        Assert.Contains("Split", Screen.Press(Key.F2).Text);
        Assert.DoesNotContain("Waste jugs", Screen.Text);
        Assert.IsType<SessionForm>(Form(Screen.Press(Key.Esc)));
        Assert.True(Assert.IsType<FormPage>(Screen.Shell.Page).Form.IsTouched);
    }

    [Fact]
    public void Every_action_of_every_screen_can_be_reached()
    {
        var screen = Look();
        var screens = MainScreens.Of(Ledger, new FakeUpkeep(), "");
        var all = new Findings(Ledger, screen.Shell.Page, screens, new(Ledger, screens)).For("");
        Assert.All(
            screens.Skip(1).Concat(MainScreens.Others(Ledger))
                .SelectMany(one => one.Actions.Select(action => (action.Label, one.Name))),
            action => Assert.Contains(all, found => (found.Name, found.Place) == action));
    }

    private static Form Form(Screen screen) => Assert.IsType<FormPage>(screen.Shell.Page).Form;
}
