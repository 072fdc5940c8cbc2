namespace Ledger.Core.Costing;

/// <summary>How the cost of what is used follows from what was bought (IAS 2, paragraphs 23 to 27).</summary>
public enum CostFormula
{
    /// <summary>
    /// Each unit costs what its own lot cost: specific identification. What the ledger posts. It reaches for the lots
    /// first in, first out unless the user names another, so that this is first in, first out as long as the user lets
    /// it be.
    /// </summary>
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

    /// <summary>lot, fifo, average: as a setting and a command take them.</summary>
    public static IReadOnlyList<string> ShortNames { get; } = ["lot", "fifo", "average"];

    /// <summary>The formula's name.</summary>
    public static string Name(this CostFormula formula) => Names[(int)formula];

    /// <summary>The formula's short name.</summary>
    public static string ShortName(this CostFormula formula) => ShortNames[(int)formula];

    /// <summary>How what was used is costed, in words.</summary>
    public static string Basis(this CostFormula formula) => formula switch
    {
        CostFormula.SpecificLot =>
            "each unit at the cost of the lot it was taken from: first in, first out unless you named another",
        CostFormula.FirstInFirstOut => "first in, first out, whichever lot was taken",
        _ => "at the average of what was on hand when it was used",
    };
}
