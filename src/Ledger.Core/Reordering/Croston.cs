namespace Ledger.Core.Reordering;

/// <summary>
/// Croston's method for use with gaps: the amount and the interval between uses are smoothed each on its own, and only
/// when something is used. Croston (1972), Forecasting and stock control for intermittent demands, Operational Research
/// Quarterly 23(3), 289-303. Start: the first amount, and its position counted from 1, are the first levels.
/// </summary>
/// <param name="alpha">The share of a surprise that is believed, the same for amounts and intervals.</param>
public sealed class Croston(double alpha = Croston.Alpha)
{
    /// <summary>The usual share of a surprise that is believed.</summary>
    public const double Alpha = 0.1;

    private int _sinceUse;
    private bool _hasStarted;

    /// <summary>The level of the amounts.</summary>
    public double Size { get; private set; }

    /// <summary>The level of the intervals.</summary>
    public double Interval { get; private set; }

    /// <summary>Croston's forecast for any coming period: amount ÷ interval.</summary>
    public double Forecast => _hasStarted ? Size / Interval : 0;

    /// <summary>
    /// The forecast without Croston's upward bias: times 1 - alpha/2. Syntetos and Boylan (2005), The accuracy of
    /// intermittent demand estimates, International Journal of Forecasting 21(2), 303-314.
    /// </summary>
    public double Corrected => (1 - alpha / 2) * Forecast;

    /// <summary>The method run over a history.</summary>
    public static Croston Over(IEnumerable<long> uses, double alpha = Alpha)
    {
        var croston = new Croston(alpha);
        foreach (var use in uses)
            croston.Observe(use);
        return croston;
    }

    /// <summary>Takes in one period's use.</summary>
    public void Observe(long use)
    {
        _sinceUse++;
        if (use <= 0)
            return;
        Size = _hasStarted ? Size + alpha * (use - Size) : use;
        Interval = _hasStarted ? Interval + alpha * (_sinceUse - Interval) : _sinceUse;
        _hasStarted = true;
        _sinceUse = 0;
    }
}
