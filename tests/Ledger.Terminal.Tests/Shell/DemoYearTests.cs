using NodaTime.Extensions;
using NodaTime.Testing;

namespace Ledger.Terminal.Tests.Shell;

/// <summary>The screens on a real file with the demo year in it.</summary>
public sealed partial class DemoYearTests : OnTheDemoYear
{
    private static readonly (char Digit, string Sign)[] Signs =
        [('1', "F4"), ('2', "fen80"), ('3', "F5"), ('4', "S22"), ('5', "all film"), ('6', "2026-")];

    [Fact]
    public void Today_is_the_spent_bath_and_its_figures_stand_on_the_baths_screen()
    {
        Assert.Contains("!! now  bath F4 expired 2 days ago", Screen.Text);
        Screen.Type("v");

        Assert.Matches("F4 +!! expired +\\[####......\\] 46 % +1067 of 2000 sq in", Screen.Text);
        Screen.Shows("1067 of 2000 sq in a", "basis: handbook");
    }

    /// <summary>
    /// The picture names its day. A terminal draws rules and edge bars with signs of their own, the screen in memory
    /// with plain ones.
    /// </summary>
    [Fact]
    public void The_picture_in_the_README_is_what_the_demo_shows_on_its_day()
    {
        var picture = Readme.Picture().Select(Plain).ToList();
        var day = NodaTime.Text.LocalDatePattern.Iso.Parse(
            Assert.Single(Day().Matches(string.Join('\n', picture))).Value.Split(' ')[0]).Value;
        var clock = new FakeClock(day.At(new LocalTime(9, 0)).InUtc().ToInstant()).InUtc();
        using var ledger = Another("picture", clock);
        using var screen = new Screen(ledger);
        var seen = screen.Lines.Select(Plain).ToList();
        Assert.True(
            string.Join('\n', seen).Trim('\n') == string.Join('\n', picture).Trim('\n'),
            "the README is to show:\n" + string.Join('\n', seen.Select(line => $"    {line}")));
    }

    private static string Plain(string line) =>
        line.Replace('\u2500', '-').Replace('\u2503', '#').Replace('\u25bc', 'v').TrimEnd();

    [System.Text.RegularExpressions.GeneratedRegex("[0-9-]{10}  ledger[.]db")]
    private static partial System.Text.RegularExpressions.Regex Day();

    [Fact]
    public void Every_screen_draws_the_year_at_both_sizes()
    {
        foreach (var (width, height) in new[] { (80, 24), (120, 40), (40, 10) })
        {
            var screen = Look(width, height);
            foreach (var (digit, sign) in Signs)
                Assert.Contains(sign, screen.Type(digit.ToString()).Text);
        }
    }

    [Fact]
    public void The_sheets_that_are_found_are_written_as_CSV_by_a_key()
    {
        var paper = new FakePaper();
        var screen = Look(paper: paper);
        screen.Find("find a sheet").Type("/").Type("mill").Press(Key.Enter).Type(",");
        Assert.Equal(["CSV of mill"], paper.Pages);
    }

