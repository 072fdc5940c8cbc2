namespace Ledger.App.Tests;

/// <summary>Nothing that people read is wider than their terminal, from 40 columns on.</summary>
public sealed class WidthTests
{
    private const string Others = """
        record clearing-test F4 fen80 40 --dry-run
        help
        help fixer factor
        """;

    public static TheoryData<int> Widths => [40, 60, 80, 120];

    [Theory]
    [MemberData(nameof(Widths))]
    public void No_reading_is_wider_than_the_terminal(int width)
    {
        using var room = Darkroom.WithDemoYear();
        room.Width = width;
        Assert.All(Readings.With(Others), reading =>
            Assert.All(room.Do([.. CommandLine.Words(reading)]).Split('\n'),
                line => Assert.InRange(line.Length, 0, width)));
    }

    [Theory]
    [MemberData(nameof(Widths))]
    public void No_help_is_wider_than_the_terminal(int width)
    {
        using var room = new Darkroom();
        room.Width = width;
        Assert.All(CommandLine.All(room), path =>
            Assert.All(room.RunAnywhere([.. path, "--help"]).Out.Split('\n'),
                line => Assert.True(Fits(line.Trim(), line, width), line)));
    }

    [Theory]
    [InlineData("60", 60)]
    [InlineData("200", 200)]
    [InlineData("7", 40)]
    [InlineData("wide", 80)]
    [InlineData(null, 80)]
    public void The_variable_says_how_wide_it_is(string? said, int columns) =>
        Assert.Equal(columns,
            ThisProcess.Width(name => name == ThisProcess.ColumnsVariable ? said : null, terminal: 0));

    [Fact]
    public void Without_the_variable_the_terminal_says_it() =>
        Assert.Equal(52, ThisProcess.Width(_ => null, terminal: 52));

    /// <summary>A path is not broken: it may stand alone on a longer line.</summary>
    private static bool Fits(string words, string line, int width) =>
        line.TrimEnd().Length <= width || !words.Contains(' ', StringComparison.Ordinal);
}
