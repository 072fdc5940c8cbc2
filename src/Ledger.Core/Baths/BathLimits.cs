namespace Ledger.Core.Baths;

/// <summary>At what a bath's tests say that it is exhausted: settings of the user.</summary>
/// <param name="ExhaustedMultipleThousandths">Times the fresh clearing time, in thousandths.</param>
/// <param name="FixingMultipleThousandths">Times the clearing time for which film is fixed, in thousandths.</param>
/// <param name="SilverMilligramsPerLitre">Silver in milligrams per litre; null when silver ends none.</param>
public sealed record BathLimits(int ExhaustedMultipleThousandths, int FixingMultipleThousandths,
    int? SilverMilligramsPerLitre)
{
    /// <summary>
    /// Twice the fresh time, and fixing for twice the clearing time (NAVEDTRA 14209); no limit of silver.
    /// </summary>
    public static BathLimits Default { get; } = new(2000, 2000, null);
}
