using Ledger.Terminal.Pictures;

namespace Ledger.Terminal.Tests.Pictures;

public sealed class PicturesTests
{
    [Theory]
    [InlineData(0, "[..........] 0 %")]
    [InlineData(46.6, "[####......] 46 %")]
    [InlineData(99.9, "[#########.] 99 %")]
    [InlineData(100, "[##########] 100 %")]
    [InlineData(-5, "[..........] 0 %")]
    [InlineData(140, "[##########] 100 %")]
    public void A_gauge_never_rounds_up_what_is_left(double percent, string picture) =>
        Assert.Equal(picture, Gauge.Of((decimal)percent));

    [Fact]
    public void Of_nothing_nothing_is_left() => Assert.Equal("[..........] 0 %", Gauge.OfPart(0, 0));

    [Fact]
    public void Bars_keep_their_proportion_and_name_the_exact_figure()
    {
        var lines = BarChart.Of([new("film", 6, "6.00"), new("waste", 0.01m, "0.01"), new("none", 0, "0")],
            24).ToList();

        Assert.Equal(["film  ############# 6.00", "waste #             0.01", "none                   0"], lines);
    }

    [Fact]
    public void Months_run_back_from_today_to_the_first_use()
    {
        (LocalDate, long)[] amounts = [(new(2026, 3, 15), 4), (new(2026, 3, 1), 2), (new(2026, 1, 31), 1),
            (new(2024, 1, 1), 99)];

        var bars = Months.Of(amounts, new(2026, 3, 15), 12, amount => $"{amount}");

        Assert.Equal([("2026-03", "6"), ("2026-02", "0"), ("2026-01", "1")],
            bars.Select(bar => (bar.Label, bar.Figure)));
    }

    [Fact]
    public void Paragraphs_break_at_blanks_and_keep_their_indent()
    {
        Assert.Equal(["  one two", "    three", "    four"], Paragraph.Of("  one two three four", 12, 4));
        Assert.Equal(["abcdefgh", "ijkl"], Paragraph.Of("abcdefghijkl", 8));
    }

    [Theory]
    [InlineData(0, "·········· 0 %")]
    [InlineData(1.24, "·········· 1 %")]
    [InlineData(1.25, "▏········· 1 %")]
    [InlineData(46.3, "████▋····· 46 %")]
    [InlineData(99.9, "█████████▉ 99 %")]
    [InlineData(100, "██████████ 100 %")]
    public void Where_blocks_can_be_written_a_gauge_is_drawn_to_an_eighth_of_a_cell(double percent, string picture) =>
        Assert.Equal(picture, Gauge.Of((decimal)percent, Signs.Blocks));

    [Fact]
    public void A_bar_of_little_is_an_eighth_of_a_cell_at_least() =>
        Assert.Equal(["film  █████████████ 6.00", "waste ▏             0.01"],
            BarChart.Of([new("film", 6, "6.00"), new("waste", 0.01m, "0.01")], 24, Signs.Blocks));

    [Theory]
    [InlineData("C", "en_US.UTF-8", "en_US.UTF-8", "xterm", false)]
    [InlineData("", "en_US.utf8", "C", "xterm", true)]
    [InlineData("", "", "C.UTF-8", "xterm", true)]
    [InlineData("", "", "C.UTF-8", "dumb", false)]
    [InlineData("", "", "", "xterm", false)]
    public void Blocks_are_drawn_where_the_locale_is_UTF_8(string all, string type, string lang,
        string term, bool isUnicode) => Assert.Equal(
        isUnicode,
        Signs.IsUnicode(name => name switch { "LC_ALL" => all, "LC_CTYPE" => type, "LANG" => lang, _ => term })
            && !OperatingSystem.IsWindows());

    [Fact]
    public void The_coming_weeks_are_a_strip_from_monday_on_with_a_letter_for_each_day_that_something_is_due()
    {
        var today = new LocalDate(2026, 3, 15);
        (LocalDate, char)[] days = [(new(2026, 3, 16), 'x'), (new(2026, 3, 17), 'o'), (new(2026, 3, 17), 'd'),
            (new(2026, 5, 3), 'p'), (new(2027, 1, 1), 'x')];

        var lines = CalendarStrip.Of(days, today, 32).ToList();

        Assert.Equal(["03-09   03-16   03-23   03-30", "      > x*..... ....... .......",
            "04-06   04-13   04-20   04-27", "....... ....... ....... ......p"], lines);
        Assert.Equal(2, CalendarStrip.Of(days, today, 70).Count());
    }
}
