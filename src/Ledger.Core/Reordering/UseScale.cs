namespace Ledger.Core.Reordering;

/// <summary>
/// How the past's periods are brought to the forecast, up or down, so that their average is the forecast. The
/// forecast's method says what has moved. Simple smoothing follows amounts: every amount is so many times as large. The
/// others are for use with gaps: uses come so many times as often and stay as large as they were; only when every
/// period has a use do the amounts grow too.
/// </summary>
/// <param name="Often">How many times as often something is used.</param>
/// <param name="Amount">How many times as much is used then.</param>
public sealed record UseScale(double Often, double Amount)
{
    /// <summary>The past as it was.</summary>
    public static UseScale None { get; } = new(1, 1);

    /// <summary>What brings a history to its forecast.</summary>
    public static UseScale Of(DemandSeries history, Forecast forecast)
    {
        var ratio = forecast.PerPeriod / history.Mean;
        if (ratio <= 0)
            return new(0, 1);
        if (forecast.Method == ForecastMethod.SimpleSmoothing)
            return new(1, ratio);
        var often = Math.Min(ratio, (double)history.Periods / history.PeriodsWithUse);
        return new(often, ratio / often);
    }
}
