namespace Ledger.Core.Reordering;

/// <summary>
/// What was used of an item, period by period. The periods end with the day of the reading, so that the last one is
/// whole; the oldest one begins with or before the item's first delivery. A period without use is a zero, and counts.
/// </summary>
/// <param name="Item">The item's code.</param>
/// <param name="PeriodDays">The length of a period.</param>
/// <param name="LastDay">The last day of the last period.</param>
/// <param name="Uses">What was used in each period, in base units, the oldest first.</param>
public sealed record DemandSeries(string Item, int PeriodDays, LocalDate LastDay, IReadOnlyList<long> Uses)
{
    /// <summary>How many periods there are.</summary>
    public int Periods => Uses.Count;

    /// <summary>In how many of them something was used.</summary>
    public int PeriodsWithUse => Uses.Count(use => use > 0);

    /// <summary>What was used in a period on average, those without use counted in.</summary>
    public double Mean => Periods == 0 ? 0 : Uses.Average();

    /// <summary>The standard deviation of a period's use (n - 1); zero for fewer than two periods.</summary>
    public double Deviation
    {
        get
        {
            var mean = Mean;
            return Periods < 2 ? 0 : Math.Sqrt(Uses.Sum(use => (use - mean) * (use - mean)) / (Periods - 1));
        }
    }

    /// <summary>How many periods have gone by since the last one with use; all of them when there was none.</summary>
    public int PeriodsSinceUse => Periods - 1 - LastUse;

    private int LastUse
    {
        get
        {
            for (var i = Periods - 1; i >= 0; i--)
                if (Uses[i] > 0)
                    return i;
            return -1;
        }
    }
}
