using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Reordering;

/// <summary>Says in a photographer's words what a suggestion rests on.</summary>
internal static class ReorderBasis
{
    public static string Of(ReorderReading reading) =>
        Capital(string.Join("; ", new[] { Use(reading), Level(reading), Lead(reading), Planned(reading),
            Left(reading) }.OfType<string>())) + ".";

    private static string Use(ReorderReading reading)
    {
        var (history, periods) = (reading.History, Periods(reading.History));
        if (history.PeriodsWithUse == 0)
            return history.Periods == 0 ? "it was never delivered"
                : reading.Item.Kind == ItemKind.Film
                    ? $"no negative was made of it in {periods}; tests and practice do not count"
                : $"not used in {periods}";
        var used = $"used in {history.PeriodsWithUse} of {periods}";
        return reading.Forecast is null
            ? $"{used}, too little for a forecast"
            : reading.Forecast.Method == ForecastMethod.DyingAway
                ? $"{used}, the last time {history.PeriodsSinceUse} {Name(history)} ago: "
                    + $"the use fell to {PerWeek(reading)} a week"
                : $"{used}, {InWords(reading.Pattern!.Value)}, {PerWeek(reading)} a week";
    }

    private static string InWords(DemandPattern pattern) => pattern switch
    {
        DemandPattern.Smooth => "steady",
        DemandPattern.Intermittent => "now and then, in like amounts",
        DemandPattern.Erratic => "steady, in uneven amounts",
        _ => "now and then, in uneven amounts",
    };

    private static string? Level(ReorderReading reading)
    {
        if (reading.Computed is not { } counted)
            return reading.Item.MinimumOnHand is { } least ? $"your minimum of {least.ToText(reading.Style)} decides"
                : "no minimum is set, so nothing is suggested";
        var reached = reading.Reaches(counted)!.Value;
        var inTime = $"ordered with {counted.ToText(reading.Style)} left, {Percent(reached)} of deliveries after "
            + $"{Counted.Of(reading.LeadTime.Days, "day")} come in time"
            + (reached == reading.ServiceLevel ? "" : $", you ask for {Percent(reading.ServiceLevel)}");
        return reading.MinimumDecides
            ? $"{inTime}; your minimum of {reading.Item.MinimumOnHand!.Value.ToText(reading.Style)} is higher and "
                + "decides" : inTime;
    }

    private static string? Lead(ReorderReading reading) => reading.LeadTime switch
    {
        { Source: LeadTimeSource.Observed, Observed.Count: var count } =>
            $"the delivery time is that of the last {count} deliveries",
        { Source: LeadTimeSource.Assumed } when reading.Forecast is not null =>
            "no delivery time is set, so two weeks are assumed",
        { Observed: { Count: > 0 } observed, Days: var days } when observed.Max() > days =>
            $"one delivery has taken {Counted.Of(observed.Max(), "day")}",
        _ => null,
    };

    private static string? Planned(ReorderReading reading)
    {
        if (reading.Known is not [var first, ..])
            return null;
        var plans = reading.Known.Select(one => one.Plan).Distinct().ToList();
        var what = plans.Count == 1 ? $"for {first.Plan} on {Dates.Text(first.On)}"
            : $"in {plans.Count} plans from {Dates.Text(first.On)} to {Dates.Text(reading.Known[^1].On)}";
        return $"{reading.Planned.ToText(reading.Style)} {(reading.Planned.Base == 1 ? "is" : "are")} planned {what}";
    }

    private static string? Left(ReorderReading reading)
    {
        var late = reading.OnHand - reading.Expired - reading.Suspect - reading.Dead - reading.Usable;
        string?[] parts =
        [
            reading.Expired.IsZero ? null : $"{reading.Expired.ToText(reading.Style)} expired",
            reading.Suspect.IsZero ? null : $"{reading.Suspect.ToText(reading.Style)} under suspicion",
            reading.Dead.IsZero ? null : $"{reading.Dead.ToText(reading.Style)} that cannot be drawn",
            late.IsZero ? null : $"{late.ToText(reading.Style)} that will expire before they are used",
        ];
        var lost = string.Join(" and ", parts.OfType<string>());
        return lost.Length == 0 ? null : $"not counted: {lost}";
    }

    private static string PerWeek(ReorderReading reading)
    {
        var perWeek = reading.PerDay * 7 / reading.Item.Unit.BasePerUnit();
        var figure = Math.Round((decimal)perWeek, perWeek < 10 ? 1 : 0, MidpointRounding.AwayFromZero);
        var text = figure == 0 ? "less than 0.1" : $"about {Scaled.ToText(figure, 1)}";
        return $"{text} {(figure == 1 ? reading.Item.Unit.Name() : reading.Item.Unit.Plural())}";
    }

    private static string Percent(decimal level) => $"{Scaled.ToText(level * 100, 2)} %";

    private static string Periods(DemandSeries history) => $"{history.Periods} {Name(history, history.Periods)}";

    private static string Name(DemandSeries history, int count = 2) => history.PeriodDays switch
    {
        1 => Counted.Noun(count, "day"),
        7 => Counted.Noun(count, "week"),
        _ => $"{Counted.Noun(count, "period")} of {history.PeriodDays} days",
    };

    private static string Capital(string sentence) => char.ToUpperInvariant(sentence[0]) + sentence[1..];
}
