namespace Ledger.Core.Tests.Journal;

/// <summary>
/// Two baths of the stop and two of the fixer are in use: planning and posting must answer alike through which of them
/// film goes.
/// </summary>
public sealed class SessionBathsTests
{
    private const string Asked = "say which baths the film went through: F1 or F9 of fix, and ST1 or ST2 of stopbath";
    private readonly InMemoryLedger _ledger = Shelves.WithBath();

    public SessionBathsTests()
    {
        _ledger.Post(Some.Definition(Some.Fixer with { Code = "stopbath", Name = "Stop", Role = ItemRole.Stop }));
        _ledger.Post("delivery item=stopbath date=2026-01-10");
        _ledger.Post(Some.Process(
            "pm", [Some.Steps[0], new() { Number = 2, Role = ItemRole.Stop, Item = "stopbath", Use = StepUse.Reused },
                Some.Steps[2] with { Number = 3 }]));
        foreach (var (bath, item) in new[] { ("F9", "fix"), ("ST1", "stopbath"), ("ST2", "stopbath") })
            _ledger.Post($"bath bath={bath} item={item} working_ml=500 date=2026-02-01");
    }

    [Theory]
    [InlineData(null, Asked)]
    [InlineData("F9", "say which bath the film went through: ST1 or ST2 of stopbath")]
    [InlineData("st2", "say which bath the film went through: F1 or F9 of fix")]
    [InlineData("F1, F9, ST1", "F1 and F9 are baths of fix; name one of them")]
    [InlineData("F9, ST3", "there is no bath \"ST3\" in use; known: F1, F9, ST1, ST2")]
    public void What_is_not_named_well_is_refused_with_what_can_be_named(string? named, string sentence) =>
        Assert.Equal(sentence, Assert.IsType<Refused>(_ledger.Preview(Session(named))).Refusal.Sentence);

    [Theory]
    [InlineData("F9, ST2")]
    [InlineData("st2,f9")]
    [InlineData(" ST2  F9 ")]
    public void One_bath_of_each_is_named_and_the_session_is_filed_under_the_fixer(string named)
    {
        var plan = Plan(named);
        Assert.Equal(["F9", "ST2"], plan.Baths.Select(bath => bath.Bath?.Code));
        Assert.True(plan.CanRun);
        Assert.Equal("F9, ST2", plan.ToLog("k", "S1", Some.Today).Bath);

        var posting = _ledger.Post(Session(named));
        Assert.Equal(_ledger.Holdings.Bath("F9")!.Place, posting.Facts.OfType<SessionHeld>().Single().Bath);
        Assert.Equal([0m, 320m, 0m, 320m],
            new[] { "F1", "F9", "ST1", "ST2" }.Select(bath => _ledger.Holdings.Bath(bath)!.Worked.SquareInches));
    }

    [Theory]
    [InlineData(null,
        "several baths of fix can be used: name F1 or F9|several baths of stopbath can be used: name ST1 or ST2")]
    [InlineData("F9", "several baths of stopbath can be used: name ST1 or ST2")]
    [InlineData("ST1", "several baths of fix can be used: name F1 or F9")]
    [InlineData("F1 ST1", "")]
    public void A_plan_asks_exactly_where_posting_would_refuse_and_its_session_is_accepted_where_it_does_not(
        string? named, string advice)
    {
        var plan = Plan(named);
        Assert.Equal(advice,
            string.Join('|', plan.Advice.Where(sentence => sentence.StartsWith("several", StringComparison.Ordinal))));
        Assert.Equal(advice.Length == 0, plan.CanRun);
        Assert.Equal(advice.Length == 0, _ledger.Preview(plan.ToLog("k", "S1", Some.Today)) is Accepted);
        Assert.Equal(advice.Length == 0, _ledger.Preview(Session(named)) is Accepted);
    }

    [Fact]
    public void A_tray_names_the_baths_to_choose_from() =>
        Assert.Equal(["bath ST1", "bath F1 or F9"], Plan("ST1").Trays.Skip(1).Select(tray => tray.Parts[0].What));

    [Fact]
    public void A_fixer_counts_film_by_its_weight_and_a_stop_by_its_area_in_a_plan_as_in_the_journal()
    {
        var request = new PlanRequest { Process = "pm", Sheets = [new() { Film = "reed400", Count = 4, Group = "N" }],
            Bath = "F9, ST2" };
        var plan = Assert.IsType<Planned>(SessionPlanning.Of(request, _ledger.Holdings, Some.Today)).Plan;
        Assert.Equal([120m, 80m], plan.Baths.Select(bath => bath.After.SquareInches));
        _ledger.Post(plan.ToLog("k", "S1", Some.Today));
        Assert.All(plan.Baths,
            bath => Assert.Equal(bath.After, _ledger.Holdings.Bath(bath.Bath!.Code)!.WorkedWeighted));
    }

    [Fact]
    public void A_name_may_hold_a_blank_itself()
    {
        _ledger.Post(new BathMixing
        {
            Key = Some.Key(), Date = Some.Earlier.PlusDays(30), Bath = "old fix", Item = "fix",
            WorkingVolume = Volume.FromMillilitres(500),
        });
        Assert.Equal(["old fix", "ST2"], Plan("old fix, ST2").Baths.Select(bath => bath.Bath?.Code));
        Assert.Equal("old fix", Plan("old fix").Baths[0].Bath?.Code);
    }

    [Theory]
    [InlineData(null, "F1, ST2", "F1, ST2")]
    [InlineData("F9", "F1, ST2", "F9, ST2")]
    [InlineData("F9, ST1", "F1, ST2", "F9, ST1")]
    [InlineData("F9", "F7", "F9")]
    [InlineData("F9", null, "F9")]
    public void What_is_named_takes_the_place_of_the_planned_bath_of_its_item(string? said,
        string? planned, string expected) =>
        Assert.Equal(expected, new SessionBaths(_ledger.Holdings, Some.Today).Instead(said, planned));

    [Fact]
    public void Every_naming_can_be_turned_to_and_what_is_the_only_one_is_known()
    {
        var (baths, process) = (new SessionBaths(_ledger.Holdings, Some.Today), _ledger.Holdings.Process("pm")!);
        Assert.Equal(["F1, ST1", "F1, ST2", "F9, ST1", "F9, ST2"], baths.Namings(process));
        Assert.Equal("", baths.Known(process));
        _ledger.Post("discard what=ST1");
        (baths, process) = (new SessionBaths(_ledger.Holdings, Some.Today), _ledger.Holdings.Process("pm")!);
        Assert.Equal("ST2", baths.Known(process));
        Assert.EndsWith("through F9", _ledger.Post(Session("F9")).Summary, StringComparison.Ordinal);
        Assert.Equal(320, _ledger.Holdings.Bath("ST2")!.Worked.SquareInches);
    }

    private static SessionLog Session(string? bath) => new()
    {
        Key = Some.Key(), Date = Some.Today, Session = "S1", Process = "pm", Bath = bath,
        Lines = [new() { Item = "fen80", Sheets = 4, Group = "N" }],
    };

    private SessionPlan Plan(string? bath) => Assert.IsType<Planned>(SessionPlanning.Of(
        new() { Process = "pm", Sheets = [new() { Film = "fen80", Count = 4, Group = "N" }], Bath = bath },
        _ledger.Holdings, Some.Today)).Plan;
}
