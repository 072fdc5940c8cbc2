namespace Ledger.App.Tests;

/// <summary>What ends baths, bottles and jugs, from the command line.</summary>
public class BathCommandTests
{
    [Fact]
    public void The_bath_in_use_tells_its_ends_its_tests_and_what_they_foretell()
    {
        using var room = Darkroom.WithDemoYear();
        var bath = room.Run("show", "bath", "F4", "--json").Json;
        Assert.Equal("age", bath.GetProperty("ends")[0].GetProperty("by").GetString());
        Assert.Equal("2026-03-14", bath.GetProperty("ends")[0].GetProperty("on").GetString());
        Assert.Equal(3, bath.GetProperty("clearingTests").GetArrayLength());
        Assert.Equal(1.65m, bath.GetProperty("clearingTests")[2].GetProperty("ratio").GetDecimal());
        Assert.Equal(132, bath.GetProperty("fixingSeconds").GetDecimal());
        Assert.InRange(bath.GetProperty("clearingTrend").GetProperty("reachedAtSqInPerLitre").GetDecimal(), 1500, 1800);
        Assert.Contains("from 3 tests", room.Do("show", "bath", "F4"), StringComparison.Ordinal);
    }

    [Fact]
    public void Capacities_stand_side_by_side()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("record", "item", "tarnfix", "--other-capacity", "1000 strict", "1600 maker's");
        var bases = room.Run("show", "bath", "F4", "--json").Json.GetProperty("capacities").EnumerateArray().ToList();
        Assert.Equal(["handbook", "strict", "maker's"], bases.Select(basis => basis.GetProperty("basis").GetString()));
        Assert.Equal([1400m, 0, 800], bases.Select(basis => basis.GetProperty("remainingSqIn").GetDecimal()));
        Assert.Equal(17, bases[0].GetProperty("remainingSheets").GetProperty("8x10").GetInt32());
    }

    [Fact]
    public void A_pair_at_its_ceiling_is_not_rotated_and_says_what_to_do()
    {
        using var room = Darkroom.WithDemoYear();
        var ran = room.Run("record", "rotation", "F6", "--bath", "F4");
        Assert.Equal(3, ran.Status);
        Assert.Contains("the ceiling is 3: discard F4 and F5 and mix a fresh pair", ran.Error,
            StringComparison.Ordinal);
        room.Do("record", "setting", "rotation-ceiling", "4");
        Assert.Contains("rotation 4 of at most 4", room.Do("record", "rotation", "F6", "--bath",
            "F5", "--amount", "300ml", "--jug", "J2"), StringComparison.Ordinal);
        Assert.Equal(7500, room.Run("show", "jugs", "--json").Json.GetProperty("jugs")[1].GetProperty("held")
            .GetProperty("value").GetDecimal());
        Assert.True(room.Run("check", "--json").Json.GetProperty("ok").GetBoolean());
    }

    [Fact]
    public void A_session_too_large_for_a_pair_at_its_ceiling_is_told_to_mix_both_anew()
    {
        using var room = Darkroom.WithDemoYear();
        string[] session = ["record", "session", "S23", "--process", "film", "--sheets", "18 fen80 N keeper 25ml",
            "--anyway", "--dry-run"];
        Assert.Contains("(handbook): discard F4 and F5 and mix a fresh pair first", room.Run(session).Error,
            StringComparison.Ordinal);
        room.Do("record", "setting", "rotation-ceiling", "4");
        Assert.Contains("(handbook): rotate the pair first", room.Run(session).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_not_there_to_discard_is_counted_first_as_the_refusal_says()
    {
        using var room = Darkroom.WithDemoYear();
        var refused = room.Run("record", "discard", "syrup/5", "500ml", "--reason", "old");
        Assert.Equal(3, refused.Status);
        Assert.Contains("count it first: `record count syrup/5 500ml --reason ...`", refused.Error,
            StringComparison.Ordinal);
        room.Do("record", "count", "syrup/5", "500ml", "--reason", "miscounted", "--anyway");
        room.Do("record", "discard", "syrup/5", "500ml", "--reason", "old");
    }

    [Fact]
    public void A_syrup_is_poured_by_weight_once_its_density_is_known()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("record", "item", "syrup", "--density", "1.25");
        Assert.Contains("64 ml -> 50 ml", room.Do("record", "discard", "syrup", "17.5g", "--reason",
            "spilt").Replace("  ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("record clearing-test F4 fen80 85", "that is 2 times the fresh time or more")]
    [InlineData("record observation F5 specks", "")]
    [InlineData("record silver-test F4 3.5", "")]
    [InlineData("record residual-test F4 silver faint --passed no --session S22", "")]
    [InlineData("record top-up F5 100ml", "")]
    [InlineData("record jug-filling J2 500ml rinse", "")]
    public void What_is_learned_is_recorded(string line, string remark)
    {
        using var room = Darkroom.WithDemoYear();
        var ran = room.Run(line.Split(' '));
        Assert.Equal(0, ran.Status);
        Assert.Contains(remark, ran.Error, StringComparison.Ordinal);
        Assert.True(room.Run("check", "--json").Json.GetProperty("ok").GetBoolean());
    }

    [Fact]
    public void Paper_has_sessions_and_baths_of_its_own()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("record", "item", "fibre", "--kind", "film", "--role", "fibre paper", "--format",
            "8x10", "--pack", "100");
        room.Do("record", "delivery", "fibre", "1", "--price", "152");
        string[] prints = ["record", "print-session", "P11", "--sheets", "2 fibre final",
            "1 fibre strip 3 of 4", "--bath"];
        Assert.Equal(3, room.Run([.. prints, "P1"]).Status);
        Assert.Contains("is for film; paper never goes through it", room.Run([.. prints, "F4"]).Error,
            StringComparison.Ordinal);
        room.Do("record", "bath", "P1", "tarnfix", "1.5l", "--material", "paper", "--capacity",
            "800", "--basis", "strict");
        Assert.Contains("220 sq in through P1", room.Do([.. prints, "P1"]), StringComparison.Ordinal);
        Assert.True(room.Run("show", "costs", "--json").Json.GetProperty("reconciles").GetBoolean());
        var last = room.Run("show", "prints", "--json").Json.GetProperty("prints")[0];
        Assert.Equal(("P11", "P1", 3, 220m), (
            last.GetProperty("session").GetString(), last.GetProperty("bath").GetString(),
            last.GetProperty("sheets").GetInt32(), last.GetProperty("areaSqIn").GetDecimal()));
    }

    [Fact]
    public void Fifteen_prints_by_the_strict_basis_are_sixty_by_the_makers()
    {
        using var room = Darkroom.WithDemoYear();
        var bases = room.Run("show", "bath", "PF5", "--json").Json.GetProperty("capacities").EnumerateArray().ToList();
        Assert.Equal(["strict", "maker's"], bases.Select(basis => basis.GetProperty("basis").GetString()));
        Assert.Equal([15, 60],
            bases.Select(basis => basis.GetProperty("remainingSheets").GetProperty("8x10").GetInt32()));
        Assert.Equal(["8x10"], bases[0].GetProperty("remainingSheets").EnumerateObject().Select(format => format.Name));
    }

    [Fact]
    public void A_stop_is_used_until_its_indicator_changes_colour()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("record", "bath", "S1", "citric-stop", "1.5l", "--dilution", "1+0", "--amount", "30g");
        Assert.Contains("no indicator is set", room.Run("record", "indicator", "S1", "purple").Error,
            StringComparison.Ordinal);
        room.Do("record", "item", "citric-stop", "--indicator", "purple");
        Assert.Contains("until its indicator is purple", room.Do("show", "bath", "S1"), StringComparison.Ordinal);
        Assert.Contains("can still be used", room.Run("record", "indicator", "S1", "yellow").Error,
            StringComparison.Ordinal);
        Assert.Equal("", EndOf("S1"));
        room.Do("record", "indicator", "S1", "Purple");
        Assert.Equal("sight", EndOf("S1"));
        Assert.Contains("its indicator is Purple", room.Do("show", "today"), StringComparison.Ordinal);
        room.Do("record", "undo", room.Run("show", "journal", "--json").Json.GetProperty("entries")[0]
            .GetProperty("reference").GetString()!, "--reason", "mistaken");
        Assert.Equal("", EndOf("S1"));

        string EndOf(string bath) =>
            room.Run("show", "bath", bath, "--json").Json.GetProperty("endsBy").GetString() ?? "";
    }

    [Fact]
    public void Of_several_baths_one_of_each_item_is_named_and_the_plan_asks_as_the_session_does()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("record", "item", "sourbath", "--kind", "chemical", "--role", "stop", "--pack",
            "1l", "--dilution", "1+19");
        room.Do("record", "delivery", "sourbath", "1", "--price", "9");
        room.Do("record", "delivery", "tarnfix", "1", "--price", "16");
        room.Do("record", "process", "two", "--step", "stop sourbath reused", "--step", "fixer tarnfix reused");
        foreach (var (bath, item) in new[] { ("ST1", "sourbath"), ("ST2", "sourbath"), ("F9", "tarnfix") })
            room.Do("record", "bath", bath, item, "500ml");
        string[] session = ["record", "session", "S23", "--process", "two", "--sheets", "4 practice practice"];
        var ran = room.Run([.. session, "--bath", "F9"]);
        Assert.Equal(3, ran.Status);
        Assert.Contains("say which bath the film went through: ST1 or ST2 of sourbath", ran.Error,
            StringComparison.Ordinal);
        Assert.Contains("F4 or F9 of tarnfix, and ST1 or ST2 of sourbath",
            room.Run(session).Error.ReplaceLineEndings(" "), StringComparison.Ordinal);

        string[] plan = ["plan", "session", "--process", "two", "--sheets", "4 practice N", "--exit-code"];
        var open = room.Run([.. plan, "--bath", "F9"]);
        Assert.Equal(10, open.Status);
        Assert.Contains("several baths of sourbath can be used: name ST1 or ST2", open.Out, StringComparison.Ordinal);
        Assert.Equal(0, room.Run([.. plan, "--bath", "F9,ST2"]).Status);

        room.Do("record", "plan", "sunday", "--on", "2026-12-06", "--process", "two", "--sheets",
            "4 practice N", "--bath", "F4, ST2");
        room.Do("record", "session", "S23", "--from-plan", "sunday", "--bath", "F9");
        Assert.Equal("F9",
            room.Run("show", "sessions", "--json").Json.GetProperty("sessions")[0].GetProperty("bath").GetString());
        Assert.Equal([0m, 320m, 320m], new[] { "ST1", "ST2", "F9" }.Select(Worked));
        Assert.True(room.Run("check", "--json").Json.GetProperty("ok").GetBoolean());

        decimal Worked(string bath) =>
            room.Run("show", "bath", bath, "--json").Json.GetProperty("areaSqIn").GetDecimal();
    }

    [Fact]
    public void A_replenished_developer_says_what_is_due_and_what_its_control_strips_showed()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("record", "item", "seasoned", "--kind", "chemical", "--role", "developer",
            "--pack", "1l", "--dilution", "1+0", "--replenisher-per-80", "20ml", "--replenisher-ceiling", "50");
        room.Do("record", "delivery", "seasoned", "3", "--price", "20");
        room.Do("record", "process", "deep", "--step", "developer seasoned reused", "--step", "fixer tarnfix reused");
        room.Do("record", "bath", "D1", "seasoned", "1l");
        room.Do("record", "session", "S23", "--process", "deep", "--sheets", "4 practice practice", "--bath", "F4");
        Assert.Contains("bath D1: 80 ml of replenisher due", room.Do("show", "today"), StringComparison.Ordinal);
        room.Do("record", "jug-start", "J3", "5l", "used developer");
        room.Do("record", "top-up", "D1", "80ml", "--poured-off", "60ml", "--jug", "J3");
        Assert.DoesNotContain("replenisher due", room.Do("show", "today"), StringComparison.Ordinal);
        Assert.Contains("60 ml  film developer D1", room.Do("show", "jugs"), StringComparison.Ordinal);
        Assert.Contains("is not a developer", room.Run("record", "control-strip", "F4", "fine").Error,
            StringComparison.Ordinal);
        room.Do("record", "control-strip", "D1", "speed -0.12", "--within-limits", "no");
        Assert.Contains("the last control strip was out of limits", room.Do("show", "today"), StringComparison.Ordinal);
        room.Do("record", "control-strip", "D1", "speed -0.02");
        Assert.DoesNotContain("control strip", room.Do("show", "today"), StringComparison.Ordinal);
        Assert.Equal([false, true],
            room.Run("show", "bath", "D1", "--json").Json.GetProperty("controlStrips").EnumerateArray()
                .Select(strip => strip.GetProperty("isWithinLimits").GetBoolean()));
        Assert.Contains("mix a fresh one", room.Run("record", "top-up", "D1", "420ml").Error, StringComparison.Ordinal);
        Assert.Equal("replenisher added up to its ceiling",
            room.Run("show", "bath", "D1", "--json").Json.GetProperty("ends")[0].GetProperty("reason").GetString());
        Assert.True(room.Run("check", "--json").Json.GetProperty("ok").GetBoolean());
    }

    [Fact]
    public void A_jug_that_is_full_or_old_is_told_and_nothing_is_said_to_be_allowed()
    {
        using var room = Darkroom.WithDemoYear();
        Assert.Contains("toner's metals", room.Run("record", "discard", "selvane/1", "--reason",
            "too old", "--jug", "J2").Error, StringComparison.Ordinal);
        room.Do("record", "discard", "selvane/1", "--reason", "too old", "--jug", "J2", "--anyway");
        Assert.Contains("250 ml  unused selvane", room.Do("show", "jugs"), StringComparison.Ordinal);
        Assert.Contains("only liquids go into a jug", room.Run("record", "discard", "practice",
            "1", "--reason", "bent", "--jug", "J2").Error, StringComparison.Ordinal);
        room.Do("record", "jug-filling", "J2", "12l", "rinse");
        Assert.Contains("jug J2 is nearly full: 1750 ml fit in", room.Do("show", "today"), StringComparison.Ordinal);
        room.Do("record", "jug-filling", "J2", "1750ml", "rinse");
        Assert.Contains("jug J2 is full", room.Do("show", "today"), StringComparison.Ordinal);
        room.Do("record", "setting", "jug-days", "100");
        var notices = room.Run("show", "today", "--json").Json.GetProperty("notices").EnumerateArray()
            .Where(notice => notice.GetProperty("about").GetString() == "J2").ToList();
        Assert.Equal(["jug-full", "jug-old"], notices.Select(notice => notice.GetProperty("kind").GetString()));
        Assert.Contains("stood for 176 days", notices[1].GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.All(notices,
            notice => Assert.Contains("your local rules say where it may go", notice.GetProperty("step").GetString(),
                StringComparison.Ordinal));
        room.Do("record", "jug-handover", "J2", "collection point");
        Assert.DoesNotContain("J2", room.Do("show", "today"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("record bath S9 tarnfix 1l", "Tarnbeck rapid fixer: gloves")]
    [InlineData("record top-up F4 100ml", "Tarnbeck rapid fixer: gloves")]
    [InlineData("record jug-filling J2 500ml rinse", "Holds silver")]
    [InlineData("record discard selvane/1 --reason old --to \"collection point\"", "Selvane toner: gloves")]
    public void The_caution_comes_before_the_act_with_that_of_the_item(string line, string own)
    {
        using var room = Darkroom.WithDemoYear();
        var ran = room.Run([.. CommandLine.Words(line), "--dry-run"]);
        Assert.Equal(0, ran.Status);
        Assert.StartsWith("caution: ", ran.Error, StringComparison.Ordinal);
        Assert.Contains(own, ran.Error, StringComparison.Ordinal);
        Assert.Contains("afety data sheet", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_jug_has_a_label_with_its_hazard_and_where_it_does_not_go()
    {
        using var room = Darkroom.WithDemoYear();
        var label = room.Do("print", "bottle-label", "J2").ReplaceLineEndings(" ");
        Assert.Contains("J2: used fixer", label, StringComparison.Ordinal);
        Assert.Contains("waste: fixer", label, StringComparison.Ordinal);
        Assert.Contains("started 2025-09-20", label, StringComparison.Ordinal);
        Assert.Contains("to be handed over", label, StringComparison.Ordinal);
        Assert.Contains("Holds silver", label, StringComparison.Ordinal);
        Assert.Contains("safety data sheet", label, StringComparison.Ordinal);
    }

    [Fact]
    public void A_residue_is_held_against_the_limit_of_the_user()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("record", "setting", "residual-hypo-limit", "0.014");
        room.Do("record", "residual-test", "F4", "hypo", "0.014 g/m2", "--session", "S22");
        room.Do("record", "residual-test", "F4", "hypo", "14.1 mg/m2", "--session", "S22");
        room.Do("record", "residual-test", "F4", "hypo", "0.010 g/m2 but stained", "--passed", "no");
        room.Do("record", "residual-test", "F5", "silver", "stain", "--passed", "no");
        Assert.Equal([true, false, false],
            room.Run("show", "bath", "F4", "--json").Json.GetProperty("residualTests").EnumerateArray()
                .Select(test => test.GetProperty("hasPassed").GetBoolean()));
        Assert.Contains("2026-03-15 by test: residual silver: stain", room.Do("show", "bath", "F5"),
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_bath_of_an_earlier_day_does_not_hold_what_was_added_later()
    {
        using var room = Darkroom.WithDemoYear();
        var before = room.Run("show", "bath", "F4", "--as-of", "2026-01-31", "--json").Out;
        room.Do("record", "top-up", "F4", "100ml", "--date", "2026-03-10");
        Assert.Equal(before, room.Run("show", "bath", "F4", "--as-of", "2026-01-31", "--json").Out);
    }
}
