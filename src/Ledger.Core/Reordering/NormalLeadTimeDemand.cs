namespace Ledger.Core.Reordering;

/// <summary>
/// What may be used until a delivery comes, as a normal distribution: the textbook's way, shown beside the draws from
/// the item's own history. Use and lead time vary independently: mean d L, variance L sd_d² + d² sd_L².
/// </summary>
/// <param name="Mean">The average.</param>
/// <param name="Deviation">The standard deviation.</param>
public sealed record NormalLeadTimeDemand(double Mean, double Deviation)
{
    /// <summary>From the use of a period and the lead time in periods.</summary>
    public static NormalLeadTimeDemand Of(double use, double useDeviation, double leadTime,
        double leadTimeDeviation = 0) =>
        new(use * leadTime,
            Math.Sqrt(leadTime * useDeviation * useDeviation + use * use * leadTimeDeviation * leadTimeDeviation));

    /// <summary>What is kept against more use than the average, at a service level.</summary>
    public double SafetyStock(double service) => NormalQuantile.Of(service) * Deviation;

    /// <summary>The amount that suffices until the delivery with that probability.</summary>
    public double Level(double service) => Mean + SafetyStock(service);

    /// <summary>
    /// The reorder point in whole units: rounded up, or the service level would be missed. Never below nothing.
    /// </summary>
    public long ReorderPoint(double service) => RoundedUp(Level(service));

    /// <summary>
    /// Rounds up to whole units; what is whole but for the last figures of the arithmetic stays as it is.
    /// </summary>
    public static long RoundedUp(double amount) =>
        Math.Max(0, checked((long)Math.Ceiling(amount - 1e-9 * Math.Max(1, Math.Abs(amount)))));
}
