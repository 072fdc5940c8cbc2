using CsCheck;

namespace Ledger.Core.Tests.Baths;

public sealed class BathEndTests
{
    private static readonly LocalDate Mixed = Some.Earlier;

    [Fact]
    public void The_end_that_came_first_is_the_end()
    {
        var bath = Some.Bath(3000) with
        {
            FilledOn = Mixed.PlusDays(40),
            Keeping = new(WorkingFullDays: 30),
            ClearingTests = [new(Mixed.PlusDays(20), "pan", 800, false, Area.Zero, 400)],
            Observations = [new(Mixed.PlusDays(10), "yellow", false), new(Mixed.PlusDays(25), "specks", true)],
        };
        var reading = new BathReading(bath, Mixed.PlusDays(50));
        Assert.Equal([BathEnd.Test, BathEnd.Sight, BathEnd.Age, BathEnd.Area], reading.Ends.Select(end => end.By));
        Assert.Equal(BathEnd.Test, reading.EndedBy);
        Assert.Equal("specks", reading.Ends[1].Reason);
    }

    [Fact]
    public void A_sign_that_does_not_end_the_use_ends_nothing() =>
        Assert.Null(new BathReading(Some.Bath() with { Observations = [new(Mixed, "a faint smell", false)] },
            Mixed).EndedBy);

    [Theory]
    [InlineData("full", 180)]
    [InlineData("tray day 0", 1)]
    [InlineData("tray day 5, full day 6", 180)]
    [InlineData("tray day 5, full day 8", 6)]
    [InlineData("part day 100", 160)]
    [InlineData("part day 150", 180)]
    [InlineData("part day 10, lid day 20", 140)]
    public void A_bath_is_never_good_longer_than_any_of_its_containers_allowed(string stays, int days)
    {
        var standings = stays.Split(", ").Where(stay => stay != "full").Select(stay => stay.Split(" day "))
            .Select(stay => new Standing(
                Mixed.PlusDays(int.Parse(stay[1], null)),
                stay[0] switch
                {
                    "tray" => WorkingContainer.OpenTray, "part" => WorkingContainer.PartFullBottle,
                    "lid" => WorkingContainer.FloatingLid, _ => WorkingContainer.FullBottle,
                })).ToList();
        var limits = new KeepingLimits(WorkingFullDays: 180, WorkingPartDays: 60, TrayHours: 24, FloatingLidDays: 120);
        Assert.Equal(Mixed.PlusDays(days), GoodUntil.OfWorkingSolution(limits, Mixed, standings)!.Date);
    }

    [Fact]
    public void What_comes_first_follows_the_work_so_far()
    {
        var quick = new BathReading(Some.Bath(1500) with { Keeping = new(WorkingFullDays: 100) }, Mixed.PlusDays(10));
        Assert.Equal((BathEnd.Area, Mixed.PlusDays(20)), (quick.ComesFirst!.By, quick.ComesFirst.On));
        var slow = new BathReading(Some.Bath(300) with { Keeping = new(WorkingFullDays: 30) }, Mixed.PlusDays(10));
        Assert.Equal((BathEnd.Age, Mixed.PlusDays(31)), (slow.ComesFirst!.By, slow.ComesFirst.On));
        Assert.Null(new BathReading(Some.Bath(3000), Mixed.PlusDays(10)).ComesFirst);
    }

    [Fact]
    public void The_earliest_end_governs_whatever_ends_a_bath() =>
        Gen.Select(Day, Day, Day, Day, Gen.Select(Day, Day)).Sample((filled, tested, silver, residue, rest) =>
        {
            var (seen, life) = rest;
            var bath = Some.Bath(3000) with
            {
                FilledOn = Mixed.PlusDays(filled),
                Keeping = new(WorkingFullDays: life),
                ClearingTests = [new(Mixed.PlusDays(tested), "pan", 800, false, Area.Zero, 400)],
                SilverReadings = [new(Mixed.PlusDays(silver), 9000)],
                ResidualTests = [new(Mixed.PlusDays(residue), "silver", "stain", false, null)],
                Observations = [new(Mixed.PlusDays(seen), "specks", true)],
                Limits = new(2000, 2000, 8000),
            };
            var reading = new BathReading(bath, Mixed.PlusDays(400));
            var first = new[] { filled, tested, silver, residue, seen, life + 1 }.Min();
            Assert.Equal(Mixed.PlusDays(first), reading.Ends[0].On);
            Assert.Equal(reading.Ends[0].By, reading.EndedBy);
            Assert.Equal(6, reading.Ends.Count);
        });

