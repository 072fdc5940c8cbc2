namespace Ledger.Core.Tests.Planning;

/// <summary>A plan advises what helps, and lays into the trays what will really lie there.</summary>
public sealed class RightCureTests
{
    /// <summary>A litre and a half for 3000 sq in; 48 sheets of 8x10 are 3840.</summary>
    [Fact]
    public void A_session_that_no_bath_of_that_size_takes_is_split_or_given_a_larger_pair()
    {
        var ledger = Pair();
        var bath = Plan(ledger, 48).Baths[0];
        Assert.Equal(BathCure.Split, bath.Cure);
        Assert.Equal(
            "a fresh pair of that size takes 3000 sq in: split the session into 2, or mix a larger pair, "
            + "2000 ml of fix 1+4 (400 ml) each", bath.Proposal);
        ledger.Post("bath bath=F9 date=2026-02-01");
        Assert.EndsWith(
            "; or develop what F9 still takes, 3000 sq in, in a session of its own",
            Plan(ledger, 48, bath: "F1").Baths[0].Proposal, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(37, false)]
    [InlineData(38, true)]
    public void A_fresh_bath_of_that_size_takes_37_sheets_and_no_more(int sheets, bool isSplit) =>
        Assert.Equal(isSplit, Plan(Pair(), sheets).Baths[0].Cure == BathCure.Split);

    [Fact]
    public void After_a_rotation_the_second_bath_lies_in_the_first_tray_and_a_fresh_one_in_the_second()
    {
        var ledger = Pair();
        ledger.Post(Yellow("F1"));
        var plan = Plan(ledger, 4);
        Assert.Equal(BathCure.Rotate, plan.Baths[0].Cure);
        Assert.Equal(
            ["bath F2 1500 ml", "fix for a fresh bath 300 ml + water 1200 ml"],
            plan.Trays.Where(tray => tray.Role == ItemRole.Fixer).Select(Texts));
        Assert.DoesNotContain(plan.Trays.SelectMany(tray => tray.Parts), part => part.What == "bath F1");
    }

    [Fact]
    public void What_is_to_be_mixed_is_what_the_shortage_is_counted_by()
    {
        var ledger = Pair();
        ledger.Post("setting setting=rotation-ceiling value=0");
        ledger.Post(Yellow("F1"));
        ledger.Post("count item=fix found=100ml reason=counted");
        var plan = Plan(ledger, 4);
        Assert.Equal(BathCure.MixPair, plan.Baths[0].Cure);
        var poured = plan.Trays.SelectMany(tray => tray.Parts)
            .Where(part => part.What.StartsWith("fix", StringComparison.Ordinal)).Sum(part => part.Amount!.Value.Base);
        Assert.Equal(poured, plan.Shortages.Single(shortage => shortage.Item.Code == "fix").Needed.Base);
        Assert.Equal(600_000, poured);
    }

    [Fact]
    public void Concentrate_of_a_bath_to_be_mixed_is_taken_out_and_planned_but_costs_the_session_nothing()
    {
        var ledger = Pair();
        Assert.DoesNotContain(Plan(ledger, 4).Uses, use => use.Item.Code == "fix");
        ledger.Post(Yellow("F1"));
        var before = Plan(ledger, 4);
        var use = before.Uses.Single(one => one.Item.Code == "fix");
        Assert.Equal(300_000, use.Needed.Base);
        Assert.Equal("fix/1", Assert.Single(use.Sources).From.Code);
        Assert.DoesNotContain("fix/1", before.ToLog(Some.Key(), "S9", Some.Today).DrawFirst);
        Assert.Equal(before.UsedUp.Sum(one => one.Cost.Millionths) + before.Cost.Baths.Millionths,
            before.Cost.Total.Millionths);
        ledger.Post(new PlannedSession
        {
            Key = Some.Key(), Date = Some.Today, Plan = "sunday", On = Some.Today,
            Request = new() { Process = "pm", Sheets = [new() { Film = "fen80", Count = 4, Group = "N" }] },
        });
        Assert.Contains(PlannedDemand.Of(ledger.Holdings), one => (one.Item, one.Quantity.Base) == ("fix", 300_000));
    }

    [Fact]
    public void A_bath_that_is_discarded_and_a_second_one_that_was_never_mixed_take_two_fresh_ones()
    {
        var ledger = Shelves.WithBath();
        ledger.Post(Some.Process("two", [.. Some.Steps.Take(2), Fixer(3), Fixer(4)]));
        ledger.Post(Yellow("F1"));
        Assert.Equal(600_000, Plan(ledger, 4, process: "two").Uses.Single(use => use.Item.Code == "fix").Needed.Base);
    }

    [Fact]
    public void A_bath_that_is_missing_is_mixed_as_often_as_the_process_says()
    {
        var ledger = Shelves.Stocked();
        ledger.Post(Some.Process("two", [.. Some.Steps.Take(2), Fixer(3), Fixer(4)]));
        var plan = Plan(ledger, 4, process: "two");
        Assert.Equal(
            plan.Trays.SelectMany(tray => tray.Parts)
                .Where(part => part.What.StartsWith("fix", StringComparison.Ordinal))
                .Sum(part => part.Amount!.Value.Base),
            plan.Baths[0].ToMix.Sum(mix => mix.Amount.Base));
        ledger.Post("bath bath=F1 date=2026-02-01");
        plan = Plan(ledger, 4, process: "two");
        Assert.Equal("no second bath of fix is in use", plan.Baths[1].Word);
        Assert.False(plan.CanRun);
    }

    /// <summary>Two lines "2 fen80 N: mill" are two batches: one would have held the subject whole.</summary>
    [Fact]
    public void Sheets_of_one_subject_go_into_two_batches_where_no_lone_sheet_is_left()
    {
        var plan = Planned(Shelves.WithBath(), new() { Process = "pm", Sheets = [Mill(2), Mill(2)] });
        Assert.Equal([2, 2], plan.Batches.Select(batch => batch.Sheets.Count));
        Assert.DoesNotContain(plan.Advice, sentence => sentence.Contains("mill", StringComparison.Ordinal));
        plan = Planned(Shelves.WithBath(), new() { Process = "pm", Sheets = [Mill(3)] });
        Assert.Equal([3], plan.Batches.Select(batch => batch.Sheets.Count));
        Assert.DoesNotContain(plan.Advice,
            sentence => sentence.Contains("mill", StringComparison.Ordinal)); // it could not be followed
    }

    [Fact]
    public void Batches_can_be_arranged_by_hand_and_are_then_looked_at()
    {
        var plan = Planned(Shelves.WithBath(), new()
        {
            Process = "pm",
            Sheets = [Mill(4) with { Batch = 1 }, new() { Film = "fen80", Count = 5, Group = "N", Batch = 2 },
                new() { Film = "fen80", Count = 2, Group = "N" }],
        });
        Assert.Equal([4, 5, 2], plan.Batches.Select(batch => batch.Sheets.Count));
        Assert.Contains(
            "all 4 sheets of the subject mill are in batch 1; an accident there would take them all: put some of them "
                + "into another batch (\"batch 2\" in their line)", plan.Advice);
        Assert.Contains("batch 2 has 5 sheets; your limit is 4", plan.Advice);
    }

    [Fact]
    public void A_logged_session_is_looked_at_in_the_same_way()
    {
        var ledger = Shelves.WithBath();
        ledger.Post("holder holder=E01 format=8x10");
        ledger.Post("holder holder=E02 format=8x10");
        ledger.Post("load sides=E01-1,E01-2,E02-1,E02-2 from=fen80/1");
        ledger.Post(new ExposureNote
        {
            Key = Some.Key(), Date = Some.Today, Sides = ["E01-1", "E01-2", "E02-1", "E02-2"],
            Group = "N", Subject = "mill",
        });
        var log = Planned(ledger,
            new() { Process = "pm",
                Sheets = [new() { Film = "fen80", Count = 4, Group = "N", From = "E01-1, E01-2, E02-1, E02-2",
                    Batch = 1 }] })
            .ToLog(Some.Key(), "S1", Some.Today);
        Assert.Contains(
            "all 4 sheets of the subject mill are in batch 1; an accident there would take them "
                + "all", ledger.Post(log).Remarks);
    }

    [Fact]
    public void What_is_short_costs_what_the_last_delivery_cost_and_that_is_said()
    {
        var ledger = Shelves.WithBath(); // 50 sheets of fen80 at 162 a box of 25, and 14.50 of shipping
        var plan = Plan(ledger, 60, prices: new Prices());
        Assert.Equal(10, plan.Shortages.Single(shortage => shortage.Item.Code == "fen80").Missing.Base);
        Assert.Equal(Money.Of(338.50m) + Money.Of(70), plan.Cost.Film);
        Assert.Equal(
            "What is short, 70.00 of it, is counted at the last price: fen80 of 2026-01-10",
            plan.Cost.Remark(MeasureStyle.Metric));
        Assert.Equal(plan.Cost.Total.Per(60), plan.Cost.PerSheet);
        var unknown = Plan(ledger, 60);
        Assert.Null(unknown.Cost.PerSheet);
        Assert.Equal("It costs more than that: there is no price for fen80", unknown.Cost.Remark(MeasureStyle.Metric));
    }

    [Fact]
    public void Film_without_a_price_leaves_the_cost_open()
    {
        var ledger = Shelves.WithBath();
        ledger.Post("count item=fen80/1 found=0sheet reason=lost");
        ledger.Post("count item=fen80/2 found=0sheet reason=lost");
        ledger.Post(new Delivery { Key = Some.Key(), Date = Some.Earlier,
            Lines = [new() { Item = "fen80", Packs = 1 }] });
        var plan = Plan(ledger, 4);
        Assert.False(plan.Cost.IsComplete);
        Assert.Equal(["fen80"], plan.Cost.Unpriced);
    }

    private static RequestedSheets Mill(int count) =>
        new() { Film = "fen80", Count = count, Group = "N", Subject = "mill" };

    private static BathObservation Yellow(string bath) =>
        new() { Key = Some.Key(), Date = Some.Today, Bath = bath, Sign = "yellow" };

    private static InMemoryLedger Pair()
    {
        var ledger = Shelves.Stocked();
        ledger.Post("bath bath=F1 date=2026-02-01");
        ledger.Post("bath bath=F2 paired_with=F1 date=2026-02-01");
        return ledger;
    }

    private static string Texts(PlannedTray tray) =>
        string.Join(" + ", tray.Parts.Select(part => $"{part.What} {part.Amount}"));

    private static SessionPlan Plan(
        InMemoryLedger ledger, int sheets, string film = "fen80", string group = "N", string process = "pm",
        string? bath = null, int limit = 4, ICostRecords? prices = null)
    {
        if (limit != 4)
            ledger.Post($"setting setting=batch-sheets value={limit}");
        return Planned(ledger, new() { Process = process, Bath = bath,
            Sheets = [new() { Film = film, Count = sheets, Group = group }] }, prices);
    }

    private static SessionPlan Planned(InMemoryLedger ledger, PlanRequest request, ICostRecords? prices = null) =>
        Assert.IsType<Planned>(SessionPlanning.Of(request, ledger.Holdings, Some.Today, prices)).Plan;

    /// <summary>The last box of 25 cost 175.</summary>
    private sealed class Prices : ICostRecords
    {
        public IReadOnlyList<LotPrice> PricesOf(string item, LocalDate asOf) =>
            [new(item, Some.Earlier, new(1), Quantity.Of(25, Unit.Sheet), Money.Of(175), null)];
    }

    private static ProcessStep Fixer(int number) => new()
    {
        Number = number, Role = ItemRole.Fixer, Item = "fix", Use = StepUse.Reused,
        WorkingVolume = Volume.FromMillilitres(1000),
    };
}
