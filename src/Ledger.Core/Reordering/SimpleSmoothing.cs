namespace Ledger.Core.Reordering;

/// <summary>
/// Simple exponential smoothing: the level moves by a share of each period's surprise. For use that is smooth.
/// </summary>
public static class SimpleSmoothing
{
    /// <summary>The share of a surprise that is believed.</summary>
    public const double Alpha = 0.2;

    /// <summary>The level starts with the average of so many first periods.</summary>
    public const int StartPeriods = 8;

    /// <summary>The forecast for any coming period.</summary>
    public static double Forecast(IReadOnlyList<long> uses, double alpha = Alpha)
    {
        if (uses.Count == 0)
            return 0;
        var level = uses.Take(StartPeriods).Average();
        foreach (var use in uses)
            level += alpha * (use - level);
        return level;
    }
}
