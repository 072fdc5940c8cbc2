namespace Ledger.Core.Tests.Planning;

/// <summary>
/// Rules of thumb of the trade: common practice, no source. Each is a setting that a user can change.
/// </summary>
public sealed class CommonPracticeTests
{
    [Theory]
    [InlineData(2, 15)]
    [InlineData(3, 10)]
    [InlineData(4, 7.5)]
    public void A_stack_passes_once_in_thirty_seconds(int sheets, decimal seconds) =>
        Assert.Equal(seconds, Plan(sheets).Batches[0].ShuffleEverySeconds);

    [Fact]
    public void A_batch_has_four_sheets_of_8x10_at_most() =>
        Assert.Equal([4, 4, 3], Plan(11).Batches.Select(batch => batch.Sheets.Count));

    [Fact]
    public void A_lone_sheet_is_given_a_dummy_that_the_fixer_counts()
    {
        var plan = Plan(5, ledger => ledger.Post("setting setting=batch-sheets value=4"), "8x10", 1, "N+1");
        Assert.Equal([false, false, true], plan.Batches.Select(batch => batch.HasDummy));
        Assert.Equal(15, plan.Batches[2].ShuffleEverySeconds);
        Assert.Equal(80 * 7, plan.Baths[0].After.SquareInches);
        Assert.Equal(80 * 6, plan.Area.SquareInches);
    }

    [Fact]
    public void One_at_a_time_needs_no_dummy()
    {
        var plan = Plan(3, ledger => ledger.Post("setting setting=batch-sheets value=1"));
        Assert.Equal([1, 1, 1], plan.Batches.Select(batch => batch.InTray));
        Assert.Equal(30, plan.Batches[0].ShuffleEverySeconds);
    }

    [Fact]
    public void The_stack_is_turned_at_half_of_the_time() =>
        Assert.Equal(5.5m, Plan(4, times: "11").Batches[0].TurnAtMinutes);

    [Theory]
    [InlineData("7", true)]
    [InlineData("6.5", true)]
    [InlineData("7.5", false)]
    public void Seven_minutes_or_less_deserve_a_word(string minutes, bool word) =>
        Assert.Equal(word,
            Plan(4, times: minutes).Advice.Any(sentence => sentence.Contains("is short for sheets in a tray",
                StringComparison.Ordinal)));

    [Fact]
    public void A_syrup_is_given_six_millilitres_per_80_square_inches_whatever_the_dilution()
    {
        var batch = Plan(4, ledger => ledger.Post(Some.Process(steps: Some.StepsIn(500)))).Batches[0];
        Assert.Equal(24, batch.Developer!.Need.Concentrate.Millilitres);
        Assert.Equal(10, batch.Developer.Need.ByDilution.Millilitres);
        Assert.Equal(476, batch.Developer.Water.Millilitres);
        Assert.Contains("make 1200 ml of 1+49, or develop 1 at a time", batch.Developer.Cure(MeasureStyle.Metric),
            StringComparison.Ordinal);
    }

    /// <summary>
    /// Half an inch of solution at least: US Army correspondence subcourse SS0509, Photographic Processing. What it
    /// comes to in litres is arithmetic.
    /// </summary>
    [Theory]
    [InlineData("8x10", 0.66)]
    [InlineData("11x14", 1.26)]
    public void Half_an_inch_in_the_tray(string format, decimal litres) =>
        Assert.Equal(litres, Math.Round(TrayPractice.Common.LeastIn(Format.Parse(format)).Litres, 2));

    [Theory]
    [InlineData("8x10", 4)]
    [InlineData("20x25cm", 4)]
    [InlineData("11x14", 4)]
    [InlineData("5x7", 8)]
    [InlineData("4x5", 8)]
    [InlineData("120", 4)]
    public void Smaller_sheets_may_be_twice_as_many(string format, int most) =>
        Assert.Equal(most, BatchLimit.CommonPractice.Of(Format.Parse(format)));

    [Fact]
    public void The_limit_of_a_format_is_the_users()
    {
        var limit = BatchLimit.Read("3 4x5=6 11x14=1")!;
        Assert.Equal([3, 6, 1], new[] { "8x10", "4x5", "11x14" }.Select(format => limit.Of(Format.Parse(format))));
        Assert.Equal(limit, BatchLimit.Read(limit.ToString()));
        Assert.All(["", "0", "four", "4 4x5", "4 4x5=0", "101"], text => Assert.Null(BatchLimit.Read(text)));
    }

    private static SessionPlan Plan(
        int sheets, Action<InMemoryLedger>? change = null, string film = "fen80", int more = 0,
        string group = "N", string times = "11")
    {
        var ledger = Shelves.WithBath();
        change?.Invoke(ledger);
        film = film == "8x10" ? "fen80" : film;
        var request = new PlanRequest
        {
            Process = "pm",
            Times = GroupTimes.Read(times)!,
            Sheets =
            [
                new() { Film = film, Count = sheets, Group = "N" },
                .. more == 0 ? [] : new RequestedSheets[] { new() { Film = film, Count = more, Group = group } },
            ],
        };
        return Assert.IsType<Planned>(SessionPlanning.Of(request, ledger.Holdings)).Plan;
    }
}
