using CsCheck;

namespace Ledger.Core.Tests.Reordering;

/// <summary>
/// The distribution of what is used until a delivery comes, against a count of every case and against a simulation.
/// </summary>
public sealed class LeadTimeDemandTests
{
    private static readonly decimal[] _services = [0.1m, 0.5m, 0.8m, 0.9m, 0.95m, 0.99m, 0.999m];

    private static readonly Gen<long[]> _uses = Gen.OneOf(Gen.Const(0L),
        Gen.Long[1, 500].Select(ml => ml * 1000)).Array[4, 40].Where(uses => uses.Any(use => use > 0));

    [Fact]
    public void Sheets_come_out_as_when_every_case_is_counted() => Gen.Select(
        Gen.Long[0, 12].Array[2, 6].Where(uses => uses.Any(use => use > 0)), Gen.Int[1, 27].Array[1, 3]).Sample(
        (uses, days) =>
        {
            var cases = Cases(uses, days).ToList();
            var demand = LeadTimeDemand.Of(Series(uses), days, UseScale.None);
            Assert.Equal(cases.Sum(one => one.Amount * one.Chance), demand.Mean, 1e-9);
            foreach (var amount in cases.Select(one => one.Amount).Distinct())
                Assert.Equal(cases.Where(one => one.Amount <= amount).Sum(one => one.Chance),
                    demand.Reached(amount), 1e-9);
            foreach (var service in _services)
            {
                var level = demand.Level(service);
                Assert.True(cases.Where(one => one.Amount <= level).Sum(one => one.Chance) >= (double)service - 1e-9);
                Assert.True(cases.Where(one => one.Amount < level).Sum(one => one.Chance) < (double)service + 1e-9);
            }
        },
        iter: 60);

    [Fact]
    public void Millilitres_are_less_than_one_too_high_and_never_too_low() => Gen.Select(
        Gen.Long[1, 2_000_000].Array[2, 5], Gen.Int[1, 27]).Sample(
        (uses, days) =>
        {
            var cases = Cases(uses, [days]).OrderBy(one => one.Amount).ToList();
            var demand = LeadTimeDemand.Of(Series(uses), [days], UseScale.None, unit: 1000);
            foreach (var service in _services)
            {
                var sum = 0.0;
                var exact = cases.First(one => (sum += one.Chance) >= (double)service - 1e-9).Amount;
                Assert.InRange(demand.Level(service), exact, exact + 999.999);
            }
        },
        iter: 60);

    [Fact]
    public void Whole_millilitres_come_out_exactly()
    {
        // Ten years of weeks between 300 and 800 ml, in 5 ml; five weeks of it, checked against a count of its own by
        // recursion on the sum.
        var uses = Enumerable.Range(0, 520).Select(week => 1000L * (300 + 5 * (week * 37 % 101))).ToArray();
        var demand = LeadTimeDemand.Of(Series(uses), [35], UseScale.None, unit: 1000);
        var ways = new Dictionary<long, double> { [0] = 1 };
        for (var week = 0; week < 5; week++)
            ways =
                ways.SelectMany(sum => uses.GroupBy(use => use)
                    .Select(use => (Sum: sum.Key + use.Key, Chance: sum.Value * use.Count() / 520)))
                    .GroupBy(one => one.Sum).ToDictionary(one => one.Key, one => one.Sum(each => each.Chance));
        var upTo = 0.0;
        Assert.Equal(ways.OrderBy(way => way.Key).First(way => (upTo += way.Value) >= 0.95).Key, demand.Level(0.95m));
    }

    [Fact]
    public void Twenty_six_weeks_of_uneven_millilitres_are_within_a_millilitre_of_finer_steps()
    {
        // The same uses a thousand times as fine: 26 weeks in µl against the answer that must be right to a tenth of a
        // millilitre.
        var uses = Enumerable.Range(0, 100)
            .Select(week => week % 3 == 0 ? 0L : 7_919L * (1 + week * 13 % 29)).ToArray();
        var (coarse, fine) = (LeadTimeDemand.Of(Series(uses), [182], UseScale.None, 1000),
            LeadTimeDemand.Of(Series(uses), [182], UseScale.None, 100));
        Assert.All(_services, service => Assert.InRange(coarse.Level(service) - fine.Level(service), -100, 1000));
    }

    [Fact]
    public void A_longer_lead_time_never_lowers_the_level() =>
        Gen.Select(_uses, Gen.Int[1, 60], Gen.Int[0, 30], Gen.Double[0.1, 1]).Sample(
            (uses, days, more, often) => Levels(LeadTimeDemand.Of(Series(uses), [days], new(often, 1)))
                .Zip(Levels(LeadTimeDemand.Of(Series(uses), [days + more], new(often, 1))))
                .All(levels => levels.First <= levels.Second),
            iter: 40);

