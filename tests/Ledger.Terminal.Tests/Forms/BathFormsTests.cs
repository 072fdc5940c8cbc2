using Ledger.Terminal.Pictures;

namespace Ledger.Terminal.Tests.Forms;

public sealed class BathFormsTests : OnASmallLedger
{
    [Fact]
    public void The_seconds_of_a_clearing_test_are_seen_beside_its_tick()
    {
        Screen.Type("3t").Type("58").Press(Key.Tab, Key.Space);

        Screen.Shows("Cleared in, seconds 58", "[x] The bath is fresh");
    }

    [Fact]
    public void One_key_on_the_baths_screen_rotates_the_pair_and_shows_before_and_after()
    {
        Ledger.Did(new JugStart { Key = "jug", Date = new(2026, 1, 1), Jug = "J1", Size = Volume.FromMillilitres(5000),
            Contents = "used fixer" });
        Screen.Type("3").Find("rotate");
        Screen.Shows("in use -> discarded", "second -> first");
        Screen.Press(Key.F8);

        Assert.Equal(["F5", "F6"], Ledger.HoldingsOn(Some.Today).Baths.Select(bath => bath.Code));
        Assert.Equal(new(2026, 1, 25), Ledger.HoldingsOn(Some.Today).Bath("F5")!.MixedOn);
    }

