namespace Ledger.Core.Tests.Planning;

/// <summary>
/// Lines in place of a plan's: the trays stay those of the plan, whatever became of the sheets in them.
/// </summary>
public sealed class PlannedDeveloperTests
{
    private readonly SessionPlan _plan = Plan("4 N", "2 N-1");

    [Fact]
    public void A_reject_and_a_keeper_share_the_tray_of_their_batch() =>
        Assert.Equal([25m, null, null, 25m, null],
            Over(Line("N", 2), Line("N", 1), Line("N", 1), Line("N-1", 1), Line("N-1", 1)));

    [Fact]
    public void A_line_over_two_batches_takes_the_developer_of_both() =>
        Assert.Equal([50m, null], PlannedDeveloper.Over([Line("N", 5), Line("N", 1)],
            Plan("6 N")).Select(line => line.Developer?.Millilitres));

    [Fact]
    public void What_is_said_of_the_developer_counts_and_what_the_plan_does_not_know_is_left_alone()
    {
        Assert.Equal([30m, null], Over(Line("N", 2) with { Developer = Volume.FromMillilitres(30) }, Line("N", 2)));
        Assert.Equal([null, null], Over(Line("N", 2), Line("N+2", 2)));
    }

    private IEnumerable<decimal?> Over(params SessionLine[] lines) =>
        PlannedDeveloper.Over(lines, _plan).Select(line => line.Developer?.Millilitres);

    private static SessionLine Line(string group, int sheets) =>
        new() { Item = "fen80", Sheets = sheets, Group = group };

    private static SessionPlan Plan(params string[] sheets)
    {
        var ledger = Shelves.WithBath();
        var request = new PlanRequest
        {
            Process = "pm",
            Sheets = [.. sheets.Select(text => text.Split(' '))
                .Select(words => new RequestedSheets { Film = "fen80", Count = words[0][0] - '0', Group = words[1] })],
        };
        return Assert.IsType<Planned>(SessionPlanning.Of(request, ledger.Holdings)).Plan;
    }
}