    [Fact]
    public void A_higher_service_level_never_lowers_the_level() =>
        Gen.Select(_uses, Gen.Int[1, 60]).Sample(
            (uses, days) =>
            {
                var levels = Levels(LeadTimeDemand.Of(Series(uses), [days], UseScale.None, 1000)).ToList();
                return levels.Order().SequenceEqual(levels);
            },
            iter: 40);

    [Fact]
    public void More_use_never_lowers_the_level() =>
        Gen.Select(Gen.Long[0, 30].Array[4, 40].Where(uses => uses.Any(use => use > 0)), Gen.Int[0, 39],
            Gen.Long[0, 20], Gen.Int[1, 60]).Sample(
            (uses, at, more, days) =>
            {
                var heavier = uses.Select((use, i) => i == at % uses.Length ? use + more : use).ToArray();
                return Levels(LeadTimeDemand.Of(Series(uses), [days], UseScale.None))
                    .Zip(Levels(LeadTimeDemand.Of(Series(heavier), [days], UseScale.None)))
                    .All(levels => levels.First <= levels.Second);
            },
            iter: 100);

    [Fact]
    public void The_mean_is_the_forecast_up_and_down_whatever_its_method() => Gen.Select(
        Gen.Long[0, 30].Array[8, 60].Where(uses => uses.Count(use => use > 0) >= 3), Gen.Int[1, 60],
        Gen.Double[0.01, 40], Gen.Enum<ForecastMethod>()).Sample(
        (uses, days, perPeriod, method) =>
        {
            var series = Series(uses);
            var demand = LeadTimeDemand.Of(series, [days], UseScale.Of(series, new(method, perPeriod)));
            return Math.Abs(demand.Mean - perPeriod * days / 7) < 1e-9 * (1 + demand.Mean);
        });

    [Fact]
    public void Use_with_gaps_that_grows_comes_more_often_first_and_then_in_larger_amounts()
    {
        var series = Series(0, 4, 0, 4, 0, 4, 0, 4);
        Assert.Equal(new UseScale(1.5, 1), UseScale.Of(series, new(ForecastMethod.CorrectedCroston, 3)));
        Assert.Equal(new UseScale(2, 1.5), UseScale.Of(series, new(ForecastMethod.CorrectedCroston, 6)));
        Assert.Equal(new UseScale(0.5, 1), UseScale.Of(series, new(ForecastMethod.DyingAway, 1)));
        Assert.Equal(new UseScale(1, 0.5), UseScale.Of(series, new(ForecastMethod.SimpleSmoothing, 1)));
    }

    [Fact]
    public void A_part_of_a_period_counts_with_its_share_and_keeps_the_lumps_whole()
    {
        // Ten every week: three days are three sevenths of the chance of ten, never four or five.
        var demand = LeadTimeDemand.Of(Series(10, 10, 10, 10), [3], UseScale.None);
        Assert.Equal([0.0, 10.0], Levels(demand).Distinct());
        Assert.Equal(30 / 7.0, demand.Mean, 1e-12);
        Assert.Equal(4 / 7.0, demand.Reached(9), 1e-9);
    }

    /// <summary>
    /// A simulation that shares nothing with the product: another generator (.NET's own, seeded), the trade's words
    /// taken literally, week by week. The chance that the reading states must lie within the simulation's confidence
    /// bounds (four standard errors: about one in 16,000 by chance).
    /// </summary>
    [Theory]
    [InlineData("rising", 35)]
    [InlineData("rising smoothly", 16)]
    [InlineData("falling", 17)]
    [InlineData("died away", 40)]
    [InlineData("seasonal", 21)]
    [InlineData("lumpy", 24)]
    public void A_simulation_confirms_the_level_that_is_reached(string use, int days)
    {
        const int runs = 200_000;
        var uses = Use(use);
        var series = Series(uses);
        var forecast = Forecast.Of(series)!;
        var demand = LeadTimeDemand.Of(series, [days, days + 9], UseScale.Of(series, forecast));
        var point = Math.Ceiling(demand.Level(0.95m) - 1e-9);
        var stated = demand.Reached(point);
        Assert.InRange(stated, 0.95, 1);

        var random = new Random(20_260_315);
        var (mean, used, smooth) = (uses.Average(), uses.Where(one => one > 0).ToArray(),
            forecast.Method == ForecastMethod.SimpleSmoothing);
        var chance = (double)used.Length / uses.Length;
        var scaledChance = smooth ? chance : Math.Min(1, forecast.PerPeriod / (mean / chance));
        var times = forecast.PerPeriod / (scaledChance * used.Average());
        var (sufficed, sum) = (0, 0.0);
        for (var run = 0; run < runs; run++)
        {
            var (left, total) = (days + (random.Next(2) == 0 ? 0 : 9), 0.0);
            for (; left > 0; left -= 7)
                if ((left >= 7 || random.NextDouble() < left / 7.0) && random.NextDouble() < scaledChance)
                    total += used[random.Next(used.Length)] * times;
            sufficed += total <= point + 1e-6 ? 1 : 0;
            sum += total;
        }

        var error = Math.Sqrt(Math.Max(stated * (1 - stated), 1e-6) / runs);
        Assert.InRange((double)sufficed / runs, stated - 4 * error, stated + 4 * error);
        Assert.InRange(sum / runs, demand.Mean * 0.98, demand.Mean * 1.02);
    }

