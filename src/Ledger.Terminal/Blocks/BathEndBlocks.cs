using Ledger.Terminal.Pictures;

namespace Ledger.Terminal.Blocks;

/// <summary>
/// What ends a bath, in a details pane: its capacities side by side, what came and what comes first, and its tests.
/// </summary>
internal static class BathEndBlocks
{
    /// <summary>The blocks that have something to say.</summary>
    public static IEnumerable<Block> Of(BathReading reading, Holdings holdings)
    {
        if (reading.Ends.Count > 0 || reading.ComesFirst is not null)
            yield return Ends(reading);
        if (reading.Bases.Count > 1)
            yield return Bases(reading, holdings);
        if (reading.Bath.ClearingTests.Count > 0)
            yield return Clearing(reading, holdings);
        if (Log(reading, holdings).ToList() is { Count: > 0 } log)
            yield return Block.Of("Seen and measured", log);
    }

    private static Block Ends(BathReading reading) => Block.Of("What ends it", [
        .. reading.Ends.Select(end => ScreenText.Sentence($"{end.By.State()} on {Dates.Text(end.On)}: {end.Reason}")),
        .. reading.ComesFirst is { } next
            ? [$"First to come, at the use so far: {next.By.Name()}, about {Dates.Text(next.On)} ({next.Reason})."]
            : Array.Empty<string>(),
    ]);

    private static Block Bases(BathReading reading, Holdings holdings)
    {
        var style = holdings.Settings.Style;
        return Block.Facts("By each basis of its capacity", reading.Bases.Select(basis => (
            basis.Capacity.Basis, Text: (string?)Basis(basis, reading.Bath.Material, style, holdings))));
    }

    private static string Basis(BasisReading basis, BathMaterial material, MeasureStyle style, Holdings holdings) =>
        $"{Gauge.Of(100 - basis.UsedPercent)} left, {basis.Remaining.ToText(style)} at "
            + $"{basis.Capacity.PerLitre.ToText(style)} a litre"
        + Sheets(basis, material, holdings);

    private static string Sheets(BasisReading basis, BathMaterial material, Holdings holdings)
    {
        var formats = holdings.FormatsOf(material);
        return formats.Count == 0
            ? ""
            : $": {string.Join(", ", formats.Select(format => $"{basis.RemainingSheets(format)} of {format}"))}";
    }

    private static Block Clearing(BathReading reading, Holdings holdings)
    {
        var trend = reading.Clearing;
        return new("Clearing tests: times fresh against sq in per litre", width =>
        [
            .. TestChart.Of(
                trend.Points, trend.Limit, trend.Line is { } line ? line.At : null,
                Math.Max(trend.ReachedAt ?? 0, (double)(reading.Bath.Capacity?.PerLitre.SquareInches ?? 0)), width),
            .. Paragraph.Of(ScreenText.Sentence(trend.Text), width),
            .. reading.FixingSeconds is { } seconds
                ? Paragraph.Of($"By the last test, fix for {Scaled.ToText(seconds, 1)} s at least.", width)
                : [],
            .. reading.Bath.ClearingTests.Select(test =>
                $"{Dates.Text(test.Date)}  {test.Film}  {Scaled.ToText(test.Seconds, 1)} s  "
                + (test.IsFresh ? "fresh"
                    : test.Ratio is { } ratio
                        ? $"{Scaled.ToText(ratio, 2)}x after {test.Worked.ToText(holdings.Settings.Style)}"
                        : "")),
        ]);
    }

    private static IEnumerable<string> Log(BathReading reading, Holdings holdings)
    {
        var (bath, style) = (reading.Bath, holdings.Settings.Style);
        foreach (var standing in bath.Standings)
            yield return $"{Dates.Text(standing.Since)}  kept in: "
                + $"{Ledger.Core.Keeping.WorkingContainers.Name(standing.Container)}";
        foreach (var seen in bath.Observations)
            yield return $"{Dates.Text(seen.Date)}  {seen.Sign}{(seen.EndsUse ? ", not to be used any more" : "")}";
        foreach (var silver in bath.SilverReadings)
            yield return $"{Dates.Text(silver.Date)}  {Scaled.ToText(silver.GramsPerLitre, 3)} g of silver per litre";
        foreach (var test in bath.ResidualTests)
            yield return $"{Dates.Text(test.Date)}  residual {test.Kind}: {test.Result}, "
                + $"{(test.HasPassed ? "passed" : "failed")}";
        foreach (var strip in bath.ControlStrips)
            yield return $"{Dates.Text(strip.Date)}  control strip: {strip.Result}, "
                + $"{(strip.IsWithinLimits ? "within limits" : "out of limits")}";
        foreach (var top in bath.TopUps)
            yield return $"{Dates.Text(top.Date)}  {top.Added.ToText(style)} added, {top.Bled.ToText(style)} taken out";
        if (reading.Replenishment is { } due)
            yield return $"Replenisher due: {due.Due.ToText(style)}; added {due.Added.ToText(style)} "
                + $"of at most {due.Ceiling.ToText(style)}.";
    }
}
