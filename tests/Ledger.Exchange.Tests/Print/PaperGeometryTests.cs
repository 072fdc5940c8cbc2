using System.Text.RegularExpressions;
using Ledger.Exchange.Print;
using static Ledger.Exchange.Tests.Support.Written;

namespace Ledger.Exchange.Tests.Print;

/// <summary>
/// Sizes on paper. Letter is 279.4 mm high: ANSI/ASME Y14.1, Decimal Inch Drawing Sheet Size and Format, ASME; A4 is
/// 210 x 297 mm: ISO 216, Writing paper and certain classes of printed matter, ISO, 2007 (both from memory). Room for
/// what is read in the
/// dark: no source, common practice.
/// </summary>
public sealed class PaperGeometryTests
{
    private const double LetterHeight = 279.4;

    [Fact]
    public void Amounts_times_and_tray_names_have_20_points_and_nothing_on_the_mixing_sheet_has_less_than_9()
    {
        var html = Html(Usual());
        Assert.InRange(PaperSizes.SizeIn(html, ".station b", "font-size"), 20, 30);
        foreach (var large in new[] { "1. presoak", "25 ml", "11 min", "9. wetting agent", "batch 2" })
            Assert.Contains($"<b>{large}</b>", html, StringComparison.Ordinal);
        foreach (var small in new[] { ".station small", ".close .cautions", ".close .ticks li" })
            Assert.InRange(PaperSizes.SizeIn(html, small, "font-size"), 9, 14);
    }

    [Fact]
    public void The_mixing_sheet_of_nine_trays_and_two_batches_of_four_leaves_room_on_a_letter_page()
    {
        var html = Html(Usual());
        var large = PaperSizes.SizeIn(html, ".station b", "font-size")
            * PaperSizes.SizeIn(html, ".station b", "line-height");
        var small = PaperSizes.SizeIn(html, ".station small", "font-size")
            * PaperSizes.SizeIn(html, ".station small", "line-height");
        var step = (large + small) * PaperSizes.PointMillimetres
            + 2 * PaperSizes.SizeIn(html, ".station", "padding") + 0.3;
        var steps = Regex.Count(html, "<div class=\"station");
        Assert.Equal(11, steps);

        // Title, films, ten lines of cautions, a batch's ticks, what is taken out and the places to write in.
        const double others = 9 + 5 + 36 + 2 * 5 + 35 + 14;
        var margins = 2 * PaperSizes.SizeIn(html, "@page close", "margin");
        Assert.InRange(steps * step + others + margins, 150, LetterHeight);
    }

    [Fact]
    public void Every_page_but_the_first_bears_the_title_at_its_head_and_no_name_ends_the_string()
    {
        var html = Html(new("A \"b\" }</style><script>", []));
        Assert.Contains("@top-left { content: \"A\\20 \\22 b\\22 \\20 \\7d \\3c \\2f style\\3e \\3c script\\3e \";",
            html, StringComparison.Ordinal);
        Assert.Equal(1, Regex.Count(html, "</style>"));
    }

    [Fact]
    public void The_wall_card_of_ten_formats_is_set_close_and_leaves_room_on_a_letter_page()
    {
        var html = Html(WallCard.Of(new Holdings(new LocalDate(2026, 3, 15))));
        Assert.Contains("<body class=\"close\">", html, StringComparison.Ordinal);
        var row = PaperSizes.SizeIn(html, ".close th, .close td", "font-size") * PaperSizes.PointMillimetres
            * PaperSizes.SizeIn(html, ".close th, .close td", "line-height")
            + 2 * PaperSizes.SizeIn(html, ".close th, .close td", "padding") + 0.3;
        var rows = Regex.Count(html, "<tr>");
        Assert.InRange(rows, 9, 12);

        // Six baths of two lines each, title, cautions, what is said of the tray.
        var margins = 2 * PaperSizes.SizeIn(html, "@page close", "margin");
        Assert.InRange((rows + 1 + 2 * 6) * row + 60 + margins, 150, LetterHeight);
    }

    private static PrintedPage Usual() => new("Mixing sheet",
    [
        new Stations(
        [
            Step("1. presoak"), Step("2. developer"), Batch(1),
            Batch(2), Step("3. stop"), Step("4. fixer 1"), Step("5. fixer 2"),
            Step("6. wash"), Step("7. wash aid"), Step("8. wash"), Step("9. wetting agent"),
        ]),
    ]) { IsClose = true };

    private static Station Step(string name) =>
        new(name, [new("25 ml", "syrup"), new("1225 ml", "water")], "a note") { Time = new("2 min", "at 20 °C") };

    private static Station Batch(int number) =>
        new($"batch {number}", [new("5 min 30 s", "turn the stack")], "4 sheets of pan")
        {
            Time = new("11 min", "develop"), Ticks = ["1.", "2.", "3.", "4."], IsWithin = true,
        };
}
