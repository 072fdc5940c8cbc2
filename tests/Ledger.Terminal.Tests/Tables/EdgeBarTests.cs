using Ledger.Terminal.Blocks;

namespace Ledger.Terminal.Tests.Tables;

/// <summary>What is longer than its place has a bar at its edge that the mouse can press and draw.</summary>
public sealed class EdgeBarTests
{
    private const MouseFlags Press = MouseFlags.LeftButtonPressed, Draw = Press | MouseFlags.PositionReport;

    [Theory]
    [InlineData(0, 10, 10, "          ")]
    [InlineData(0, 30, 10, " ##      v")]
    [InlineData(10, 30, 10, "^   ##   v")]
    [InlineData(20, 30, 10, "^      ## ")]
    [InlineData(0, 1_000_000, 6, " #   v")]
    public void It_shows_where_one_is_and_that_there_is_more(int top, int all, int height, string bar) =>
        Assert.Equal(bar, string.Concat(Enumerable.Range(0, height).Select(new EdgeBar(top, all, height).At)));

    [Fact]
    public void A_press_leads_to_its_place_and_no_further_than_the_ends()
    {
        var bar = new EdgeBar(10, 30, 10);
        Assert.Equal(9, bar.Pressed(Press, 0));
        Assert.Equal(11, bar.Pressed(Press, 9));
        Assert.Equal(0, bar.Pressed(Press, 1));
        Assert.Equal(20, bar.Pressed(Press, 8));
        Assert.Equal(0, bar.Pressed(Draw, -3));
        Assert.Equal(20, bar.Pressed(Draw, 40));
        Assert.Null(bar.Pressed(MouseFlags.LeftButtonReleased, 3));
        Assert.Null(new EdgeBar(0, 5, 10).Pressed(Press, 3));
    }

    [Fact]
    public void A_table_goes_where_its_bar_is_pressed_and_along_with_it()
    {
        using var screen = new Screen(Some.Ledger());
        screen.Find("settings");
        var first = Row(screen);

        screen.Drag((79, 6), (79, 11));
        var low = Row(screen);
        Assert.NotEqual(first, low);
        screen.Drag((79, 11), (79, 5));
        Assert.Equal(first, Row(screen));
        Assert.NotEqual(first, Row(screen.Wheel(10, 6)));

        static string Row(Screen screen) => screen.Lines[4].Trim().Split(' ')[0];
    }

    [Fact]
    public void Rows_that_come_next_are_read_when_the_wheel_turns_to_them()
    {
        var ledger = Some.Ledger();
        for (var i = 0; i < 450; i++)
            ledger.Did(new SettingChange { Key = Some.Key(), Date = Some.Today, Setting = "warn-days",
                Value = $"{10 + i % 20}" });
        using var screen = new Screen(ledger);
        var table = Assert.IsType<TablePage>(screen.Type("6").Shell.Page);
        Assert.Equal(200, table.Model.Count);

        for (var i = 0; i < 70; i++)
            screen.Wheel(10, 6);

        Assert.True(table.Model.Count > 200);
        Assert.Equal(0, table.Row);
    }

    [Fact]
    public void The_details_go_where_their_bar_is_pressed()
    {
        using var screen = new Screen(Some.Ledger(), 60, 20);
        screen.Type("2");
        Assert.Contains("fen80: Corvane Fen 80", screen.Text);
        Assert.EndsWith("v", screen.Lines[17].TrimEnd());

        screen.Drag((59, 16), (59, 17));

        Assert.DoesNotContain("fen80: Corvane Fen 80", screen.Text);
        Assert.Contains("^", screen.Text);
    }
}
