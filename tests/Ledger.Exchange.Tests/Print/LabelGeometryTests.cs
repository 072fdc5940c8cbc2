using Ledger.Exchange.Print;
using static Ledger.Exchange.Tests.Support.Written;

namespace Ledger.Exchange.Tests.Print;

/// <summary>
/// Where labels lie on their paper, and how large their letters are; common grids: common practice, no source.
/// </summary>
public sealed class LabelGeometryTests
{
    public static TheoryData<string, string> Grids
    {
        get
        {
            var all = new TheoryData<string, string>();
            foreach (var sheet in LabelSheet.Common)
                all.Add(sheet.Paper.Name, sheet.Grid);
            return all;
        }
    }

    [Theory]
    [MemberData(nameof(Grids))]
    public void The_labels_margins_and_gaps_of_a_common_grid_fill_its_paper_exactly(string paper, string grid)
    {
        var sheet = Common(paper, grid);
        Assert.Equal(
            sheet.Paper.Width,
            2 * sheet.Side + sheet.Columns * sheet.LabelWidth + (sheet.Columns - 1) * sheet.Across, 9);
        Assert.Equal(sheet.Paper.Height,
            2 * sheet.Top + sheet.Rows * sheet.LabelHeight + (sheet.Rows - 1) * sheet.Down, 9);
    }

    [Theory]
    [InlineData("A4", "2x4", 99.1, 67.7)]
    [InlineData("A4", "2x7", 99.1, 38.1)]
    [InlineData("A4", "3x7", 63.5, 38.1)]
    [InlineData("A4", "3x8", 70, 37)]
    [InlineData("Letter", "2x3", 101.6, 84.67)]
    [InlineData("Letter", "2x5", 101.6, 50.8)]
    [InlineData("Letter", "3x10", 66.67, 25.4)]
    public void A_common_grid_has_labels_of_the_size_that_is_sold(
        string paper, string grid, double width, double height)
    {
        var sheet = Common(paper, grid);
        Assert.Equal(width, (double)sheet.LabelWidth, 0.06);
        Assert.Equal(height, (double)sheet.LabelHeight, 0.06);
    }

    [Fact]
    public void The_page_says_the_same_geometry_in_its_style()
    {
        var html = Html(new("x", [new Labels([new("one", [], [])], Common("A4", "3x7"))]));
        Assert.Contains("@page { size: 210mm 297mm; margin: 0; }", html, StringComparison.Ordinal);
        Assert.Contains("padding: 15.15mm 7.25mm 0;", html, StringComparison.Ordinal);
        Assert.Contains("grid-template-columns: repeat(3, 63.5mm);", html, StringComparison.Ordinal);
        Assert.Contains("column-gap: 2.5mm;", PaperSizes.RuleOf(html, ".sheet"), StringComparison.Ordinal);
        Assert.Contains("row-gap: 0mm;", PaperSizes.RuleOf(html, ".sheet"), StringComparison.Ordinal);
        Assert.Contains("grid-template-rows: repeat(7, 38.1mm);", html, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"sheet cut\"", html, StringComparison.Ordinal);
        Assert.InRange(PaperSizes.SizeIn(html, ".sheet", "height"), 15.15 + 7 * 38.1, 297);
    }

    [Fact]
    public void Plain_paper_has_lines_to_cut_along_and_room_on_a4_and_letter()
    {
        foreach (var sheet in new[] { LabelSheet.Large, LabelSheet.Small })
        {
            var html = Html(new("x", [new Labels([new("one", [], [])], sheet)]));
            Assert.Contains("class=\"sheet cut\"", html, StringComparison.Ordinal);
            Assert.DoesNotContain("size: ", html.Replace("font-size: ", "", StringComparison.Ordinal).Replace(
                "box-sizing: ", "", StringComparison.Ordinal), StringComparison.Ordinal);
            Assert.True(sheet.Paper.Width <= LabelPaper.A4.Width && sheet.Paper.Height <= LabelPaper.Letter.Height);
        }
    }

    [Fact]
    public void Cautions_keep_9_points_on_every_grid_that_has_room_for_them_and_others_are_refused()
    {
        var label = new Label(
            "Syrup developer", ["syrup/2", "use 1+49", "opened 2026-03-01", "discard by 2027-03-01", "holds 1000 ml"],
            ["gloves; see the maker's safety data sheet",
            "Chemical: not food or drink. Gloves and eye protection. Nothing with bleach."]);
        var fitting = 0;
        foreach (var sheet in LabelSheet.Common.Append(LabelSheet.Large))
            if (LabelType.Refusal([label], sheet) is { } refusal)
            {
                Assert.Contains("take a grid of larger labels", refusal, StringComparison.Ordinal);
                Assert.Throws<ArgumentException>(() => Html(new("x", [new Labels([label], sheet)])));
            }
            else
            {
                var html = Html(new("x", [new Labels([label], sheet)]));
                Assert.InRange(PaperSizes.SizeIn(html, "section small", "font-size"), 9, 20);
                fitting++;
            }

        Assert.InRange(fitting, 4, LabelSheet.Common.Count);
    }

