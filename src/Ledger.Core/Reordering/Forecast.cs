namespace Ledger.Core.Reordering;

/// <summary>What an item's use is expected to be.</summary>
/// <param name="Method">How it was computed.</param>
/// <param name="PerPeriod">What a period uses on average, in base units.</param>
public sealed record Forecast(ForecastMethod Method, double PerPeriod)
{
    /// <summary>A history shorter than this says nothing yet.</summary>
    public const int FewestPeriods = 8;

    /// <summary>Use in fewer periods than this says nothing yet.</summary>
    public const int FewestUses = 3;

    /// <summary>
    /// Use has died away when the last one is longer ago than so many of the average intervals up to it.
    /// </summary>
    public const int DiedAwayIntervals = 3;

    /// <summary>Whether a history is long enough for one.</summary>
    public static bool IsPossible(DemandSeries series) =>
        series.Periods >= FewestPeriods && series.PeriodsWithUse >= FewestUses;

    /// <summary>The forecast by the method that suits the history; null when it is too short.</summary>
    public static Forecast? Of(DemandSeries series)
    {
        if (!IsPossible(series))
            return null;
        var uses = series.Uses;
        if (HasDiedAway(series))
            return new(ForecastMethod.DyingAway,
                Tsb.Forecast(uses, Tsb.Alpha, Tsb.Alpha, TsbStart.FirstUseMeanChance(uses)));
        return DemandPatterns.Of(uses) == DemandPattern.Smooth
            ? new(ForecastMethod.SimpleSmoothing, SimpleSmoothing.Forecast(uses))
            : new(ForecastMethod.CorrectedCroston, Croston.Over(uses).Corrected);
    }

    private static bool HasDiedAway(DemandSeries series) =>
        series.PeriodsSinceUse >= FewestPeriods
        && (long)series.PeriodsSinceUse * series.PeriodsWithUse
            > (long)DiedAwayIntervals * (series.Periods - series.PeriodsSinceUse);
}

/// <summary>How a forecast is computed.</summary>
public enum ForecastMethod
{
    /// <summary>Simple exponential smoothing, for smooth use.</summary>
    SimpleSmoothing,

    /// <summary>
    /// Croston's method with the correction of Syntetos and Boylan, for use that is seldom, uneven or both.
    /// </summary>
    CorrectedCroston,

    /// <summary>The method of Teunter, Syntetos and Babai, for use that has died away.</summary>
    DyingAway,
}

/// <summary>The methods' names as they stand in JSON.</summary>
public static class ForecastMethods
{
    /// <summary>simple-smoothing, croston-sba, tsb.</summary>
    public static string Name(this ForecastMethod method) => method switch
    {
        ForecastMethod.SimpleSmoothing => "simple-smoothing",
        ForecastMethod.CorrectedCroston => "croston-sba",
        _ => "tsb",
    };
}
