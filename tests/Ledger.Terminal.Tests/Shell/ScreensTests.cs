namespace Ledger.Terminal.Tests.Shell;

public sealed class ScreensTests : OnASmallLedger
{
    [Theory]
    [InlineData('1', "Today", "When What By")]
    [InlineData('2', "Shelf", "Item On hand Good until State Enough for")]
    [InlineData('3', "Baths", "Bath State Capacity left Used, of capacity")]
    [InlineData('4', "Sessions", "Session Date Sheets Film Area Bath")]
    [InlineData('5', "Costs of the last 12 months", "Film Used Neg. Keep. Per sheet Per neg. Per keeper Total")]
    [InlineData('6', "Journal", "No. Date Kind What")]
    public void Each_screen_is_one_digit_away_and_shows_its_columns_at_80_and_at_120(char digit,
        string title, string headings)
    {
        foreach (var (width, height) in new[] { (80, 24), (120, 40) })
        {
            var screen = Look(width, height);

            screen.Type(digit.ToString());

            Assert.StartsWith($" {title} ", screen.Title);
            Assert.StartsWith(headings,
                string.Join(' ', screen.Lines[2].Split(' ', StringSplitOptions.RemoveEmptyEntries)));
            Assert.Equal(
                ["Today", "Shelf", "Baths", "Sessions", "Costs", "Journal", "Holders", "Reorder", "File"],
                screen.Lines[0].Split([' ', '1', '2', '3', '4', '5', '6', '7', '8', '9'],
                    StringSplitOptions.RemoveEmptyEntries));
            Assert.Matches("^ Space Blank +F1 Help", screen.Lines[height - 1]);
            Assert.All(screen.Lines, line => Assert.True(line.Length <= width));
        }
    }

    [Fact]
    public void Today_shows_what_needs_the_user_with_the_reason_the_step_and_what_could_be_done()
    {
        Screen.Shows(
            "!! now  bath F4 expired 2 days ago", "Reason", "rotate the pair", "What could be done today",
            "syrup: 64 ml, enough for 2 batches", "Capacity left  [########..] 89 %");
    }

    [Fact]
    public void V_on_a_notice_shows_the_bath_it_is_about_and_Esc_leads_back_to_today()
    {
        Screen.Type("v");
        Assert.StartsWith(" Baths ", Screen.Title);
        Assert.Contains("Bath F4: fixer for film", Screen.Text);

        Screen.Press(Key.Esc);
        Assert.StartsWith(" Today ", Screen.Title);
    }

    [Fact]
    public void Enter_on_an_item_shows_its_boxes_and_Esc_goes_back_to_the_item()
    {
        Screen.Type("2").Press(Key.CursorDown, Key.CursorDown, Key.Enter);
        Assert.StartsWith(" Shelf: tarnfix", Screen.Title);
        Assert.Contains("tarnfix/1", Screen.Text);

        Screen.Press(Key.Esc);
        Assert.Contains("tarnfix: Tarnbeck rapid fixer", Screen.Text);
    }

    [Theory]
    [InlineData('2', "ocfde", "item")]
    [InlineData('3', "dta", "bath")]
    [InlineData('4', "w", "session")]
    [InlineData('6', "u", "entry")]
    [InlineData('8', "ne", "item")]
    public void A_key_without_a_row_says_so(char digit, string keys, string row)
    {
        foreach (var key in keys)
        {
            using var screen = new Screen(Some.EmptyLedger());
            Assert.True(screen.Type($"{digit}{key}").Text.Contains($"There is no {row} yet to do that with.",
                StringComparison.Ordinal), $"{digit} {key}");
        }
    }

    [Theory]
    [InlineData("mix stock", "item")]
    [InlineData("note", "bath")]
    [InlineData("cancel order", "item")]
    [InlineData("terms", "item")]
    [InlineData("price rise", "item")]
    [InlineData("give up", "plan")]
    public void An_action_without_a_row_says_so(string words, string row)
    {
        using var screen = new Screen(Some.EmptyLedger());
        Assert.Contains($"There is no {row} yet to do that with.", screen.Find(words).Text);
    }

    [Fact]
    public void The_plans_keys_say_so_too_without_a_plan()
    {
        foreach (var key in "ew")
        {
            using var screen = new Screen(Some.EmptyLedger());
            Assert.Contains("There is no plan yet to do that with.", screen.Type($"1p{key}").Text);
        }
    }

    [Fact]
    public void The_help_gives_a_key_that_the_screen_takes_one_meaning()
    {
        var screen = Look(120, 60);

        var help = screen.Type("5").Press(Key.F1).Text;
        Assert.Contains("shows another period", help);
        Assert.Contains("shows what is planned", help);
        Assert.Contains("logs a session", help);
        var baths = screen.Press(Key.Esc).Type("3").Press(Key.F1).Text;
        Assert.Contains("mixes the bath that follows the selected one", baths);
        Assert.DoesNotContain("mixes a bath", baths);
    }

