using Ledger.Terminal.Pictures;
using Ledger.Terminal.Themes;

namespace Ledger.Terminal.Blocks;

/// <summary>A bath in a details pane.</summary>
internal static class BathBlocks
{
    private const int MonthsShown = 12;
    private const int NearlyFull = 90;

    /// <summary>What is left of it, by area and by age.</summary>
    public static IEnumerable<(string Label, string? Text)> Gauges(BathReading reading, MeasureStyle style,
        LocalDate today)
    {
        yield return ("Capacity left", reading is { UsedPercent: { } used, Remaining: { } room }
            ? $"{Gauge.Of(100 - used)}, {room.ToText(style)} of {reading.Bath.TotalCapacity!.Value.ToText(style)}"
            : reading.Bath.Indicator is { } colour ? $"until its indicator is {colour}"
            : "no capacity is set: area is counted, not limited");
        if (reading.GoodUntil is { } good)
        {
            var life = Period.DaysBetween(reading.Bath.MixedOn, good.Date);
            var left = Gauge.OfPart(Math.Max(0, good.DaysLeft(today)), life);
            yield return ("Life left", $"{left}, {Counted.Of(reading.AgeDays, "day")} old of {life}");
        }
    }

    /// <summary>Dates, figures and what it can still take.</summary>
    public static Block Facts(BathReading reading, Holdings holdings)
    {
        var (bath, style, today) = (reading.Bath, holdings.Settings.Style, holdings.AsOf);
        return Block.Facts($"Bath {bath.Code}: {bath.Role.Name()} for {bath.Material.Name()}", [
            ("State", Mark(reading, holdings) + State(reading, holdings)),
            ("Suspicion", bath.Suspicion?.Text),
            ("Through it",
                $"{Throughput(reading, style)} a "
                    + $"litre{(bath.Capacity is { } capacity ? $", basis: {capacity.Basis}" : "")}"),
            .. Gauges(reading, style, today),
            ("Good until", reading.GoodUntil.Text(today)),
            ("Sheets left", SheetsLeft(reading, holdings)),
            ("Indicator", bath is { Indicator: { } spent, Capacity: not null }
                ? $"exhausted when it is {spent}, whatever capacity is left"
                : null),
            ("Used by", bath.Worked == bath.WorkedWeighted
                ? bath.Worked.ToText(style)
                : $"{bath.Worked.ToText(style)}, {bath.WorkedWeighted.ToText(style)} by fixer factor"),
            ("Mixed", $"{Dates.Text(bath.MixedOn)}, {bath.WorkingVolume.ToText(style)} {bath.Dilution} of {bath.Item}"),
            ("Pair", Pair(bath, holdings)),
            ("Cost", bath.Value.Text(holdings.Settings)),
        ]);
    }

    /// <summary>The area by month and the sessions behind it.</summary>
    public static Block History(IReadOnlyList<BathWorkRecord> work, Holdings holdings)
    {
        var style = holdings.Settings.Style;
        if (work.Count == 0)
            return Block.Of("Use", "No film has gone through it yet.");
        var months = Months.Of(
            work.Select(record => (record.Date, record.Weighted.Hundredths)), holdings.AsOf, MonthsShown,
            area => Area.FromHundredths(area).ToText(style));
        return new("Use by month, by fixer factor", width =>
        [
            .. BarChart.Of(months, width),
            "",
            .. work.SelectMany(record => Paragraph.Of(
                Dates.Text(record.Date), record.Summary + (record.IsFirst ? "" : " (as second bath)"), width, 12)),
        ]);
    }

    /// <summary>
    /// How much area a litre has taken, never rounded down, of how much it can: "1067 of 2000 sq in".
    /// </summary>
    public static string Throughput(BathReading reading, MeasureStyle style)
    {
        var through = Area.FromSquareInches(decimal.Ceiling(reading.ThroughputSquareInchesPerLitre)).ToText(style);
        return reading.Bath.Capacity is { } capacity
            ? $"{through.Split(' ')[0]} of {capacity.PerLitre.ToText(style)}"
            : through;
    }

    /// <summary>
    /// The mark before its state: of one that no longer works, of one that soon will not; none for another.
    /// </summary>
    public static string Mark(BathReading reading, Holdings holdings) => reading.IsUnusable ? Style.NowMark
        : reading.UsedPercent >= NearlyFull || IsEnding(reading, holdings) ? Style.SoonMark : "";

    private static bool IsEnding(BathReading reading, Holdings holdings) =>
        reading.GoodUntil is { } good && good.DaysLeft(holdings.AsOf) <= holdings.Settings.WarnDays;

    /// <summary>One word, or a few: good, second, nearly exhausted, expires soon, exhausted by area.</summary>
    public static string State(BathReading reading, Holdings holdings)
    {
        if (reading.EndedBy is { } end)
            return end.State();
        if (reading.Bath.Suspicion is not null)
            return "suspect";
        if (reading.UsedPercent >= NearlyFull)
            return "nearly exhausted";
        if (IsEnding(reading, holdings))
            return "expires soon";
        return holdings.IsSecond(reading.Bath) ? "second" : "usable";
    }

    private static string? SheetsLeft(BathReading reading, Holdings holdings) =>
        reading.Remaining is null ? null : string.Join(", ", RoomForFilm.Of(reading, holdings));

    private static string? Pair(Bath bath, Holdings holdings)
    {
        var second = holdings.SecondAfter(bath);
        var place = second is not null ? $"first, {second.Code} second"
            : holdings.IsSecond(bath) ? $"second after {bath.PairedWith}"
            : bath.PairedWith is not null ? $"moved up from second after {bath.PairedWith}" : null;
        return place is null ? null
            : second is null && !holdings.IsSecond(bath) ? place
            : $"{place}; rotated {(second ?? bath).Rotations} of "
                + $"{Counted.Of(holdings.Settings.RotationCeiling, "time")}";
    }
}
