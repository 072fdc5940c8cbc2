using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Baths;

/// <summary>How a bath stands by one basis of its capacity.</summary>
/// <param name="Capacity">The capacity and its basis.</param>
/// <param name="Volume">The bath's working volume.</param>
/// <param name="Worked">The weighted area it has taken.</param>
public sealed record BasisReading(Capacity Capacity, Volume Volume, Area Worked)
{
    /// <summary>The area it can take in all.</summary>
    public Area Total => Capacity.Of(Volume);

    /// <summary>The weighted area it can still take.</summary>
    public Area Remaining => Total.LessUsed(Worked);

    /// <summary>How much is used, in per cent; above 100 when it was overrun.</summary>
    public decimal UsedPercent => Total.Hundredths == 0 ? 100 : 100m * Worked.Hundredths / Total.Hundredths;

    /// <summary>How many whole sheets or rolls of a format it can still take, never rounded up.</summary>
    public long RemainingSheets(Format format, int factorThousandths = 1000) =>
        Remaining.Hundredths / format.Area.Weighted(factorThousandths).Hundredths;
}
