namespace Ledger.Core.Measures;

/// <summary>
/// Fisher's exact test of a table of two by two: how likely a difference is that is at least as large, if nothing but
/// chance made it. With the
/// totals given, the first cell is hypergeometric (R. A. Fisher, Statistical Methods for Research Workers, 5th edition,
/// Oliver and Boyd 1934, section 21.02). It is
/// exact for small counts, where approximate tests are not.
/// </summary>
public static class FisherExact
{
    /// <summary>As R does: what is as likely as what was seen, but for rounding, counts among what is at most as
    /// likely.</summary>
    private const double Equal = 1 + 1e-7;

    /// <summary>The chance of so many bad ones among these, or more, if they are no worse than the others.</summary>
    /// <param name="bad">Bad ones among these; from 0 to <paramref name="all"/>.</param>
    /// <param name="all">All of these.</param>
    /// <param name="otherBad">Bad ones among the others; from 0 to <paramref name="otherAll"/>.</param>
    /// <param name="otherAll">All of the others.</param>
    public static double Worse(long bad, long all, long otherBad, long otherAll)
    {
        var (least, weights) = Weights(bad, all, otherBad, otherAll);
        return Math.Min(1, weights.Skip((int)(bad - least)).Sum() / weights.Sum());
    }

    /// <summary>The chance of a difference in either direction that is at most as likely as this one.</summary>
    /// <inheritdoc cref="Worse"/>
    public static double Different(long bad, long all, long otherBad, long otherAll)
    {
        var (least, weights) = Weights(bad, all, otherBad, otherAll);
        var seen = weights[(int)(bad - least)];
        return Math.Min(1, weights.Where(weight => weight <= seen * Equal).Sum() / weights.Sum());
    }

    /// <summary>How often chance alone does it, in words: "once in 40".</summary>
    public static string InWords(double chance) => chance switch
    {
        >= 0.5 => "as likely as not",
        >= 0.3 => "1 time in 3",
        _ => $"once in {Scaled.ToText(Rounded(1 / chance), 0)}",
    };

    /// <summary>Rounded down to two figures, so that nothing is made rarer than it is; at most a million.</summary>
    private static decimal Rounded(double times)
    {
        var whole = (decimal)Math.Floor(Math.Min(times, 1_000_000));
        var step = 1m;
        while (whole / step >= 100)
            step *= 10;
        return Math.Floor(whole / step) * step;
    }

    /// <summary>
    /// The likelihood of every possible number of bad ones among these, each relative to the likeliest: so nothing
    /// grows too large, and only what cannot
    /// matter becomes nothing.
    /// </summary>
    private static (long Least, double[] Weights) Weights(long bad, long all, long otherBad, long otherAll)
    {
        if (bad < 0 || bad > all || otherBad < 0 || otherBad > otherAll)
            throw new ArgumentOutOfRangeException(nameof(bad),
                $"{bad} of {all} and {otherBad} of {otherAll} are no counts");
        var (allBad, total) = (bad + otherBad, all + otherAll);
        var (least, most) = (Math.Max(0, allBad - otherAll), Math.Min(all, allBad));
        var weights = new double[most - least + 1];
        var mode = Math.Clamp((allBad + 1) * (all + 1) / (total + 2), least, most) - least;
        weights[mode] = 1;
        for (var i = mode; i < most - least; i++)
            weights[i + 1] = weights[i] * Step(least + i);
        for (var i = mode; i > 0; i--)
            weights[i - 1] = weights[i] / Step(least + i - 1);
        return (least, weights);

        // How much likelier one more is: P(k + 1) / P(k).
        double Step(long k) => (double)(allBad - k) * (all - k) / ((double)(k + 1) * (otherAll - allBad + k + 1));
    }
}
