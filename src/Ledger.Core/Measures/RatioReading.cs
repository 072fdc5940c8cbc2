namespace Ledger.Core.Measures;

/// <summary>The two ways in which the trade reads a ratio such as "1:4".</summary>
public enum RatioReading
{
    /// <summary>One part to four parts of water: 1+4, one part in five.</summary>
    PartsOfWater,

    /// <summary>One part in four parts altogether: 1+3.</summary>
    PartsInAll,
}
