namespace Ledger.App.Commands.Show;

/// <summary>
/// What ends a bath, in documents: its capacities side by side, its ends, its tests and what they foretell.
/// </summary>
internal static class BathStoryShape
{
    private static readonly Shape<EndReached> _end = new Shape<EndReached>()
        .Text("by", end => end.By.Name())
        .Date("on", end => end.On)
        .Text("reason", end => end.Reason);

    private static readonly Shape<(BathReading Reading, BasisReading Basis)> _basis =
        new Shape<(BathReading Reading, BasisReading Basis)>()
            .Text("basis", row => row.Basis.Capacity.Basis)
            .Area("sqInPerLitre", row => row.Basis.Capacity.PerLitre)
            .Figure("usedPercent", row => row.Basis.UsedPercent)
            .Area("remainingSqIn", row => row.Basis.Remaining)
            .Counts("remainingSheets", (row, view) => BathText.Formats(row.Reading.Bath.Material, view)
                .Select(format => KeyValuePair.Create(format.Code, row.Basis.RemainingSheets(format))));

    private static readonly Shape<ClearingTrend> _trend = new Shape<ClearingTrend>()
        .Figure("limit", trend => (decimal)trend.Limit)
        .Figure("reachedAtSqInPerLitre", trend => Figure(trend.ReachedAt))
        .Figure("notBeforeSqInPerLitre", trend => Figure(trend.NotBefore))
        .Figure("notAfterSqInPerLitre", trend => Figure(trend.NotAfter))
        .Word("text", trend => trend.Text);

    public static Shape<BathReading> Of { get; } = new Shape<BathReading>()
        .Text("standsIn",
            reading => (reading.Bath.Standings is [.., var last] ? last.Container : WorkingContainer.FullBottle).Name())
        .Table("capacities", (reading, _) => reading.Bases.Select(basis => (reading, basis)), _basis)
        .Table("ends", (reading, _) => reading.Ends, _end)
        .Object("comesFirst", (reading, _) => reading.ComesFirst, _end)
        .Table("clearingTests", (reading, _) => reading.Bath.ClearingTests, new Shape<ClearingTime>()
            .Date("date", test => test.Date)
            .Text("film", test => test.Film)
            .Figure("seconds", test => test.Seconds)
            .Figure("freshSeconds", test => test.FreshSeconds)
            .Figure("ratio", test => test.Ratio)
            .Flag("isFresh", test => test.IsFresh)
            .Area("weightedAreaSqIn", test => test.Worked))
        .Object("clearingTrend", (reading, _) => reading.Clearing, _trend)
        .Figure("fixingSeconds", reading => reading.FixingSeconds)
        .Table("observations", (reading, _) => reading.Bath.Observations, new Shape<Observation>()
            .Date("date", seen => seen.Date)
            .Text("sign", seen => seen.Sign)
            .Flag("endsUse", seen => seen.EndsUse))
        .Table("silverTests", (reading, _) => reading.Bath.SilverReadings, new Shape<SilverReading>()
            .Date("date", silver => silver.Date)
            .Figure("gramsPerLitre", silver => silver.GramsPerLitre))
        .Figure("silverLimitGramsPerLitre", reading => reading.Bath.Limits.SilverMilligramsPerLitre / 1000m)
        .Table("residualTests", (reading, _) => reading.Bath.ResidualTests, new Shape<ResidualTest>()
            .Date("date", test => test.Date)
            .Text("kind", test => test.Kind)
            .Text("result", test => test.Result)
            .Flag("hasPassed", test => test.HasPassed)
            .Word("session", test => test.Session))
        .Table("controlStrips", (reading, _) => reading.Bath.ControlStrips, new Shape<ControlStrip>()
            .Date("date", strip => strip.Date)
            .Text("result", strip => strip.Result)
            .Flag("isWithinLimits", strip => strip.IsWithinLimits))
        .Table("topUps", (reading, _) => reading.Bath.TopUps, new Shape<TopUpRecord>()
            .Date("date", top => top.Date)
            .Volume("added", top => top.Added)
            .Volume("pouredOff", top => top.Bled)
            .Area("weightedAreaSqIn", top => top.Worked))
        .Volume("replenisherDue", reading => reading.Replenishment?.Due)
        .Volume("replenisherCeiling", reading => reading.Replenishment?.Ceiling);

    private static decimal? Figure(double? number) =>
        number is { } known && Math.Abs(known) < 1e12 ? (decimal)known : null;
}
