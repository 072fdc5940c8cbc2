namespace Ledger.Core.Tests.Planning;

public sealed class CanItRunTests
{
    [Fact]
    public void Everything_is_there()
    {
        var plan = Plan(Shelves.WithBath(), 8);
        Assert.True(plan.CanRun);
        Assert.Empty(plan.Shortages);
        Assert.Equal(["fen80", "syrup", "stop", "gloves"], plan.Uses.Select(use => use.Item.Code));
        Assert.Equal("developer, stop, fixer", string.Join(", ", plan.Trays.Select(tray => tray.Name)));
        Assert.Equal("bath F1", plan.Trays[2].Parts[0].What);
        Assert.Equal((0, 640), (plan.Baths[0].Before.SquareInches, plan.Baths[0].After.SquareInches));
    }

    [Fact]
    public void What_is_short_is_said_with_its_cure()
    {
        var ledger = Shelves.WithBath();
        ledger.Post("count item=syrup found=60ml reason=dregs");
        var plan = Plan(ledger, 12);
        var shortage = Assert.Single(plan.Shortages);
        Assert.Equal(("75 ml", "60 ml", "15 ml"),
            (shortage.Needed.ToString(), shortage.Usable.ToString(), shortage.Missing.ToString()));
        Assert.Equal("it is enough for the first 2 batches (8 sheets); get 1 pack of 1000 ml", shortage.Cure);
        Assert.False(plan.Cost.IsComplete);
    }

    [Fact]
    public void Without_a_bath_one_is_to_be_mixed()
    {
        var plan = Plan(Shelves.Stocked(), 4);
        Assert.False(plan.CanRun);
        Assert.Equal("no bath of fix is in use", Assert.Single(plan.Baths).Word);
    }

    [Fact]
    public void A_full_pair_is_to_be_rotated_and_at_the_ceiling_both_are_to_be_mixed()
    {
        var ledger = Shelves.Stocked();
        ledger.Post("bath bath=F1 working_ml=200 date=2026-02-01");
        ledger.Post("bath bath=F2 working_ml=200 paired_with=F1 date=2026-02-01");
        ledger.Post("session session=S9 line=4_fen80");
        var plan = Plan(ledger, 4);
        Assert.Equal("F1 would be at 640 sq in of 400 sq in (own)", plan.Baths[0].Word);
        Assert.StartsWith("rotate the pair: discard F1, move F2 up, and mix 200 ml of fix 1+4 (40 ml)",
            plan.Baths[0].Proposal, StringComparison.Ordinal);
        Assert.Contains(plan.Advice, sentence => sentence.StartsWith("F1 would be at", StringComparison.Ordinal));

        ledger.Post("setting setting=rotation-ceiling value=0");
        Assert.Contains("the pair was rotated 0 of 0 times; discard both baths and mix a fresh pair",
            Plan(ledger, 4).Baths[0].Proposal, StringComparison.Ordinal);
    }

    [Fact]
    public void The_second_bath_of_a_pair_has_a_tray_though_the_process_says_fixer_once()
    {
        var ledger = Shelves.WithBath();
        ledger.Post("bath bath=F2 paired_with=F1 date=2026-02-01");
        Assert.Equal(
            ["developer", "stop", "fixer 1 bath F1", "fixer 2 bath F2"],
            Plan(ledger,
                4).Trays.Select(tray => tray.Role == ItemRole.Fixer ? $"{tray.Name} {tray.Parts[0].What}" : tray.Name));
    }

    [Fact]
    public void A_group_that_takes_the_time_of_the_others_is_said()
    {
        var request = new PlanRequest
        {
            Process = "pm", Times = GroupTimes.Read("11 N-1=9")!,
            Sheets = [.. new[] { "N", "N-1",
                "N-2" }.Select(group => new RequestedSheets { Film = "fen80", Count = 4, Group = group })],
        };
        var plan = Assert.IsType<Planned>(SessionPlanning.Of(request, Shelves.WithBath().Holdings)).Plan;
        Assert.Equal(
            ["N-2 has no time of its own: 11 min, as for the others; say it with the times, such as N-2=9"],
            plan.Advice.Where(sentence => sentence.Contains("time of its own", StringComparison.Ordinal)));
    }

