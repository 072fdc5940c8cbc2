namespace Ledger.Core.Tests.Journal.Rules;

/// <summary>
/// A developer in two parts, 1+2+100: both are on the shelf, and both leave it. Common practice; the products are
/// invented.
/// </summary>
public sealed class TwoPartTests
{
    private static readonly Item PartA = Some.Syrup with
    {
        Code = "tan-a", Name = "Tarnbeck tanning A", Dilution = Dilution.Parse("1+2+100"),
        MinimumPer80SquareInches = null, OtherParts = ["tan-b"],
    };

    private static readonly Item PartB = Some.Syrup with
    {
        Code = "tan-b", Name = "Tarnbeck tanning B", Dilution = null, MinimumPer80SquareInches = null,
    };

    private static InMemoryLedger Stocked(Item a, decimal bottlesOfB = 1)
    {
        var ledger = Shelves.WithBath();
        ledger.Post(Some.Definition(a));
        ledger.Post(Some.Definition(PartB));
        ledger.Post("delivery item=tan-a price=50 date=2026-01-10");
        if (bottlesOfB > 0)
            ledger.Post(
                $"delivery item=tan-b packs={bottlesOfB.ToString(System.Globalization.CultureInfo.InvariantCulture)} price=20 date=2026-01-10");
        ledger.Post(Some.Process(steps: [Some.StepsIn(1030)[0] with { Item = "tan-a" }, .. Some.Steps.Skip(1)]));
        return ledger;
    }

    [Fact]
    public void A_session_takes_both_parts_from_the_shelf_and_both_cost()
    {
        var ledger = Stocked(PartA);
        var posting = ledger.Post("session line=2_fen80 line=4_fen80");
        Assert.Contains(new Effect("tan-a/1", "1000 ml", "980 ml"), posting.Effects);
        Assert.Contains(new Effect("tan-b/1", "1000 ml", "960 ml"), posting.Effects);
        Assert.Equal(Money.Of(1.80m),
            SessionEstimate.Of(posting, Stocked(PartA).Holdings).Developer); // 20 × 0.05 + 40 × 0.02
        Assert.Equal(ledger.Balances(), ledger.Held());
    }

    [Fact]
    public void What_was_measured_of_the_first_part_says_the_second_unless_that_is_said_too()
    {
        var log = new SessionLog
        {
            Key = Some.Key(), Date = Some.Today, Session = "S1", Process = "pm",
            Lines =
            [
                new() { Item = "fen80", Sheets = 2, Developer = Volume.FromMillilitres(15) },
                new() { Item = "fen80", Sheets = 2, Developer = Volume.FromMillilitres(15),
                    OtherParts = [Volume.FromMillilitres(25)] },
            ],
        };
        var posting = Stocked(PartA).Post(log);
        Assert.Contains(new Effect("tan-a/1", "1000 ml", "970 ml"), posting.Effects);
        Assert.Contains(new Effect("tan-b/1", "1000 ml", "945 ml"), posting.Effects);
        Assert.Contains("1 part beside", Assert.IsType<Refused>(Stocked(PartA).Preview(log with
        {
            Lines = [log.Lines[0] with { OtherParts = [Volume.FromMillilitres(1), Volume.FromMillilitres(2)] }],
        })).Refusal.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_needs_both_and_the_session_logged_from_it_takes_what_it_promised()
    {
        var ledger = Stocked(PartA);
        var plan = Plan(ledger, 4);
        Assert.True(plan.CanRun);
        Assert.Equal(["10 ml of tan-a", "20 ml of tan-b"],
            plan.Uses.Where(use => use.Item.Role == ItemRole.Developer)
                .Select(use => $"{use.Needed} of {use.Item.Code}"));
        Assert.Equal(["tan-a", "tan-b", "water"],
            plan.Trays.Single(tray => tray.Role == ItemRole.Developer).Parts.Select(part => part.What));
        Assert.Equal(Money.Of(0.90m), plan.Cost.Developer);
        var posting = ledger.Post(plan.ToLog(Some.Key(), "S1", Some.Today));
        Assert.Contains(new Effect("tan-b/1", "1000 ml", "980 ml"), posting.Effects);
    }

    [Fact]
    public void A_plan_without_enough_of_the_second_part_cannot_run()
    {
        var plan = Plan(Stocked(PartA, bottlesOfB: 0), 4);
        Assert.False(plan.CanRun);
        Assert.Equal("20 ml of tan-b",
            string.Join('|', plan.Shortages.Select(shortage => $"{shortage.Missing} of {shortage.Item.Code}")));
    }

    [Fact]
    public void A_part_that_no_item_stands_for_is_said_to_be_unknown()
    {
        var ledger = Stocked(PartA with { OtherParts = [] });
        var plan = Plan(ledger, 4);
        Assert.False(plan.IsSure);
        const string Unknown =
            "part B of tan-a 1+2+100 is neither taken from stock nor costed: name its item in the settings of tan-a";
        Assert.Contains(Unknown, plan.Advice);
        Assert.Contains(Unknown, ledger.Post("session line=4_fen80").Remarks);
    }

    [Fact]
    public void The_graduate_rounds_each_part_and_the_log_says_what_was_measured()
    {
        var ledger = Stocked(PartA with { Dilution = Dilution.Parse("2+1+100") });
        ledger.Post("setting setting=graduate value=1");
        var plan = Plan(ledger, 4);
        Assert.Equal("20 ml", plan.Batches[0].Developer!.Measured.ToString());
        ledger.Post(Some.Process(steps: [Some.StepsIn(1545)[0] with { Item = "tan-a" }, .. Some.Steps.Skip(1)]));
        plan = Plan(ledger, 4);
        Assert.Equal("30 ml + 15 ml",
            $"{plan.Batches[0].Developer!.Measured} + {plan.Batches[0].Developer!.OtherParts[0].Measured}");
        Assert.Equal([Volume.FromMillilitres(15)], plan.ToLog("k", "S1", Some.Today).Lines[0].OtherParts);
    }

    [Fact]
    public void A_bath_and_a_one_shot_stop_of_two_parts_take_both()
    {
        var ledger = Stocked(PartA);
        ledger.Post(Some.Definition(Some.Fixer with { Code = "hard", Dilution = Dilution.Parse("4+1+15"),
            OtherParts = ["tan-b"] }));
        ledger.Post("delivery item=hard price=20 date=2026-01-10");
        var mixed = ledger.Post("bath bath=F7 item=hard working_ml=2000");
        Assert.Contains(new Effect("hard/1", "1000 ml", "600 ml"), mixed.Effects);
        Assert.Contains(new Effect("tan-b/1", "1000 ml", "900 ml"), mixed.Effects);
        Assert.Equal(ledger.Balances(), ledger.Held());

        ledger.Post(Some.Process("two", [.. Some.Steps.Where(step => step.Role != ItemRole.Stop), new()
        {
            Number = 9, Role = ItemRole.Stop, Item = "hard", WorkingVolume = Volume.FromMillilitres(1000),
        }]));
        ledger.Post("delivery item=stop price=9 date=2026-01-10");
        Assert.Contains(
            new Effect("tan-b/1", "900 ml", "850 ml"),
            ledger.Post("session session=S2 process=two bath=F1 line=4_fen80").Effects);
    }

    private static SessionPlan Plan(InMemoryLedger ledger, int sheets) => Assert.IsType<Planned>(SessionPlanning.Of(
        new() { Process = "pm", Sheets = [new() { Film = "fen80", Count = sheets, Group = "N" }] },
        ledger.Holdings)).Plan;
}