    [Theory]
    [InlineData('1', "No ledger entries yet")]
    [InlineData('2', "No ledger entries yet")]
    [InlineData('3', "No bath is in use. Press B to mix one.")]
    [InlineData('4', "No session yet. Press S to log one.")]
    [InlineData('5', "No film was developed in the last 12 months.")]
    [InlineData('6', "No ledger entries yet")]
    public void An_empty_ledger_says_what_to_do(char digit, string sentence)
    {
        using var screen = new Screen(Some.EmptyLedger());

        Assert.Contains(sentence, screen.Type(digit.ToString()).Text);
    }

    [Theory]
    [InlineData('1')]
    [InlineData('2')]
    [InlineData('3')]
    [InlineData('4')]
    [InlineData('5')]
    [InlineData('6')]
    public void F1_says_what_the_screen_is_for_and_warns_of_panchromatic_film(char digit)
    {
        var screen = Look(100, 160);
        screen.Type(digit.ToString());
        var purpose = screen.Shell.Page.Purpose[0];
        var keys = screen.Shell.Page.Actions;

        screen.Press(Key.F1);

        var text = string.Join(' ',
            screen.Text.Split((char[])[' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains(purpose, text);
        Assert.All(keys,
            key => Assert.Contains($"{(key.Key is null ? $"F2 {key.Label}" : key.Name)} {key.Meaning}", text));
        Assert.Contains("Any light fogs panchromatic film, red light too", text);
        Assert.StartsWith(" Help: ", screen.Title);
        Assert.DoesNotContain(" Help: ", screen.Press(Key.Esc).Title);
    }

    [Fact]
    public void The_space_bar_blanks_the_screen_and_only_the_one_key_that_was_named_before_lights_it_up()
    {
        Screen.Press(Key.Space);
        Assert.False(Screen.Shell.IsBlank);
        Screen.Shows("Ctrl+L lights the screen up again", "leave it outside, or cover it");

        Screen.Press(Key.Space);
        Assert.True(Screen.Shell.IsBlank);
        foreach (var key in new[] { Key.D3, Key.Space, Key.Enter, Key.Esc, Key.F1, Key.F2, Key.F9, Key.Q.WithCtrl })
            Screen.Press(key);
        Screen.Click(5, 5).Click(10, 0);
        Assert.True(Screen.Shell.IsBlank);
        Assert.All(Screen.Lines, line => Assert.Equal("", line.Trim()));

        Screen.Press(Key.L.WithCtrl);
        Assert.StartsWith(" Today ", Screen.Title);
        Screen.Press(Key.Space);
        Assert.True(Screen.Shell.IsBlank);
    }

    [Fact]
    public void A_click_on_a_key_presses_it()
    {
        Screen.Click(Screen.Lines[0].IndexOf("3 Baths", StringComparison.Ordinal) + 1, 0);

        Assert.StartsWith(" Baths ", Screen.Title);
    }

    [Fact]
    public void What_another_process_writes_appears_and_the_selection_stays()
    {
        Screen.Type("6").Press(Key.CursorDown);
        var selected = Screen.Lines.First(line => line.Contains("Entry 9: bath", StringComparison.Ordinal));

        Ledger.Did(Some.ADiscard("fen80", new(1, Core.Measures.Unit.Sheet)));
        Ledger.Version++;
        Screen.Shell.Poll();

        Assert.Contains("discarded 1 sheet of fen80", Screen.Text);
        Assert.Contains(selected, Screen.Text);
    }

    [Fact]
    public void Trouble_with_the_file_is_said_and_the_screen_stays()
    {
        var screen = Look();

        Ledger.Trouble = "the ledger is locked; try again";
        screen.Type("4");

        Assert.Contains("The ledger is locked; try again.", screen.Text);
    }

    [Fact]
    public void A_day_without_worries_says_so_and_still_tells_what_could_be_done()
    {
        using var screen = new Screen(Some.QuietLedger());

        screen.Shows("Nothing needs you today.", "What could be done today");
    }

    [Fact]
    public void The_help_over_a_form_tells_its_keys_and_leads_back_to_what_was_typed()
    {
        var screen = Look(80, 40);

        screen.Type("s").Type("12").Press(Key.F1);
        Assert.Matches("F3 +adds four sheets to the line with the cursor", screen.Text);
        Assert.DoesNotContain("mixes a bath", screen.Text);

        screen.Type("3").Press(Key.Esc);
        Assert.Contains("Sheets 12", screen.Text);
    }

    [Fact]
    public void A_click_selects_a_row_and_a_capital_letter_is_the_same_key()
    {
        Screen.Type("3").Click(3, 5);
        Assert.Contains("Bath F5: fixer for film", Screen.Text);

        Screen.Type("D");
        Assert.StartsWith(" Discard ", Screen.Title);
    }

    [Fact]
    public void Costs_turn_through_the_periods()
    {
        Assert.StartsWith(" Costs of this month ", Screen.Type("5v").Title);
        Assert.StartsWith(" Costs of this year ", Screen.Type("v").Title);
    }

    [Fact]
    public void Tab_goes_to_the_details_which_then_scroll()
    {
        var screen = Look(80, 18);
        screen.Type("2");
        Assert.Contains("fen80: Corvane Fen 80", screen.Text);

        screen.Press(Key.Tab, Key.End);

        Assert.DoesNotContain("fen80: Corvane Fen 80", screen.Text);
        Assert.Contains("^", screen.Text);
    }
}