    [Fact]
    public void Every_bath_that_the_process_uses_again_is_looked_at()
    {
        var ledger = Shelves.WithBath();
        ledger.Post(Some.Definition(Some.Fixer with { Code = "stopbath", Name = "Stop", Role = ItemRole.Stop }));
        ledger.Post(
            Some.Process("two", [.. Some.Steps.Take(1),
                new() { Number = 2, Role = ItemRole.Stop, Item = "stopbath", Use = StepUse.Reused }, Some.Steps[2]]));
        var request = new PlanRequest { Process = "two", Sheets = [new() { Film = "fen80", Count = 4 }] };
        var plan = Planned(ledger, request);
        Assert.Equal(["fix", "stopbath"], plan.Baths.Select(bath => bath.Item));
        Assert.Equal("no bath of stopbath is in use", plan.Baths[1].Word);
        Assert.False(plan.CanRun);

        ledger.Post("delivery item=stopbath date=2026-01-10");
        ledger.Post("bath bath=S1 item=stopbath date=2026-02-01");
        plan = Planned(ledger, request);
        Assert.True(plan.CanRun);
        Assert.DoesNotContain(plan.Advice, sentence => sentence.Contains("several baths", StringComparison.Ordinal));
        ledger.Post(plan.ToLog(Some.Key(), "S1", Some.Today));
        Assert.All(plan.Baths, bath => Assert.Equal(bath.After, ledger.Holdings.Bath(bath.Bath!.Code)!.WorkedWeighted));
    }

    [Fact]
    public void A_bath_past_its_age_does_not_do()
    {
        var plan = Planned(Shelves.WithBath(),
            new() { Process = "pm", Sheets = [new() { Film = "fen80", Count = 2 }] }, days: 40);
        Assert.Equal("F1 was good until 2026-04-02 (82 days old)", plan.Baths[0].Word);
    }

    [Theory]
    [InlineData("none", "fen80", 4, RefusalKind.Unknown)]
    [InlineData("pm", "none", 4, RefusalKind.Unknown)]
    [InlineData("pm", "syrup", 4, RefusalKind.NotAccepted)]
    [InlineData("pm", "fen80", 0, RefusalKind.NotAccepted)]
    [InlineData("pm", "fen80", 1001, RefusalKind.NotAccepted)]
    public void What_cannot_be_planned_is_refused(string process, string film, int count, RefusalKind kind) =>
        Assert.Equal(
            kind,
            Assert.IsType<NotPlanned>(SessionPlanning.Of(
                new() { Process = process, Sheets = [new() { Film = film, Count = count }] },
                Shelves.WithBath().Holdings)).Refusal.Kind);

    [Fact]
    public void All_sheets_of_a_subject_in_one_batch_are_advised_against_where_it_can_be_changed()
    {
        var plan = Planned(Shelves.WithBath(), new()
        {
            Process = "pm", Sheets = [new() { Film = "fen80", Count = 2, Subject = "mill race", Batch = 1 },
                new() { Film = "fen80", Count = 2 }],
        });
        Assert.Contains(plan.Advice,
            sentence => sentence.StartsWith("both sheets of the subject mill race are in batch 1",
                StringComparison.Ordinal));
    }

    private static SessionPlan Plan(InMemoryLedger ledger, int sheets) =>
        Planned(ledger, new() { Process = "pm", Sheets = [new() { Film = "fen80", Count = sheets, Group = "N" }] });

    private static SessionPlan Planned(InMemoryLedger ledger, PlanRequest request, int days = 0) =>
        Assert.IsType<Planned>(SessionPlanning.Of(request, ledger.Holdings, Some.Today.PlusDays(days))).Plan;
}
