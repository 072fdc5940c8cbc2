namespace Ledger.Core.Reordering;

/// <summary>How an item is used: how often, and how evenly.</summary>
public enum DemandPattern
{
    /// <summary>Often, in amounts that are much alike.</summary>
    Smooth,

    /// <summary>Now and then, in amounts that are much alike.</summary>
    Intermittent,

    /// <summary>Often, in amounts that differ much.</summary>
    Erratic,

    /// <summary>Now and then, in amounts that differ much.</summary>
    Lumpy,
}

/// <summary>
/// Tells the patterns apart by the cut-offs of Syntetos, Boylan and Croston (2005), On the categorization of demand
/// patterns, Journal of the Operational Research Society 56, 495-503: an average interval of 1.32 periods and a squared
/// coefficient of variation of 0.49. The average interval is all periods ÷ periods with use; the variation is that of
/// the amounts used, zeros left out, over n. Both are compared in whole numbers, so that a value on the cut-off falls
/// on the upper side exactly.
/// </summary>
public static class DemandPatterns
{
    /// <summary>smooth, intermittent, erratic, lumpy.</summary>
    public static IReadOnlyList<string> Names { get; } = ["smooth", "intermittent", "erratic", "lumpy"];

    /// <summary>The pattern's name.</summary>
    public static string Name(this DemandPattern pattern) => Names[(int)pattern];

    /// <summary>The pattern of what was used; null when nothing was.</summary>
    public static DemandPattern? Of(IReadOnlyList<long> uses)
    {
        long demands = 0;
        Int128 sum = 0, squares = 0;
        foreach (var use in uses)
            if (use > 0)
                (demands, sum, squares) = (demands + 1, sum + use, squares + (Int128)use * use);
        if (demands == 0)
            return null;

        var isSeldom = 100L * uses.Count >= 132 * demands;
        var isUneven = 100 * demands * squares >= 149 * sum * sum; // n Σx² ÷ (Σx)² - 1 >= 0.49
        return (isSeldom, isUneven) switch
        {
            (false, false) => DemandPattern.Smooth,
            (true, false) => DemandPattern.Intermittent,
            (false, true) => DemandPattern.Erratic,
            (true, true) => DemandPattern.Lumpy,
        };
    }

    /// <summary>The average interval between periods with use: all periods ÷ periods with use.</summary>
    public static double AverageInterval(IReadOnlyList<long> uses) => (double)uses.Count / uses.Count(use => use > 0);

    /// <summary>The squared coefficient of variation of the amounts used, zeros left out, over n.</summary>
    public static double SquaredVariation(IReadOnlyList<long> uses)
    {
        var amounts = uses.Where(use => use > 0).Select(use => (double)use).ToList();
        var mean = amounts.Average();
        return amounts.Average(amount => (amount - mean) * (amount - mean)) / (mean * mean);
    }
}