    [Theory]
    [InlineData("silver", false, Ledger.Core.Stock.ItemRole.Fixer, true)]
    [InlineData("silver", true, Ledger.Core.Stock.ItemRole.Fixer, false)]
    [InlineData("hypo", false, Ledger.Core.Stock.ItemRole.Fixer, false)]
    [InlineData("hypo", false, Ledger.Core.Stock.ItemRole.WashAid, true)]
    [InlineData("silver", false, Ledger.Core.Stock.ItemRole.WashAid, false)]
    public void A_residue_ends_the_bath_that_should_have_taken_it_out(string kind, bool passed,
        Ledger.Core.Stock.ItemRole role, bool ends) =>
        Assert.Equal(ends ? BathEnd.Test : null, new BathReading(
            Some.Bath() with { Role = role, ResidualTests = [new(Mixed, kind, "stain", passed, null)] },
            Mixed).EndedBy);

    [Theory]
    [InlineData("0.014 g/m2", 14)]
    [InlineData("0.0141g/m²", 15)]
    [InlineData("14 mg/m2", 14)]
    [InlineData("13.2 MG per square metre", 14)]
    [InlineData("0.02 g per m2", 20)]
    [InlineData("14 mg/ml", null)]
    [InlineData("no stain", null)]
    [InlineData("about 0.01 g/m2", null)]
    public void A_residue_in_figures_is_never_rounded_down(string result, int? milligrams) =>
        Assert.Equal(milligrams, ResidualTest.MilligramsPerSquareMetre(result));

    [Fact]
    public void A_replenished_developer_ends_at_the_ceiling_of_the_user()
    {
        TopUpRecord Added(int day, int millilitres) =>
            new(Mixed.PlusDays(day), Volume.FromMillilitres(millilitres), default, Area.Zero);
        var bath = Some.Bath() with
        {
            Capacity = null, ReplenisherPer80SquareInches = Volume.FromMillilitres(20), ReplenisherCeilingPercent = 50,
            TopUps = [Added(1, 400), Added(5, 349), Added(9, 1), Added(10, 100)],
        };
        var end = Assert.Single(new BathReading(bath, Mixed.PlusDays(20)).Ends);
        Assert.Equal((BathEnd.Replenisher, Mixed.PlusDays(9)), (end.By, end.On));
        Assert.Empty(new BathReading(bath with { ReplenisherCeilingPercent = 100 }, Mixed.PlusDays(20)).Ends);
    }

    [Fact]
    public void Whole_sheets_left_never_cover_more_than_the_area_left_on_any_basis() =>
        Gen.Select(Gens.Area, Gens.Format, Gen.Int[100, 10_000], Gen.Long[1, 1_000_000_000])
            .Sample((worked, format, weight, perLitre) =>
            {
                var bath = Some.Bath() with
                {
                    WorkedWeighted = worked,
                    OtherCapacities = [new(Area.FromHundredths(perLitre), "another")],
                };
                foreach (var basis in new BathReading(bath, Mixed).Bases)
                    Assert.True(format.Area.Weighted(weight) * basis.RemainingSheets(format, weight)
                        <= basis.Remaining);
            });

    [Fact]
    public void The_line_through_the_tests_says_when_it_knows_too_little()
    {
        ClearingTime At(int squareInches, int seconds) =>
            new(Mixed, "pan", seconds * 10, squareInches == 0, Area.FromSquareInches(squareInches), 400);
        Assert.Contains("too few", Trend(At(0, 40), At(600, 50)).Text, StringComparison.Ordinal);
        Assert.Contains("too few", Trend(At(600, 40), At(600, 50), At(600, 60)).Text, StringComparison.Ordinal);
        Assert.Contains("do not rise", Trend(At(0, 60), At(600, 50), At(1200, 40)).Text, StringComparison.Ordinal);
        Assert.Contains("scatter", Trend(At(0, 40), At(600, 80), At(1200, 42)).Text, StringComparison.Ordinal);
        var straight = Trend(At(0, 40), At(600, 50), At(1200, 60));
        Assert.Equal((1600, 1600, 1600),
            (Math.Round(straight.ReachedAt!.Value), Math.Round(straight.NotBefore!.Value),
                Math.Round(straight.NotAfter!.Value)));
    }

    private static Gen<int> Day => Gen.Int[1, 300];

    private static ClearingTrend Trend(params ClearingTime[] tests) => new(tests, Volume.FromMillilitres(1500), 2000);
}