    [Fact]
    public void Under_cautions_too_the_choices_open_below_their_field_and_wide_screens_are_used()
    {
        var screen = Look(120, 40);
        screen.Type("3t").Press(Key.Tab.WithShift).Type("f");
        var film = Array.FindIndex(screen.Lines, line => line.StartsWith(" Film", StringComparison.Ordinal));
        Assert.Contains("fen80", screen.Lines[film + 1], StringComparison.Ordinal);
        Assert.Contains(screen.Lines, line => line.Contains(
            "Tarnbeck rapid fixer: gloves and eye protection; ventilate; used fixer holds silver; see the maker's "
                + "safety data", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_cleared_is_what_is_under_suspicion_and_nothing_else()
    {
        var screen = Look(80, 24);
        Assert.Contains("Nothing is under suspicion.", screen.Type("3").Find("clear suspicion").Text);
        screen.Find("raise suspicion").Type("white specks").Press(Key.F8);
        Assert.Contains("under suspicion", screen.Text);
        screen.Type("2").Find("clear suspicion").Type("filtered and tested").Press(Key.F8);
        Assert.Contains("is cleared: filtered and tested", Ledger.Journal(Ledger.Today, null, 1)[0].Summary);
    }

    [Fact]
    public void The_costs_add_up_on_the_screen()
    {
        Assert.Contains("All of it is accounted for", Screen.Type("5").Text);
    }

    [Fact]
    public void The_costs_turn_through_the_formulas_and_say_what_is_coming()
    {
        var screen = Look(120, 60);

        Assert.Contains("Another session like S22", screen.Type("5").Text);
        Assert.Contains("fen80 costs 6 % more", screen.Text);
        Assert.Matches("ortho16 .* 83.36", screen.Text);
        Assert.StartsWith(" Costs of the last 12 months by first in first out ", screen.Find("formula").Title);
        Assert.Matches("ortho16 .* 72.40", screen.Text);
        Assert.Contains("All of it is accounted for", screen.Text);
        Assert.StartsWith(" Costs of the last 12 months by month, costed by first in first out ",
            screen.Type("g").Title);
        screen.Press(Key.Esc);
        Assert.StartsWith(" Costs of the last 12 months by moving average ", screen.Find("formula").Title);
        Assert.Contains("All of it is accounted for", screen.Text);
        Assert.StartsWith(" Costs of the last 12 months  ", screen.Find("formula").Title);
    }

    [Fact]
    public void Why_a_negative_cost_more_than_the_month_before_is_said_for_this_month_too()
    {
        var screen = Look(120, 60);

        Assert.StartsWith(" Costs of this month ", screen.Type("5v").Title);
        Assert.Contains("In 2026-03 a negative cost", screen.Text);
        Assert.Contains("A negative: ", screen.Type("g").Text);
        Assert.Contains("spoiled film", screen.Text);
    }

    [Fact]
    public void An_item_on_the_shelf_shows_what_it_cost_delivery_by_delivery()
    {
        var screen = Look(120, 60);

        Assert.Contains("A sheet of fen80, bought", screen.Type("2").Text);
        Assert.Matches("2026-03-06 #+ 7.73", screen.Text);
    }

    [Fact]
    public void A_session_is_repeated_by_three_keys_and_taken_back_by_two()
    {
        var screen = Look();
        var before = Ledger.HoldingsOn(Ledger.Today).OnHand(Ledger.HoldingsOn(Ledger.Today).Item("fen80")!);

        screen.Type("s").Press(Key.F12, Key.F8);
        Assert.Equal("S23", Ledger.Sessions(Ledger.Today, null, 1)[0].Session);
        Assert.Equal(Ledger.Sessions(Ledger.Today, null, 2)[1].Developer,
            Ledger.Sessions(Ledger.Today, null, 1)[0].Developer);

        screen.Type("u").Press(Key.F8);
        Assert.Equal("S22", Ledger.Sessions(Ledger.Today, null, 1)[0].Session);
        Assert.Equal(before, Ledger.HoldingsOn(Ledger.Today).OnHand(Ledger.HoldingsOn(Ledger.Today).Item("fen80")!));
    }

    [Fact]
    public void A_session_that_was_just_saved_is_the_one_selected()
    {
        Assert.Contains("Session S22,", Screen.Type("4").Text);
        Assert.Contains("Session S23,", Screen.Type("s").Press(Key.F12, Key.F8).Text);
        Assert.Contains("Session S23,", Screen.Type("14").Text);
    }

    [Theory]
    [InlineData("2")]
    [InlineData("8")]
    [InlineData("7")]
    public void The_selected_row_is_in_sight_after_coming_back(string digit)
    {
        Screen.Type(digit).Press(Key.End);
        var last = Assert.IsType<TablePage>(Screen.Shell.Page).Model;
        var text = last.Cell(last.Count - 1, 0);
        Assert.Equal(last.Count - 1, last.SelectedRow);

        Assert.Contains(Rows(Screen), line => line.StartsWith($" {text} ", StringComparison.Ordinal));
        Screen.Type("1").Type(digit);
        Assert.True(Rows(Screen).Any(line => line.StartsWith($" {text} ", StringComparison.Ordinal)), Screen.Text);
        Screen.Type("r").Press(Key.Esc);
        Assert.True(Rows(Screen).Any(line => line.StartsWith($" {text} ", StringComparison.Ordinal)), Screen.Text);
        Screen.Press(Key.F1, Key.Esc);
        Assert.True(Rows(Screen).Any(line => line.StartsWith($" {text} ", StringComparison.Ordinal)), Screen.Text);
    }

    private static IEnumerable<string> Rows(Screen screen) =>
        screen.Lines.Skip(4).TakeWhile(line => !line.StartsWith(" --", StringComparison.Ordinal));

    [Fact]
    public void What_a_second_process_posts_appears_at_the_next_look()
    {
        using var other = LedgerFile.Open(Ledger.Path, Clock);
        var screen = Look();
        screen.Type("6");

        other.Post(new Core.Journal.Entries.StockCount
        {
            Key = Some.Key(), Date = other.Today, What = "syrup", Found = Quantity.Of(60, Unit.Millilitre),
            Reason = "dregs",
        });
        screen.Shell.Poll();

        Assert.Contains("counted syrup: 60 ml", screen.Text);
    }
}
