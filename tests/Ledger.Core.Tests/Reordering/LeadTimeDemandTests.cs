using CsCheck;
using Ledger.Core.Reordering;
using NodaTime;

namespace Ledger.Core.Tests.Reordering;

public sealed class LeadTimeDemandTests
{
    private static readonly Gen<long[]> _uses = Gen.OneOf(Gen.Const(0L), Gen.Long[1, 500_000]).Array[4, 120];

    [Fact]
    public void The_draws_are_the_same_each_time()
    {
        var series = Series(0, 4, 0, 0, 6, 0, 8, 0, 0, 4);
        Assert.Equal(
            Enumerable.Range(1, 99).Select(percent => LeadTimeDemand.Drawn(series, [21], 7).Level(percent / 100m)),
            Enumerable.Range(1, 99).Select(percent => LeadTimeDemand.Drawn(series, [21], 7).Level(percent / 100m)));
    }

    [Fact]
    public void A_longer_lead_time_never_lowers_the_level() =>
        Gen.Select(_uses, Gen.Int[0, 90], Gen.Int[0, 30], Gen.ULong, Gen.Double[0.1, 1]).Sample(
            (uses, days, more, seed, keep) => Levels(LeadTimeDemand.Drawn(Series(uses), [days], seed, keep))
                .Zip(Levels(LeadTimeDemand.Drawn(Series(uses), [days + more], seed, keep)))
                .All(levels => levels.First <= levels.Second),
            iter: 200);

    [Fact]
    public void A_higher_service_level_never_lowers_the_level() =>
        Gen.Select(_uses, Gen.Int[1, 60], Gen.Int[1, 98]).Sample(
            (uses, days, percent) =>
            {
                var demand = LeadTimeDemand.Drawn(Series(uses), [days], 1);
                return demand.Level(percent / 100m) <= demand.Level((percent + 1) / 100m);
            },
            iter: 200);

    [Fact]
    public void More_use_never_lowers_the_level() =>
        Gen.Select(_uses, Gen.Int[0, 119], Gen.Long[0, 100_000], Gen.Int[1, 60]).Sample(
            (uses, at, more, days) =>
            {
                var heavier = uses.Select((use, i) => i == at % uses.Length ? use + more : use).ToArray();
                return Levels(LeadTimeDemand.Drawn(Series(uses), [days], 3)).Zip(Levels(LeadTimeDemand.Drawn(Series(heavier), [days], 3)))
                    .All(levels => levels.First <= levels.Second);
            },
            iter: 200);

    [Fact]
    public void More_variation_never_lowers_the_reorder_point_of_the_normal_approximation() =>
        Gen.Select(Gen.Double[0, 1000], Gen.Double[0, 500], Gen.Double[0, 500], Gen.Double[0.1, 20], Gen.Double[0, 5], Gen.Double[0.5, 0.999]).Sample(
            (use, deviation, more, lead, leadDeviation, service) =>
                NormalLeadTimeDemand.Of(use, deviation, lead, leadDeviation).ReorderPoint(service)
                    <= NormalLeadTimeDemand.Of(use, deviation + more, lead, leadDeviation).ReorderPoint(service)
                && NormalLeadTimeDemand.Of(use, deviation, lead, leadDeviation).ReorderPoint(service)
                    <= NormalLeadTimeDemand.Of(use, deviation, lead, leadDeviation + more / 100).ReorderPoint(service));

    [Fact]
    public void A_longer_lead_time_or_a_higher_service_level_never_lowers_the_reorder_point_of_the_normal_approximation() =>
        Gen.Select(Gen.Double[0, 1000], Gen.Double[0, 500], Gen.Double[0.1, 20], Gen.Double[0, 5], Gen.Double[0.5, 0.99], Gen.Double[0, 0.0099]).Sample(
            (use, deviation, lead, more, service, higher) =>
                NormalLeadTimeDemand.Of(use, deviation, lead).ReorderPoint(service)
                    <= NormalLeadTimeDemand.Of(use, deviation, lead + more).ReorderPoint(service)
                && NormalLeadTimeDemand.Of(use, deviation, lead).ReorderPoint(service)
                    <= NormalLeadTimeDemand.Of(use, deviation, lead).ReorderPoint(service + higher));

    /// <summary>
    /// Simulated lumpy use: the level drawn from ten years of it must suffice for the next lead time as often as it promises. The amounts
    /// are fine-grained, so that no lump by itself is worth more than the tolerance.
    /// </summary>
    [Theory]
    [InlineData(0.80, 21, 0.4)]
    [InlineData(0.90, 14, 0.4)]
    [InlineData(0.95, 21, 0.25)]
    [InlineData(0.95, 10, 0.6)]
    public void The_level_suffices_as_often_as_it_promises_within_two_points(double service, int days, double chance)
    {
        const int items = 60, lookedAt = 1000;
        var draws = new Draws(20_260_315);
        var (sufficed, all) = (0, 0);
        for (var item = 0; item < items; item++)
        {
            var level = LeadTimeDemand.Drawn(Series(Use(520)), [days], (ulong)item).Level((decimal)service);
            for (var i = 0; i < lookedAt; i++, all++)
                sufficed += Use(days / 7).Sum() + (draws.Share() * 7 < days % 7 ? Use(1)[0] : 0) <= level ? 1 : 0;
        }

        Assert.InRange((double)sufficed / all, service - 0.02, service + 0.02);

        // Amounts with a long tail, as a product of two even draws.
        long[] Use(int periods) =>
            [.. Enumerable.Range(0, periods).Select(_ => draws.Share() < chance ? 1 + (long)(1_000_000 * draws.Share() * draws.Share()) : 0)];
    }

    [Fact]
    public void A_part_of_a_period_counts_with_its_share_and_keeps_the_lumps_whole()
    {
        // Ten every week: three days are three sevenths of the chance of ten, never four or five.
        var demand = LeadTimeDemand.Drawn(Series(10, 10, 10, 10), [3], 1);
        Assert.Equal([0L, 10L], Levels(demand).Distinct());
        Assert.InRange(demand.Mean, 10 * 3 / 7.0 - 0.35, 10 * 3 / 7.0 + 0.35);
    }

    [Fact]
    public void Use_that_has_died_away_is_drawn_more_seldom()
    {
        var series = Series(4, 4, 4, 4, 4, 4, 4, 4);
        Assert.InRange(LeadTimeDemand.Drawn(series, [70], 1, keep: 0.25).Mean, 9, 11);
        Assert.Equal(40, LeadTimeDemand.Drawn(series, [70], 1).Mean);
    }

    [Fact]
    public void Every_draw_of_the_generator_is_in_range_and_evenly_spread()
    {
        var draws = new Draws(1);
        var counts = new int[7];
        for (var i = 0; i < 70_000; i++)
            counts[draws.Below(7)]++;
        Assert.All(counts, count => Assert.InRange(count, 9_600, 10_400));
        Assert.All(Enumerable.Range(0, 1000), _ => Assert.InRange(draws.Share(), 0, 1 - 1e-16));
    }

    private static IEnumerable<long> Levels(LeadTimeDemand demand) => new[] { 0.1m, 0.5m, 0.8m, 0.9m, 0.95m, 0.99m, 0.999m }.Select(demand.Level);

    private static DemandSeries Series(params long[] uses) => new("fen80", 7, new LocalDate(2026, 3, 15), uses);
}
