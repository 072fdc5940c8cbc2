using System.Text.RegularExpressions;
using Ledger.Exchange.Print;
using static Ledger.Exchange.Tests.Support.Written;

namespace Ledger.Exchange.Tests.Print;

public sealed partial class PrintedPageTests
{
    private const string Hostile = "<script src=https://evil.test/x.js>alert('1')</script>\" onload=\"x\u0007\u202E&";

    [Fact]
    public void A_page_loads_nothing_from_outside() => Assert.All(All(), page =>
    {
        var html = Html(page);
        Assert.Contains("default-src 'none'", html, StringComparison.Ordinal);
        Assert.DoesNotMatch(Loads(), html);
        Assert.StartsWith("<!doctype html>", html, StringComparison.Ordinal);
        Assert.EndsWith("</html>\n", html, StringComparison.Ordinal);
    });

    [Fact]
    public void A_hostile_name_is_text_and_nothing_else() => Assert.All(All(), page =>
    {
        var html = Html(page);
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("\" onload", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("&<", html, StringComparison.Ordinal);
        Assert.DoesNotContain('\u0007', html + Plain(page));
        Assert.DoesNotContain('\u202E', html + Plain(page));
    });

    [Fact]
    public void A_page_that_concerns_chemistry_says_who_has_the_last_word() => Assert.All(
        All().Where(page => page.Title is not ("Labels for film boxes" or "Negative sleeves")), page =>
        {
            Assert.Contains("safety data sheet, local rules and licensed practice govern",
                Html(page), StringComparison.Ordinal);
            Assert.Contains("Gloves", Html(page), StringComparison.OrdinalIgnoreCase);
        });

    [Fact]
    public void The_cautions_stand_before_the_first_tray()
    {
        var text = Plain(MixingSheet.Of(Plan(), "spring", MeasureStyle.Metric));
        Assert.InRange(text.IndexOf("Wear gloves", StringComparison.Ordinal), 0,
            text.IndexOf("1. ", StringComparison.Ordinal));
    }

    [Fact]
    public void An_exposed_box_says_that_it_is_opened_in_total_darkness_only() => Assert.Contains(
        "OPEN IN TOTAL DARKNESS ONLY", Plain(BoxLabel.Page([BoxLabel.Of(Film(), "N+1", 7, Today)], LabelSheet.Large)),
        StringComparison.Ordinal);

    [Fact]
    public void The_steps_of_a_mixing_sheet_stand_in_order()
    {
        var page = MixingSheet.Of(Plan(), "spring", MeasureStyle.Metric);
        var text = Plain(page);
        Assert.True(text.IndexOf("1. developer", StringComparison.Ordinal) < text.IndexOf("2. fixer",
            StringComparison.Ordinal));
        Assert.Contains("25 ml  syrup", text, StringComparison.Ordinal);
        Assert.Contains("1225 ml  water", text, StringComparison.Ordinal);
        Assert.Contains("[ ] 1. ", text, StringComparison.Ordinal);
        Assert.Contains("a dummy", text, StringComparison.Ordinal);
        Assert.All(text.Split('\n'), line => Assert.InRange(line.Length, 0, 72));
    }

    [Fact]
    public void Sheets_stand_in_the_order_in_which_they_go_in_and_come_out()
    {
        var text = Plain(MixingSheet.Of(Plan(), "spring", MeasureStyle.Metric));
        Assert.Contains("Sheets go in and come out in the order of the list.", text, StringComparison.Ordinal);
        var places = Enumerable.Range(1, 6)
            .Select(number => text.IndexOf($"[ ] {number}.", StringComparison.Ordinal)).ToList();
        Assert.All(places, place => Assert.True(place > 0));
        Assert.Equal(places.Order(), places);
    }

    [Fact]
    public void The_batches_stand_beside_the_developer_with_their_own_times()
    {
        var text = Plain(MixingSheet.Of(Plan(), "spring", MeasureStyle.Metric));
        var places = new[] { "1. developer", "batch 1", "11 min  develop", "batch 2", "11 min  develop", "2. fixer" };
        var from = 0;
        foreach (var place in places)
        {
            var at = text.IndexOf(place, from, StringComparison.Ordinal);
            Assert.True(at >= from, $"{place} does not stand after what is before it:\n{text}");
            from = at + place.Length;
        }
    }

    [Fact]
    public void A_step_and_what_goes_into_it_stay_on_one_sheet_of_paper()
    {
        var html = Html(MixingSheet.Of(Plan(), "spring", MeasureStyle.Metric));
        Assert.Contains("break-inside: avoid", PaperSizes.RuleOf(html, ".station"), StringComparison.Ordinal);
        Assert.Contains("break-inside: avoid", PaperSizes.RuleOf(html, ".part"), StringComparison.Ordinal);
        Assert.Equal(Regex.Count(html, "<h2>"), Regex.Count(html, "<div class=\"part\">\n<h2>"));
        Assert.Equal(Regex.Count(html, "<div"), Regex.Count(html, "</div>"));
    }

    [Fact]
    public void Figures_stand_below_each_other_and_words_do_not()
    {
        var page = new PrintedPage("x", [new Grid(["film", "boxes"], [["8x10", "1"], ["4x5", "0.38"]])]);
        Assert.Contains("<th class=\"figure\">boxes</th>", Html(page), StringComparison.Ordinal);
        Assert.Contains("8x10      1\n4x5    0.38\n", Plain(page), StringComparison.Ordinal);
    }

    [Fact]
    public void A_sleeve_bears_the_negatives_own_number_and_a_roll_its_place_in_the_session()
    {
        var labels = SleeveLabels.Of(
            new(1, "S7", Today, "tray", "F1", default, "",
            [
                new("pan", 2, Area.Zero, Money.Zero, "N", Fate.Negative, ""),
                new("pan", 1, Area.Zero, Money.Zero, "N", Fate.Reject, ""),
                new("pan", 1, Area.Zero, Money.Zero, "N", Fate.Dummy, ""),
                new("roll", 1, Area.Zero, Money.Zero, "N", Fate.Negative, ""),
            ]),
            [Sheet(1, "2026-041", Fate.Negative, "mill race"), Sheet(2, "2026-042", Fate.Keeper, ""),
                Sheet(3, null, Fate.Reject, "")], Holdings());
        Assert.Equal(["2026-041", "2026-042", "S7-04"], labels.Select(label => label.Title));
        Assert.Contains("mill race", labels[0].Lines);
        Assert.Equal([false, true, false], labels.Select(label => label.Lines.Contains("keeper")));
    }

    [Fact]
    public void The_label_of_water_claims_no_chemical()
    {
        var water = Film() with { Code = "water", Kind = ItemKind.Chemical, Role = ItemRole.Water,
            Format = null, Unit = Unit.Millilitre };
        var bottle = new Container(new(300), "water/1",
            new(new(1), "water", Today, Quantity.Of(5000, Unit.Millilitre), Money.Zero, "", null, ""),
            Quantity.Of(5000, Unit.Millilitre), Quantity.Of(5000, Unit.Millilitre), Money.Zero, null);
        Assert.Contains("For the darkroom: not for drinking.",
            BottleLabel.Of(bottle, water, MeasureStyle.Metric).SmallPrint);
        Assert.Empty(BottleLabel.Of(bottle, water with { Kind = ItemKind.Supply }, MeasureStyle.Metric).SmallPrint);
    }

    [Fact]
    public void A_sheet_of_labels_begins_where_the_last_one_ended()
    {
        var html = Html(BottleLabel.Page([new("one", [], []), new("two", [], [])], LabelSheet.Large with { Used = 7 }));
        Assert.Equal(2, Regex.Count(html, "class=\"sheet"));
        Assert.Equal(7, Regex.Count(html, "<section></section>"));
    }

    private static LocalDate Today { get; } = new(2026, 3, 15);

    private static IEnumerable<PrintedPage> All()
    {
        var holdings = Holdings();
        var bath = holdings.Baths.First();
        yield return MixingSheet.Of(Plan(), Hostile, MeasureStyle.Metric);
        yield return BottleLabel.Page(
            [BottleLabel.Of(bath, holdings.Item(bath.Item)! with { Name = Hostile, Cautions = Hostile },
                MeasureStyle.Metric)],
            LabelSheet.Of(LabelPaper.A4, 1, 3, (10, 10), null));
        yield return BoxLabel.Page([BoxLabel.Of(Film(), Hostile, null, Today)], LabelSheet.Large);
        yield return TallySlip.Of(new(bath, bath.MixedOn), [Film()], MeasureStyle.Metric);
        yield return WallCard.Of(holdings);
        yield return SleeveLabels.Page(
            SleeveLabels.Of(
                new(1, Hostile, Today, Hostile, null, default, "",
                    [new("x", 2, Area.Zero, Money.Zero, Hostile, Fate.Negative, Hostile)]),
                [Sheet(1, Hostile, Fate.Keeper, Hostile)], holdings),
            LabelSheet.Small);
    }

    private static SheetFate Sheet(long position, string? negative, Fate fate, string subject) =>
        new(new(position), position, "pan", 1, fate, null, negative, null, subject);

    private static Item Film() => new()
    {
        Code = "pan", Name = Hostile, Kind = ItemKind.Film, Format = Format.Parse("8x10"),
        Unit = Unit.Sheet, Pack = new(25, Unit.Sheet),
    };

    private static SessionPlan Plan() => Assert.IsType<Planned>(SessionPlanning.Of(
        new() { Process = "tray", Sheets = [new() { Film = "pan", Count = 5, Subject = Hostile, Holder = Hostile },
            new() { Film = "pan", Count = 1, Group = "N+1" }] },
        Holdings())).Plan;

    /// <summary>Hostile names on the shelf; the rules never see them.</summary>
    private static Holdings Holdings()
    {
        var holdings = new Holdings(Today);
        holdings.Put(Film());
        holdings.Put(new Item
        {
            Code = "syrup", Name = Hostile, Kind = ItemKind.Chemical, Role = ItemRole.Developer, Unit = Unit.Millilitre,
            Pack = Quantity.Of(1000, Unit.Millilitre), Cautions = Hostile,
        });
        holdings.Put(new Item
        {
            Code = "fix", Name = Hostile, Kind = ItemKind.Chemical, Role = ItemRole.Fixer, Unit = Unit.Millilitre,
            Pack = Quantity.Of(1000, Unit.Millilitre), Cautions = Hostile,
        });
        holdings.Put(new Process(new(1), "tray",
        [
            new()
            {
                Number = 1, Role = ItemRole.Developer, Item = "syrup", Dilution = Dilution.Parse("1+49"),
                Per = StepPer.Batch, Note = Hostile, WorkingVolume = Volume.FromMillilitres(1250), Minutes = 11,
            },
            new() { Number = 2, Role = ItemRole.Fixer, Item = "fix", Use = StepUse.Reused, Note = Hostile },
        ]));
        holdings.Put(new Core.Baths.Bath
        {
            Place = new(200), Code = Hostile, Item = "fix", Role = ItemRole.Fixer,
            Material = Core.Baths.BathMaterial.Film, WorkingVolume = Volume.FromMillilitres(1500),
            Dilution = Dilution.Parse("1+4"), MixedOn = Today, Capacity = new(Area.FromSquareInches(2000), Hostile),
        });
        return holdings;
    }

    [GeneratedRegex(
        @"<(?:script|img|link|iframe|object|embed|audio|video|source|base|form)\b|@import|url\(|\b(?:src|href|srcset)\s*=""", RegexOptions.IgnoreCase)]
    private static partial Regex Loads();
}
