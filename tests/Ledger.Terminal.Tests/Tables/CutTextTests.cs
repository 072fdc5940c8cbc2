namespace Ledger.Terminal.Tests.Tables;

/// <summary>A narrow screen leaves out in a stated order, and one key shows what it leaves out.</summary>
public sealed class CutTextTests : OnTheDemoYear
{
    /// <summary>Where a table needs the whole width, its details stand below it, not beside it.</summary>
    [Theory]
    [InlineData('2', "Corvane Fen 80 roll", "Enough for")]
    [InlineData('3', "15 of 8x10", "Sheets left")]
    [InlineData('6', "exposed E01-1, E01-2, E02-1 for N: kiln from the north side", "Taken back")]
    [InlineData('1', "like 1 more, was loaded 85 days ago, on", "By")]
    public void A_wide_screen_gives_its_width_to_the_table_that_needs_it(char digit, string whole, string heading)
    {
        var screen = Look(120, 40).Type($"{digit}");
        Assert.Contains(screen.Lines, line => line.Contains(whole, StringComparison.Ordinal));
        Assert.Contains(heading, screen.Lines[2], StringComparison.Ordinal);
    }

    [Fact]
    public void At_every_width_the_columns_that_stay_away_are_the_first_of_the_stated_order() => Assert.All(
        MainScreens.Of(Some.Ledger(), new FakeUpkeep(), "ledger.db"), screen =>
        {
            var columns = screen.Columns;
            var stated = ColumnFit.Leaving(columns);
            Assert.DoesNotContain(columns[0], stated);
            for (var width = 10; width < 150; width++)
            {
                var widths = ColumnFit.Of(columns, [.. columns.Select(column => column.Most)], width);
                var away = columns.Where((_, i) => widths[i] == 0).ToList();
                Assert.Equal(stated.Take(away.Count).ToHashSet(), away.ToHashSet());
            }
        });

    [Theory]
    [InlineData("1", 60)]
    [InlineData("2", 60)]
    [InlineData("3", 60)]
    [InlineData("5", 80)]
    [InlineData("6", 60)]
    [InlineData("7", 60)]
    [InlineData("8", 60)]
    public void The_help_states_the_order_and_Z_shows_every_column_that_has_something(string digit, int width)
    {
        using var screen = new Screen(Some.Ledger(), width, 220);
        screen.Type(digit);
        var table = Assert.IsType<TablePage>(screen.Shell.Page);
        if (table.Row < 0)
            return;
        var (model, row) = (table.Model, table.Row);

        var whole = screen.Type("z").Text;
        Assert.All(
            Enumerable.Range(0, model.Columns.Count).Where(column => model.Cell(row, column).Trim().Length > 0),
            column => Assert.Contains(model.Columns[column].Heading, whole, StringComparison.Ordinal));

        screen.Press(Key.Esc);
        Assert.Same(table, screen.Shell.Page);
        var stated =
            $"in this order: {string.Join(", ", ColumnFit.Leaving(model.Columns).Select(column => column.Heading))}. Z "
                + "shows";
        Assert.Contains(stated,
            string.Join(' ',
                screen.Press(Key.F1).Text.Split([' ', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries)));
    }

    /// <summary>Beside the details too, where its place is narrower than the screen.</summary>
    [Theory]
    [InlineData(60, 20)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void What_an_empty_screen_says_is_whole(int width, int height)
    {
        using var screen = new Screen(Some.EmptyLedger(), width, height);
        foreach (var digit in "12345678")
        {
            var text = screen.Type($"{digit}").Text;
            var seen = new Queue<string>(text.Split([' ', '\r', '\n', '|', '#']));
            var model = Assert.IsType<TablePage>(screen.Shell.Page).Model;
            if (model.Count > 0)
                continue;
            foreach (var word in model.Empty.Split(' '))
            {
                while (seen.TryDequeue(out var next) && next != word)
                    continue;
                Assert.True(seen.Count > 0, $"{digit}: \"{word}\" of \"{model.Empty}\" in\n{text}");
            }
        }
    }

    [Fact]
    public void A_text_that_was_cut_is_whole_behind_Z()
    {
        var ledger = Some.Ledger();
        const string Whole = "the whole box was left open in the sun beside the window of the darkroom, all day long";
        ledger.Did(Some.ADiscard("fen80", new(1, Core.Measures.Unit.Sheet)) with { Reason = Whole });
        using var screen = new Screen(ledger, 60, 20);

        var table = string.Join('\n', screen.Type("6").Lines[..9]);
        Assert.Contains("…", table);
        Assert.DoesNotContain("all day long", table);

        var shown = string.Join(' ',
            screen.Type("z").Text.Split([' ', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains(Whole, shown);
    }

    [Fact]
    public void The_list_of_actions_shows_the_selected_one_whole_under_the_list()
    {
        using var screen = new Screen(Some.Ledger(), 60, 20);

        var list = screen.Press(Key.F2).Type("find").Text;

        Assert.Matches(@"Find +Today: finds the rows .*…", list);
        Assert.Contains("Find: Today: finds the rows that hold all words, in any", list);
        Assert.Contains("while you type; Esc shows all again", list);
    }

    [Fact]
    public void At_60_by_20_every_screen_has_its_title_a_row_its_details_and_its_keys()
    {
        using var screen = new Screen(Some.Ledger(), 60, 20);
        foreach (var digit in "123456789")
        {
            screen.Type(digit.ToString());
            var table = Assert.IsType<TablePage>(screen.Shell.Page);
            Assert.StartsWith($" {table.Heading}", screen.Title);
            Assert.All(screen.Lines, line => Assert.True(line.Length <= 60, line));
            Assert.Matches("^ Space Blank F1 Help F2 Actions Ctrl\\+Q Quit", screen.Lines[19]);
            if (table.Row < 0)
                continue;
            Assert.StartsWith(table.Model.Columns[0].Heading, screen.Lines[2].Trim());
            Assert.StartsWith(table.Model.Cell(table.Row, 0).Trim()[..2], screen.Lines[4].Trim());
            Assert.True(screen.Lines[12..17].Count(line => line.Trim().Length > 0) > 2, screen.Text);
        }
    }
}
