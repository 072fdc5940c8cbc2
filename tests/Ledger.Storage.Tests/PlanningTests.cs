namespace Ledger.Storage.Tests;

public sealed class PlanningTests : IDisposable
{
    private readonly TemporaryLedger _file = new();

    public PlanningTests() => Some.Stock(_file);

    public void Dispose() => _file.Dispose();

    private Holdings Now => _file.Ledger.HoldingsOn(_file.Ledger.Today);

    [Fact]
    public void A_plan_is_read_as_it_was_kept()
    {
        var planned = Plan("spring");
        _file.Accept(planned);
        var read = Assert.Single(Now.Plans);
        Assert.Equal((planned.Plan, planned.On, planned.Date, "bring the lamp"),
            (read.Name, read.On, read.MadeOn, read.Note));
        Assert.Equal(planned.Request.Sheets, read.Request.Sheets);
        Assert.Equal(("tray", "11 N-1=9", "F1"), (read.Request.Process, read.Request.Times.Text, read.Request.Bath));
        Assert.Empty(_file.Ledger.HoldingsOn(planned.Date.PlusDays(-1)).Plans);
    }

    [Fact]
    public void A_plan_made_anew_takes_the_place_of_the_first_and_an_ended_one_does_not_come_back()
    {
        _file.Accept(Plan("spring"));
        var second = _file.Accept(Plan("SPRING") with { On = _file.Ledger.Today.PlusDays(20) });
        Assert.Equal(_file.Ledger.Today.PlusDays(20), Assert.Single(Now.Plans).On);
        var ended = _file.Accept(new PlanEnding { Key = Some.Key(), Date = _file.Ledger.Today,
            Plan = "spring", Reason = "rain" });
        Assert.Empty(Now.Plans);
        _file.Accept(Undo(ended.Number));
        Assert.Single(Now.Plans);
        _file.Accept(Undo(second.Number));
        Assert.Equal("spring", Assert.Single(Now.Plans).Name);
    }

    [Fact]
    public void Posting_a_plan_ends_it_and_undoing_the_session_opens_it_again()
    {
        _file.Accept(Plan("spring"));
        var plan = Assert.IsType<Planned>(SessionPlanning.Of(Now.Plan("spring")!.Request, Now)).Plan;
        var session = _file.Accept(plan.ToLog(Some.Key(), "S01", _file.Ledger.Today) with { Plan = "spring" });
        Assert.Empty(Now.Plans);
        Assert.Equal(5, _file.Ledger.Sessions(_file.Ledger.Today, null, 1).Single().Sheets);
        Assert.Equal(6 * 80, Now.Bath("F1")!.Worked.SquareInches);
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
        _file.Accept(Undo(session.Number));
        Assert.Single(Now.Plans);
    }

    [Fact]
    public void A_session_keeps_the_version_of_the_process_it_was_run_with()
    {
        _file.Accept(Some.Session());
        _file.Accept(Some.Process() with
        {
            Date = Some.Day(4, 1),
            Steps =
            [
                new() { Number = 1, Role = ItemRole.Presoak, Minutes = 2, Celsius = 20.5m },
                new()
                {
                    Number = 2, Role = ItemRole.Developer, Item = "syrup", WorkingVolume = Volume.FromMillilitres(1000),
                    Per = StepPer.Batch, VolumesByFormat = FormatVolumes.Read("4x5=600"),
                },
                new() { Number = 3, Role = ItemRole.FinalRinse },
            ],
        });
        _file.Accept(Some.Session("S02", month: 4) with { Bath = null });
        Assert.Equal([2, 1],
            _file.Ledger.Sessions(_file.Ledger.Today, null, 2).Select(session => session.ProcessVersion));
        Assert.Equal(1250, _file.Ledger.ProcessVersion("TRAY", 1)!.Steps[0].WorkingVolume!.Value.Millilitres);
        var second = _file.Ledger.ProcessVersion("tray", 2)!;
        Assert.Equal(Now.Process("tray")!.Steps, second.Steps);
        Assert.Equal((20.5m, "4x5=600"), (second.Steps[0].Celsius, second.Steps[1].VolumesByFormat!.Text));
        Assert.Null(_file.Ledger.ProcessVersion("tray", 3));
    }

    [Fact]
    public void The_users_way_of_working_is_kept()
    {
        foreach (var (setting, value) in new[] { ("batch-sheets", "3 4x5=6"), ("graduate", "0.5"),
            ("tray-depth", "15.5"), ("full-shuffle-seconds", "40"), ("short-minutes", "6") })
            _file.Accept(new SettingChange { Key = Some.Key(), Date = _file.Ledger.Today, Setting = setting,
                Value = value });
        Assert.Equal(new TrayPractice(BatchLimit.Read("3 4x5=6")!, 40, 6, 155, Volume.FromMillilitres(0.5m)),
            Now.Settings.Tray);
    }

    private Undo Undo(long number) => new() { Key = Some.Key(), Date = _file.Ledger.Today,
        Number = number, Reason = "mistaken" };

    private PlannedSession Plan(string name) => new()
    {
        Key = Some.Key(), Date = _file.Ledger.Today, Plan = name, On = _file.Ledger.Today.PlusDays(10),
        Note = "bring the lamp",
        Request = new()
        {
            Process = "tray", Bath = "F1", Times = GroupTimes.Read("11 N-1=9")!,
            Sheets = [new() { Film = "pan", Count = 4, Group = "N", Subject = "mill" },
                new() { Film = "pan", Count = 1, Group = "N-1", Holder = "E01" }],
        },
    };
}
