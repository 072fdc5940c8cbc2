namespace Ledger.Core.Tests.Planning;

public sealed class PlanRulesTests
{
    private readonly InMemoryLedger _ledger = Shelves.WithBath();

    [Fact]
    public void What_a_plan_will_use_is_known_demand()
    {
        _ledger.Post(Plan("spring"));
        Assert.Equal(
            ["fen80 8 sheets", "syrup 50 ml", "stop 30 g", "gloves 1 piece"],
            PlannedDemand.Of(_ledger.Holdings).Select(demand => $"{demand.Item} {demand.Quantity}"));
        Assert.All(PlannedDemand.Of(_ledger.Holdings),
            demand => Assert.Equal((new LocalDate(2026, 4, 2), "spring"), (demand.On, demand.Plan)));
    }

    [Fact]
    public void A_trip_takes_film_only()
    {
        _ledger.Post(Plan("coast") with { IsTrip = true, Request = Plan("coast").Request with { Process = "" } });
        Assert.Equal("fen80 8 sheets",
            string.Join(", ", PlannedDemand.Of(_ledger.Holdings).Select(demand => $"{demand.Item} {demand.Quantity}")));
    }

    [Fact]
    public void A_plan_made_anew_takes_the_place_of_the_first()
    {
        _ledger.Post(Plan("spring"));
        var again = _ledger.Post(Plan("Spring") with { On = new(2026, 5, 1) });
        Assert.Equal(new LocalDate(2026, 5, 1), Assert.Single(_ledger.Holdings.Plans).On);
        Assert.Equal("it takes the place of the plan spring for 2026-04-02", Assert.Single(again.Remarks));
    }

    [Fact]
    public void The_session_that_realises_a_plan_ends_it()
    {
        _ledger.Post(Plan("spring"));
        var plan = Assert.IsType<Planned>(SessionPlanning.Of(_ledger.Holdings.Plan("spring")!.Request,
            _ledger.Holdings)).Plan;
        _ledger.Post(plan.ToLog(Some.Key(), "S1", Some.Today) with { Plan = "spring" });
        Assert.Empty(_ledger.Holdings.Plans);

        _ledger.Post(new Undo { Key = Some.Key(), Date = Some.Today, Number = _ledger.Last, Reason = "never held" });
        Assert.Equal("spring", Assert.Single(_ledger.Holdings.Plans).Name);
    }

    [Fact]
    public void A_plan_can_be_given_up_once()
    {
        _ledger.Post(Plan("spring"));
        var ending = new PlanEnding { Key = Some.Key(), Date = Some.Today, Plan = "SPRING", Reason = "rained off" };
        _ledger.Post(ending);
        Assert.Empty(PlannedDemand.Of(_ledger.Holdings));
        Assert.Equal(RefusalKind.Unknown, Refuse(ending).Kind);
    }

    [Fact]
    public void What_cannot_be_planned_is_refused()
    {
        Assert.Equal(RefusalKind.NotAccepted, Refuse(Plan("x") with { On = new(2026, 3, 14) }).Kind);
        Assert.Equal(RefusalKind.NotAccepted, Refuse(Plan("x") with { On = new(2040, 3, 14) }).Kind);
        Assert.Equal(RefusalKind.NotAccepted, Refuse(Plan(" ")).Kind);
        Assert.Equal(RefusalKind.Unknown,
            Refuse(Plan("x") with { Request = Plan("x").Request with { Process = "none" } }).Kind);
        Assert.Equal(RefusalKind.NotAccepted,
            Refuse(Plan("x") with { Request = Plan("x").Request with { Process = "" } }).Kind);
        Assert.Equal(RefusalKind.NotAccepted,
            Refuse(Plan("x") with { Request = Plan("x").Request with { Sheets = [] } }).Kind);
        Assert.Equal(
            RefusalKind.Unknown,
            Refuse(new SessionLog { Key = Some.Key(), Date = Some.Today, Session = "S9", Process = "pm",
                Plan = "none", Lines = [new() { Item = "fen80", Sheets = 1 }] }).Kind);
    }

    [Fact]
    public void A_process_defined_anew_is_the_next_version_and_the_same_one_is_none()
    {
        _ledger.Post(Some.Process());
        Assert.Equal("pm", _ledger.Holdings.Process("pm")!.VersionName);
        _ledger.Post(Some.Process(steps: Some.StepsIn(1000)));
        Assert.Equal("pm, version 2", _ledger.Holdings.Process("pm")!.VersionName);
        var held = _ledger.Post("session line=2_fen80").Facts.OfType<SessionHeld>().Single();
        Assert.Equal(2, held.Process.Version);
    }

    private Refusal Refuse(Entry entry) => Assert.IsType<Refused>(_ledger.Preview(entry)).Refusal;

    private static PlannedSession Plan(string name) => new()
    {
        Key = Some.Key(),
        Date = Some.Today,
        Plan = name,
        On = new(2026, 4, 2),
        Request = new() { Process = "pm", Sheets = [new() { Film = "fen80", Count = 8, Group = "N" }] },
    };
}
