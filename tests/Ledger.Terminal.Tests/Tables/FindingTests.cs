namespace Ledger.Terminal.Tests.Tables;

/// <summary>Rows are found by words and sorted by a column, on every table.</summary>
public sealed class FindingTests : OnASmallLedger
{
    [Fact]
    public void Typing_leaves_the_rows_that_hold_all_words_and_counts_them()
    {
        Screen.Type("2/").Type("TARN");
        Screen.Shows("1 of 3", "tarnfix");
        Assert.DoesNotContain("fen80 ", Screen.Text);

        Screen.Press(Key.Enter, Key.Enter);
        Assert.StartsWith(" Shelf: tarnfix", Screen.Title);
    }

    [Fact]
    public void Esc_shows_all_again_and_only_then_leaves()
    {
        Screen.Type("2/").Type("nothing like it");
        Screen.Shows("0 of 3", "Nothing is found by that");

        Screen.Press(Key.Esc);
        Assert.StartsWith(" Shelf", Screen.Title);
        Assert.Contains("fen80", Screen.Text);
        Screen.Press(Key.Esc);
        Assert.StartsWith(" Today", Screen.Title);
    }

    [Fact]
    public void The_journal_is_searched_over_its_whole_length()
    {
        for (var i = 0; i < 450; i++)
            Ledger.Did(new SettingChange { Key = Some.Key(), Date = Some.Today, Setting = "warn-days",
                Value = $"{10 + i % 20}" });
        Screen.Type("6/").Type("session s22");

        Screen.Shows("1 of 460", "2026-03-08");
    }

    [Fact]
    public void A_key_sorts_by_each_heading_in_turn_and_another_the_other_way_round()
    {
        Assert.Equal(["fen80", "syrup", "tarnfix"], Items(Screen.Type("2")));

        Screen.Type("hy");
        Assert.Equal(["tarnfix", "syrup", "fen80"], Items(Screen));
        Assert.Contains("Itemv", Screen.Text);
        Screen.Type("h");
        Assert.Equal(["fen80", "syrup", "tarnfix"], Items(Screen));
    }

    [Fact]
    public void A_click_on_a_heading_sorts_by_it_and_a_second_one_the_other_way_round()
    {
        Screen.Type("2");
        var column = Screen.Lines[2].IndexOf("On hand", StringComparison.Ordinal);

        Screen.Click(column + 1, 2);
        Assert.Equal(["fen80", "syrup", "tarnfix"], Items(Screen));
        Screen.Click(column + 1, 2);
        Assert.Equal(["tarnfix", "syrup", "fen80"], Items(Screen));
    }

    [Fact]
    public void The_selected_row_stays_selected_when_the_order_changes()
    {
        Screen.Type("2").Press(Key.CursorDown).Type("hy");

        Assert.Contains("syrup: Brackwater Syrup", Screen.Text);
    }

    [Fact]
    public void Marks_say_that_a_table_goes_on_above_or_below()
    {
        for (var i = 0; i < 60; i++)
            Ledger.Did(new SettingChange { Key = Some.Key(), Date = Some.Today, Setting = "warn-days",
                Value = $"{10 + i % 20}" });
        var screen = Look();

        screen.Type("6");
        Assert.DoesNotContain("^", Edge(screen));
        Assert.Contains("v", Edge(screen));
        screen.Press(Key.PageDown);
        Assert.Contains("^", Edge(screen));
        screen.Press(Key.End);
        Assert.DoesNotContain("v", Edge(screen));

        static string Edge(Screen screen) => string.Concat(screen.Lines.Skip(4)
            .TakeWhile(line => !line.StartsWith(" --", StringComparison.Ordinal))
            .Select(line => line.PadRight(80)[79]));
    }

    [Theory]
    [InlineData("9 ml", "64 ml", "250 ml")]
    [InlineData("[#####.....] 5 %", "[#.........] 40 %", "[..........] 100 %")]
    [InlineData("2026-01-31", "2026-02-01", "2026-10-01")]
    [InlineData("12", "fen80", "")]
    public void Figures_are_sorted_by_their_number_and_nothing_comes_last(params string[] sorted)
    {
        var mixed = sorted.Reverse().ToArray();
        var sift = new Sift();
        sift.SortBy(0);

        Assert.Equal(sorted, sift.Of(mixed.Length, 1, (row, _) => mixed[row])!.Select(row => mixed[row]));
        Assert.Null(new Sift().Of(3, 1, (_, _) => ""));
    }

    private static string[] Items(Screen screen) =>
        [.. screen.Lines.Skip(4).Take(3).Select(line => line.Trim().Split(' ')[0])];
}