    [Fact]
    public void Letters_are_as_large_as_the_longest_label_lets_them_be()
    {
        var shortly = new Label("2026-041", ["pan"], []);
        var long_ = new Label(
            "2026-042", [.. Enumerable.Repeat("a rather long line about what is on the sheet", 4)], []);
        var alone = LabelType.Of([shortly], Common("A4", "3x8"))!;
        var together = LabelType.Of([shortly, long_], Common("A4", "3x8"))!;
        Assert.True(alone.Text > together.Text);
        Assert.True(together.HeightOf(long_, 70) <= 37);
    }

    [Fact]
    public void A_long_subject_without_cautions_does_not_keep_the_sleeves_from_being_printed()
    {
        var sleeve = new Label("2026-043", [string.Join(' ', Enumerable.Repeat("a very long remark", 40))], []);
        Assert.Null(LabelType.Refusal([sleeve], LabelSheet.Small));
        Assert.NotNull(LabelType.Refusal([sleeve with { Warning = BoxLabel.Warning }], LabelSheet.Small));
        Assert.Contains("a very long remark", Html(new("x", [new Labels([sleeve], LabelSheet.Small)])),
            StringComparison.Ordinal);
    }

    /// <summary>
    /// A label of much text takes smaller letters for itself alone; only what has no room even then is shortened, and
    /// says so.
    /// </summary>
    [Theory]
    [InlineData(200, true)]
    [InlineData(240, true)]
    [InlineData(760, false)]
    [InlineData(5000, false)]
    public void Nothing_of_a_long_subject_is_cut_without_a_sign(int length, bool isWhole)
    {
        var subject = string.Concat(Enumerable.Repeat("the mill at low water ", length / 22 + 1))[..length].Trim();
        Label[] labels =
        [
            new("2026-041", ["Corvane Fen 80, N", "the mill", "2026-03-15, S22, film", "", ""], []),
            new("2026-042", ["Corvane Fen 80, N", subject, "2026-03-15, S22, film", "", "keeper"], []),
        ];
        var html = Html(new("x", [new Labels(labels, LabelSheet.Small)]));
        Assert.Equal(isWhole, html.Contains($"<p>{subject}</p>", StringComparison.Ordinal));
        Assert.Equal(!isWhole, html.Contains("…</p>", StringComparison.Ordinal));
        Assert.Contains("keeper", html, StringComparison.Ordinal);
        var type = LabelType.Of(labels, LabelSheet.Small)!;
        var (fitted, own) = type.Fitted(labels[1], LabelSheet.Small);
        Assert.True((own ?? type).HeightOf(fitted, LabelSheet.Small.LabelWidth) <= LabelSheet.Small.LabelHeight);
        Assert.True((own ?? type).Text >= 6);
        Assert.Null(type.Fitted(labels[0], LabelSheet.Small).Own);
    }

    [Fact]
    public void An_unknown_grid_needs_its_margins_and_labels_need_room()
    {
        Assert.Contains("--margins", Refused(() => LabelSheet.Of(LabelPaper.A4, 2, 6, null, null)),
            StringComparison.Ordinal);
        Assert.Contains("have no room", Refused(() => LabelSheet.Of(LabelPaper.A4, 4, 9, (100, 100), null)),
            StringComparison.Ordinal);
        Assert.Contains("have no room", Refused(() => LabelSheet.Of(LabelPaper.A4, 2, 4, null, (200, 0))),
            StringComparison.Ordinal);
        var own = LabelSheet.Of(LabelPaper.A4, 2, 6, (10.5m, 10), (2, 0));
        Assert.Equal((94m, 46m), (own.LabelWidth, own.LabelHeight));
        Assert.Equal(2.5m, LabelSheet.Of(LabelPaper.A4, 3, 7, null, null).Across);
    }

    [Fact]
    public void A_box_of_unexposed_film_is_sealed_like_one_of_exposed_film_and_paper_is_not()
    {
        var film = new Item
        {
            Code = "pan", Name = "Pan", Kind = ItemKind.Film, Format = Format.Parse("8x10"),
            Unit = Unit.Sheet, Pack = new(25, Unit.Sheet),
        };
        var today = new LocalDate(2026, 3, 15);
        var box = new Container(
            new(300), "pan/6", new(new(1), "pan", today, new(25, Unit.Sheet), Money.Zero, "CP-3201", null, ""),
            new(25, Unit.Sheet), new(25, Unit.Sheet), Money.Zero, null);
        Assert.All([BoxLabel.Of(film, "N", 7, today), BoxLabel.Unexposed(film, 25, today),
            BoxLabel.Unexposed(film, box)],
            label => Assert.Equal(BoxLabel.Warning, label.Warning));
        Assert.Contains("UNEXPOSED", BoxLabel.Unexposed(film, box).Lines);
        Assert.Contains("pan/6, emulsion CP-3201", BoxLabel.Unexposed(film, box).Lines);
        Assert.Contains("safelight", BoxLabel.Unexposed(film with { Role = ItemRole.FibrePaper }, box).Warning,
            StringComparison.Ordinal);
    }

    private static LabelSheet Common(string paper, string grid) =>
        Assert.Single(LabelSheet.Common, sheet => sheet.Paper.Name == paper && sheet.Grid == grid);

    private static string Refused(Func<LabelSheet> divide) => Assert.Throws<FormatException>(divide).Message;
}
