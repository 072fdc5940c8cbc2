namespace Ledger.Core.Costing;

/// <summary>How the cost of what is used follows from what was bought (IAS 2, paragraphs 23 to 27).</summary>
public enum CostFormula
{
    /// <summary>Each unit costs what its own lot cost: specific identification. What the ledger posts.</summary>
    SpecificLot,

    /// <summary>The earliest bought is used first.</summary>
    FirstInFirstOut,

    /// <summary>Each unit costs the average of what is on hand when it is used: the moving average.</summary>
    MovingAverage,
}

/// <summary>The formulas' names.</summary>
public static class CostFormulas
{
    /// <summary>specific lot, first in first out, moving average.</summary>
    public static IReadOnlyList<string> Names { get; } = ["specific lot", "first in first out", "moving average"];

    /// <summary>The formula's name.</summary>
    public static string Name(this CostFormula formula) => Names[(int)formula];
}
