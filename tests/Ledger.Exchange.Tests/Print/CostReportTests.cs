using System.Text.RegularExpressions;
using System.Xml.Linq;
using Ledger.Exchange.Print;
using static Ledger.Exchange.Tests.Support.Written;

namespace Ledger.Exchange.Tests.Print;

/// <summary>The page of a period's costs: its charts, its figures, and that it loads nothing.</summary>
public sealed partial class CostReportTests
{
    private const string Hostile = "<script src=x>\" onload=\"y&\u0007";

    [Fact]
    public void The_page_is_one_file_that_loads_nothing_and_a_hostile_name_is_text()
    {
        var html = Html(Report(Hostile));
        Assert.Contains("default-src 'none'", html, StringComparison.Ordinal);
        Assert.DoesNotMatch(Loads(), html);
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("\" onload", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain('\u0007', html);
        Assert.Contains("&lt;script src=x&gt;", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_drawing_is_well_formed_and_says_what_it_shows()
    {
        var drawings = Drawings(Report(Hostile));
        Assert.Equal(3, drawings.Count);
        Assert.All(drawings, drawing => Assert.NotEmpty(drawing.Attribute("aria-label")!.Value));
    }

    /// <summary>January 7 a negative, February 14: twice as high, with the figures above them.</summary>
    [Fact]
    public void Columns_stand_in_proportion_under_their_exact_figures()
    {
        var columns = Drawings(Report("pan"))[0];
        var feet = columns.Elements("rect").Where(box => Of(box, "height") != 12).GroupBy(box => Of(box, "x"))
            .Select(column => column.Sum(box => Of(box, "height")));
        Assert.Equal(2, feet.Max() / feet.Min(), 1);
        Assert.Superset(new HashSet<string> { "7.00", "14.00", "2026-01", "2026-02", "spoiled film" },
            columns.Elements("text").Select(text => text.Value).ToHashSet());
    }

    [Fact]
    public void Parts_are_told_apart_in_black_and_white_by_a_hatch_that_stays_in_its_box()
    {
        var columns = Drawings(Report("pan"))[0];
        var boxes = columns.Elements("rect").Where(box => box.Attribute("class")!.Value == "s1").ToList();
        var lines = columns.Elements("line").Where(line => line.Attribute("class")?.Value == "hatch").ToList();
        Assert.True(lines.Count > boxes.Count);
        Assert.All(lines, line => Assert.Contains(boxes, box =>
            Between(Of(line, "x1"), Of(box, "x"), Of(box, "width"))
                && Between(Of(line, "x2"), Of(box, "x"), Of(box, "width"))
            && Between(Of(line, "y1"), Of(box, "y"), Of(box, "height"))
            && Between(Of(line, "y2"), Of(box, "y"), Of(box, "height"))));
        Assert.Equal(4, columns.Elements("rect").Select(box => box.Attribute("class")!.Value).Distinct().Count());

        static bool Between(double at, double from, double length) => at >= from - 0.11 && at <= from + length + 0.11;
    }

    [Fact]
    public void The_plain_page_fits_its_paper_and_carries_the_same_figures()
    {
        var text = Plain(Report("pan"));
        Assert.All(text.Split('\n'), line => Assert.InRange(line.Length, 0, 72));
        foreach (var said in new[]
        {
            "In 2026-02 a negative cost 14.00, 7.00 more than in 2026-01: spoiled film +7.00.",
            "###", "6.00", "+16.7 %", "Another session", "It does not reconcile",
        })
            Assert.Contains(said, text.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void A_period_without_work_has_no_charts_and_says_so()
    {
        var empty = new CostFacts(new(2026, 1, 1), new(2026, 3, 31), Money.Zero, Money.Zero,
            Money.Zero, Money.Zero, [], Money.Zero, [], SessionCosts.Of([]));
        var page = CostReport.Of(new(empty), CostFormula.SpecificLot, [], Settings.Default, []);
        Assert.Empty(Drawings(page));
        Assert.Contains("No film was used.", Plain(page), StringComparison.Ordinal);
        Assert.Contains("Both sides are 0.000000.", Plain(page), StringComparison.Ordinal);
    }

    /// <summary>More months than fit are drawn by year.</summary>
    [Fact]
    public void Ten_years_are_drawn_by_year()
    {
        var sessions = Enumerable.Range(0, 120).Select(month => Session(
            $"S{month}", new LocalDate(2016, 1, 15).PlusMonths(month),
            new FilmUse("pan", 1, Area.Unit80, Money.Of(6), Fate.Negative)));
        var page = CostReport.Of(new(Facts(new(2016, 1, 1), new(2025, 12, 31), [.. sessions])),
            CostFormula.SpecificLot, [], Settings.Default, []);
        Assert.Equal(10, page.Blocks.OfType<ColumnChart>().Single().Bars.Count);
    }

    [Theory]
    [InlineData(8.12, 2, 5)]
    [InlineData(12.02, 5, 3)]
    [InlineData(0.0159, 0.005, 4)]
    [InlineData(6, 1, 6)]
    [InlineData(61, 20, 4)]
    [InlineData(1, 0.2, 5)]
    [InlineData(2500, 500, 5)]
    public void An_axis_has_round_steps_and_reaches_above_the_highest(double most, double step, int steps)
    {
        var scale = new AxisScale((decimal)most);
        Assert.Equal(((decimal)step, steps), (scale.Step, scale.Steps));
        Assert.True(scale.End >= (decimal)most);
        Assert.Equal(scale.Marks.Count(), scale.Marks.Select(scale.Text).Distinct().Count());
    }

    [Theory]
    [InlineData("2025-12-12", "2026-11-25", "2025-11 2026-01 2026-03 2026-05 2026-07 2026-09 2026-11")]
    [InlineData("2026-02-01", "2026-03-15", "2026-02 2026-03")]
    [InlineData("2016-05-01", "2026-03-15", "2016 2018 2020 2022 2024 2026")]
    public void Time_is_marked_in_round_months_or_years(string from, string to, string marks)
    {
        var axis = new MonthAxis(Day(from), Day(to));
        Assert.Equal(marks, string.Join(' ', axis.Marks.Select(mark => mark.Text)));
        Assert.InRange(axis.At(Day(from)), 0, 1);
        Assert.InRange(axis.At(Day(to)), 0, 1);
    }

    private static LocalDate Day(string text) => NodaTime.Text.LocalDatePattern.Iso.Parse(text).Value;

    private static PrintedPage Report(string film)
    {
        FilmUse Sheets(long sheets, decimal cost, Fate fate) =>
            new(film, sheets, Area.Unit80 * sheets, Money.Of(cost), fate);
        var facts = Facts(
            new(2026, 1, 1), new(2026, 3, 15),
            Session("S1", new(2026, 1, 10), Sheets(2, 12, Fate.Negative)),
            Session("S2", new(2026, 2, 10), Sheets(2, 12, Fate.Negative), Sheets(2, 14, Fate.Reject)));
        LotPrice Price(int month, long lot, decimal cost) =>
            new(film, new(2026, month, 1), new(lot), new(25, Unit.Sheet), Money.Of(cost), null);
        return CostReport.Of(
            new(facts), CostFormula.SpecificLot, [Price(1, 1, 150), Price(2, 2, 175)],
            Settings.Default with { Currency = "EUR" }, ["Another session would cost more."]);
    }

    private static CostFacts Facts(LocalDate from, LocalDate to, params SessionUse[] sessions) =>
        new(from, to, Money.Zero, Money.Of(325), Money.Zero, Money.Zero, [], Money.Zero, [],
            SessionCosts.Of(sessions));

    private static SessionUse Session(string name, LocalDate date, params FilmUse[] lines) =>
        new(name, date, Money.Of(1), Money.Of(0.5m), Money.Of(0.5m), [], lines);

    private static List<XElement> Drawings(PrintedPage page) =>
        [.. Drawing().Matches(Html(page)).Select(match => XElement.Parse(match.Value))];

    private static double Of(XElement element, string name) =>
        double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);

    [GeneratedRegex("<svg.*?</svg>", RegexOptions.Singleline)]
    private static partial Regex Drawing();

    [GeneratedRegex(
        @"<(?:script|img|link|iframe|object|embed|audio|video|source|base|form|use|image)\b|@import|url\(|https?:|\b(?:src|href|srcset)\s*=""", RegexOptions.IgnoreCase)]
    private static partial Regex Loads();
}