    [Fact]
    public void More_variation_never_lowers_the_reorder_point_of_the_normal_approximation() =>
        Gen.Select(Gen.Double[0, 1000], Gen.Double[0, 500], Gen.Double[0, 500], Gen.Double[0.1, 20],
            Gen.Double[0, 5], Gen.Double[0.5, 0.999]).Sample(
            (use, deviation, more, lead, leadDeviation, service) =>
                NormalLeadTimeDemand.Of(use, deviation, lead, leadDeviation).ReorderPoint(service)
                    <= NormalLeadTimeDemand.Of(use, deviation + more, lead, leadDeviation).ReorderPoint(service)
                && NormalLeadTimeDemand.Of(use, deviation, lead, leadDeviation).ReorderPoint(service)
                    <= NormalLeadTimeDemand.Of(use, deviation, lead, leadDeviation + more / 100).ReorderPoint(service));

    [Fact]
    public void A_longer_lead_time_or_a_higher_service_level_never_lowers_the_normal_reorder_point() =>
        Gen.Select(Gen.Double[0, 1000], Gen.Double[0, 500], Gen.Double[0.1, 20], Gen.Double[0, 5],
            Gen.Double[0.5, 0.99], Gen.Double[0, 0.0099]).Sample(
            (use, deviation, lead, more, service, higher) =>
                NormalLeadTimeDemand.Of(use, deviation, lead).ReorderPoint(service)
                    <= NormalLeadTimeDemand.Of(use, deviation, lead + more).ReorderPoint(service)
                && NormalLeadTimeDemand.Of(use, deviation, lead).ReorderPoint(service)
                    <= NormalLeadTimeDemand.Of(use, deviation, lead).ReorderPoint(service + higher));

    /// <summary>Every case there is: each lead time, each week's use, the part of a week counted and not.</summary>
    private static IEnumerable<(double Amount, double Chance)> Cases(long[] uses, int[] possibleDays) =>
        possibleDays.SelectMany(days =>
            Weeks(uses, days).Select(one => (one.Amount, one.Chance / possibleDays.Length)));

    private static IEnumerable<(double Amount, double Chance)> Weeks(long[] uses, int days)
    {
        if (days <= 0)
            return [(0, 1)];
        var share = Math.Min(1, days / 7.0);
        var rest = Weeks(uses, days - 7).ToList();
        var counted = uses.SelectMany(use => rest.Select(one => (one.Amount + use, one.Chance * share / uses.Length)));
        return share < 1 ? counted.Concat(rest.Select(one => (one.Amount, one.Chance * (1 - share)))) : counted;
    }

    private static long[] Use(string kind) => kind switch
    {
        "rising" => [.. Enumerable.Repeat(1L, 92), .. Enumerable.Repeat(8L, 8)],
        "rising smoothly" => [.. Enumerable.Range(0, 60).Select(week => 4L + week / 10 + week % 3)],
        "falling" => [.. Enumerable.Range(0, 60).Select(week => 12L - week / 8 + week % 2)],
        "died away" => [.. Enumerable.Range(0, 60).Select(week => week < 40 && week % 2 == 0 ? 5L : 0),
            .. Enumerable.Repeat(0L, 20)],
        "seasonal" =>
            [.. Enumerable.Range(0, 104).Select(week => (long)Math.Round(6 + 5 * Math.Sin(week * Math.Tau / 52)))],
        _ => [.. Enumerable.Range(0, 80).Select(week => week % 5 == 2 ? 1L + week * 7 % 23 : 0)],
    };

    private static IEnumerable<double> Levels(LeadTimeDemand demand) => _services.Select(demand.Level);

    private static DemandSeries Series(params long[] uses) => new("fen80", 7, new LocalDate(2026, 3, 15), uses);
}
