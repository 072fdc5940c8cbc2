namespace Ledger.Published.Tests;

/// <summary>
/// How long a fixer lives, as a keeping table and manuals print it. All of it is a user's setting; these are settings
/// like theirs.
/// </summary>
public sealed class FixerLifeTests
{
    private static readonly LocalDate Mixed = new(2026, 1, 1);

    /// <summary>
    /// Settings as a user may enter them, this project's choice: not published figures, but what each container's limit
    /// does is checked with them.
    /// </summary>
    private static readonly KeepingLimits _table = new(
        SealedDays: 730, OpenedFullDays: 730, OpenedPartDays: 182, WorkingFullDays: 182, WorkingPartDays: 30,
        TrayHours: 168, FloatingLidDays: 61);

    [Theory]
    [InlineData(WorkingContainer.FullBottle, 182, KeepingRule.SinceMixing)]
    [InlineData(WorkingContainer.PartFullBottle, 30, KeepingRule.InPartFullBottle)]
    [InlineData(WorkingContainer.FloatingLid, 61, KeepingRule.UnderFloatingLid)]
    [InlineData(WorkingContainer.OpenTray, 7, KeepingRule.InOpenTray)]
    public void A_working_solution_keeps_as_its_container_allows(WorkingContainer container, int days, KeepingRule rule)
    {
        var good = GoodUntil.OfWorkingSolution(_table, Mixed, [new(Mixed, container)])!;
        Assert.Equal((Mixed.PlusDays(days), rule), (good.Date, good.Rule));
    }

    [Fact]
    public void A_concentrate_keeps_two_years_full_and_half_a_year_part_full()
    {
        Assert.Equal(Mixed.PlusDays(730), GoodUntil.OfContainer(_table, null, Mixed, null, null)!.Date);
        var half = Mixed.PlusDays(100);
        Assert.Equal(
            new GoodUntil(half.PlusDays(182), KeepingRule.SinceHalfEmpty),
            GoodUntil.OfContainer(_table, null, Mixed, Mixed.PlusDays(10), half));
    }

    [Theory]
    [Published("US Navy Non-Resident Training Course NAVEDTRA 14209, Photography (Basic), chapter on processing: "
        + "spent when clearing takes twice as long as when fresh",
        Values = 1)]
    [InlineData(30, 59, false)]
    [InlineData(30, 60, true)]
    [InlineData(30, 61, true)]
    public void Film_fixer_is_spent_at_twice_the_fresh_clearing_time(int fresh, int seconds, bool isSpent)
    {
        var reading = new BathReading(With(new ClearingTime(Mixed, "film", seconds * 10, false, Area.Zero, fresh * 10)),
            Mixed);
        Assert.Equal(isSpent ? BathEnd.Test : null, reading.EndedBy);
    }

    [Theory]
    [Published("US Navy Non-Resident Training Course NAVEDTRA 14209, Photography (Basic); US Army subcourse SS0509: "
        + "twice the clearing time", Values = 1)]
    [InlineData(2000, 60, 120)]
    [InlineData(3000, 60, 180)] // three times, for film with tabular grain: common practice, no source
    [InlineData(2000, 80, 160)] // arithmetic: at the end of a bath of 40 s fresh, four times the fresh time
    public void Film_is_fixed_for_a_multiple_of_its_clearing_time(int multiple, int clearing, int seconds)
    {
        var test = new ClearingTime(Mixed, "film", clearing * 10, false, Area.Zero, 400);
        Assert.Equal(seconds * 10, test.FixingTenths(multiple));
        Assert.Equal(seconds, new BathReading(With(test) with { Limits = new(2000, multiple, null) },
            Mixed).FixingSeconds);
    }

    [Theory] // the limits are a user's setting; these are common practice, no source
    [InlineData("silver-limit-paper", "0.5", 500)]
    [InlineData("silver-limit-paper-first", "2", 2000)]
    public void A_print_bath_ends_at_its_silver_limit(string setting, string limit, int milligrams)
    {
        var settings = Settings.Default.With(setting, limit)!;
        Assert.Equal(milligrams, settings.SilverLimitPaper ?? settings.SilverLimitPaperFirst);
        var bath = With() with { Material = BathMaterial.Paper, Limits = new(2000, 2000, milligrams) };
        Assert.Null(new BathReading(bath with { SilverReadings = [new(Mixed, milligrams - 1)] }, Mixed).EndedBy);
        Assert.Equal(BathEnd.Test,
            new BathReading(bath with { SilverReadings = [new(Mixed, milligrams)] }, Mixed).EndedBy);
    }

    private static Bath With(params ClearingTime[] tests) => Some.Bath(mixed: Mixed) with
    {
        WorkingVolume = Volume.FromMillilitres(1000), Capacity = null, ClearingTests = tests,
    };
}