    [Fact]
    public void A_clearing_test_takes_its_sheet_from_stock_and_says_how_long_to_fix()
    {
        var form = new KindForm(Ledger, "clearing-test", ("bath", "F4"));
        form["seconds"].Type("40");
        form["fresh"].Tick();
        form["sheets"].Type("1");

        var ready = Assert.IsType<Ready>(form.Judge());
        Assert.Contains(ready.Posting.Remarks,
            remark => remark.Contains("fix fen80 for 80 s", StringComparison.Ordinal));
        Assert.Contains(ready.Posting.Effects, effect => effect.What.StartsWith("fen80", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("observation", "sign", "yellow")]
    [InlineData("silver-test", "grams_per_litre", "3.5")]
    [InlineData("bath-storage", "container", "open tray")]
    public void A_note_on_a_bath_becomes_the_entry_it_is(string kind, string field, string found)
    {
        var form = new KindForm(Ledger, kind, ("bath", "F4"));
        Assert.Same(form[field], form.First);
        form[field].Type(found);

        Assert.Equal(kind, Assert.IsType<Ready>(form.Judge()).Entry.Kind);
    }

    [Fact]
    public void A_residual_test_of_a_bath_says_what_was_looked_for()
    {
        var form = new KindForm(Ledger, "residual-test", ("bath", "F4"));
        form["result"].Type("no stain");
        Assert.Contains("Looked for: found nothing; accepted is silver",
            Assert.Single(Assert.IsType<Incomplete>(form.Judge()).Problems), StringComparison.Ordinal);
        form["looked_for"].Turn(1);
        Assert.IsType<ResidualCheck>(Assert.IsType<Ready>(form.Judge()).Entry);
    }

    [Fact]
    public void A_colour_and_a_control_strip_are_noted_at_the_bath_they_belong_to()
    {
        var fixer = Ledger.HoldingsOn(Some.Today).Item("tarnfix")!;
        Ledger.Did(new ItemDefinition { Key = "indicator", Date = new(2026, 3, 1),
            Item = fixer with { Indicator = "purple" } });
        var look = new KindForm(Ledger, "indicator", ("bath", "F5"));
        look["colour"].Type("purple");
        Assert.Contains(Assert.IsType<Ready>(look.Judge()).Posting.Effects,
            effect => effect is { What: "F5", After: "exhausted by sight" });

        var strip = new KindForm(Ledger, "control-strip", ("bath", "F5"));
        strip["result"].Type("speed -0.12");
        Assert.Contains("not a developer", Assert.IsType<Rejected>(strip.Judge()).Refusal.Sentence,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Who_fixes_in_one_bath_sees_nothing_of_rotating()
    {
        var baths = new BathsModel(Ledger);
        baths.Refresh();
        Assert.Contains(baths.Actions, key => key.Label == "Rotate pair");
        Assert.Contains(baths.Details(0).SelectMany(block => block.Lines(120)),
            line => line.Contains("rotated 0 of 3 times", StringComparison.Ordinal));

        Ledger.Did(new Discard { Key = "gone", Date = Some.Today, What = "F5", Reason = "spent" });
        baths.Refresh();
        Assert.DoesNotContain(baths.Actions, key => key.Label == "Rotate pair");
        var shown = string.Join(' ', baths.Purpose.Concat(baths.Details(0).SelectMany(block => block.Lines(60))));
        Assert.DoesNotContain("pair", shown, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void A_clearing_test_offers_a_fixer_for_film_and_the_film_developed_last()
    {
        Ledger.Did(new BathMixing
        {
            Key = "paper", Date = Some.Today, Bath = "PF1", Item = "tarnfix", Material = Core.Baths.BathMaterial.Paper,
            WorkingVolume = Volume.FromMillilitres(1000),
        });
        Screen.Type("3").Press(Key.End).Type("t");
        var form = Assert.IsType<KindForm>(Assert.IsType<FormPage>(Screen.Shell.Page).Form);
        Assert.Equal(("F4", "fen80"), (form["bath"].Text, form["film"].Text));
        Assert.DoesNotContain("PF1", form["bath"].Choices());
    }

    [Fact]
    public void A_syrup_that_has_a_density_may_be_weighed_out_for_a_batch()
    {
        var syrup = Ledger.HoldingsOn(Some.Today).Item("syrup")!;
        Ledger.Did(new ItemDefinition { Key = "density", Date = new(2026, 3, 1),
            Item = syrup with { Density = Density.Of(1.25m) } });
        var form = new SessionForm(Ledger);
        form.Lines[0]["sheets"].Type("4");
        form.Lines[0]["developer_ml"].Type("31.25g");
        Assert.Contains(Assert.IsType<Ready>(form.Judge()).Posting.Effects,
            effect => effect is { What: "syrup/1", Before: "64 ml", After: "39 ml" });
        form.Lines[0]["developer_ml"].Type("much g");
        Assert.Contains("accepted is a number with its unit", Assert.IsType<Incomplete>(form.Judge()).Problems[0],
            StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_seen_ends_the_bath_on_its_screen()
    {
        Ledger.Did(new BathObservation { Key = "seen", Date = new(2026, 3, 1), Bath = "F5", Sign = "specks" });
        Ledger.Did(new BathStorage { Key = "tray", Date = new(2026, 3, 2), Bath = "F5",
            Container = WorkingContainer.OpenTray });
        var baths = new BathsModel(Ledger);
        baths.Refresh();

        Assert.Equal("!! exhausted by sight", baths.Cell(1, 1));
        var text = string.Join('\n', baths.Details(1).SelectMany(block => block.Lines(60)));
        Assert.Contains("on 2026-03-01: specks", text, StringComparison.Ordinal);
        Assert.Contains("kept in: open tray", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Bottles_are_decanted_with_names_of_their_own()
    {
        var form = new KindForm(Ledger, "decanting", ("from", "tarnfix/1"));
        form["bottles"].Type("2");
        form["size_ml"].Type("100");
        form["names"].Type("left right");

        var ready = Assert.IsType<Ready>(form.Judge());
        Assert.Contains(ready.Posting.Effects, effect => effect is { What: "right", After: "100 ml" });
        form["names"].Type("left");
        Assert.IsType<Incomplete>(form.Judge());
    }

    [Fact]
    public void A_top_up_moves_its_concentrate_into_the_bath()
    {
        var form = new KindForm(Ledger, "top-up", ("bath", "F5"));
        form["added_ml"].Type("100");
        Assert.Contains(Assert.IsType<Ready>(form.Judge()).Posting.Effects,
            effect => effect is { Before: "400 ml", After: "380 ml" });
    }

    [Fact]
    public void A_good_bath_is_not_called_spent_and_why_it_goes_is_asked()
    {
        Assert.Equal("expired", new DiscardForm(Ledger, "F4")["reason"].Text);
        var good = new DiscardForm(Ledger, "F5");
        Assert.Equal("", good["reason"].Text);
        Assert.Equal(
            ["Reason: F5 is good until 2026-07-24; write why it is discarded"],
            Assert.IsType<Incomplete>(good.Judge()).Problems);

        good["reason"].Type("specks");
        var blocks = Assert.IsType<Ready>(good.Judge()).Blocks;
        Assert.Contains(blocks,
            block => block.Lines(78)
                .Any(line => line.Contains("F5 is good until 2026-07-24.", StringComparison.Ordinal)));
        Assert.Contains(blocks,
            block => block.Lines(78).Any(line => line.Contains("in use -> discarded", StringComparison.Ordinal)));
    }

    [Fact]
    public void Pouring_out_offers_the_jug_that_stands_there()
    {
        Ledger.Did(new JugStart { Key = "jug", Date = new(2026, 1, 1), Jug = "J1", Size = Volume.FromMillilitres(5000),
            Contents = "used fixer" });
        var form = new DiscardForm(Ledger, "F4");
        Assert.Equal("J1", form["jug"].Text);
        Assert.Contains(Assert.IsType<Ready>(form.Judge()).Posting.Effects,
            effect => effect is { What: "J1", After: "1500 ml" });
    }

    [Fact]
    public void The_caution_stands_above_the_fields_before_anything_is_typed()
    {
        Ledger.Did(new ItemDefinition { Key = "sheet", Date = Some.Today,
            Item = Ledger.HoldingsOn(Some.Today).Item("tarnfix")! with { Cautions = "no fumes" } });
        Screen.Type("3b");
        Screen.Shows("! Gloves, goggles, fresh air.", ": no fumes");
        Screen.Press(Key.F1);
        Assert.Contains("Mix nothing with bleach.", Screen.Text);
    }

    /// <summary>A jug for another waste is neither offered nor written, even where it is the only one.</summary>
    [Fact]
    public void Only_a_jug_for_the_same_waste_is_offered()
    {
        Ledger.Did(new JugStart { Key = "dev", Date = new(2026, 1, 1), Jug = "J1", Size = Volume.FromMillilitres(5000),
            Contents = "used developer" });
        var form = new DiscardForm(Ledger, "F4");
        Assert.Equal("", form["jug"].Text);
        Assert.Equal([""], form["jug"].Choices());
        Ledger.Did(new JugStart { Key = "fix", Date = new(2026, 1, 1), Jug = "J2", Size = Volume.FromMillilitres(5000),
            Contents = "used fixer" });
        form = new DiscardForm(Ledger, "F4");
        Assert.Equal("J2", form["jug"].Text);
        Assert.Equal(["", "J2"], form["jug"].Choices());
    }

    [Fact]
    public void The_chart_of_clearing_tests_stays_within_its_width_and_shows_tests_and_limit()
    {
        foreach (var width in new[] { 20, 40, 80 })
        {
            var lines = TestChart.Of([(0, 1), (500, 1.3), (1000, 1.7)], 2, x => 1 + x * 0.0007, 1400, width).ToList();
            Assert.All(lines, line => Assert.True(line.Length <= Math.Max(width, 23)));
            Assert.Equal(3, lines.Sum(line => line.Count(c => c == 'o')));
            Assert.Contains(lines,
                line => line.Contains("2x |", StringComparison.Ordinal)
                    && line.Contains('-', StringComparison.Ordinal));
        }
    }
}
