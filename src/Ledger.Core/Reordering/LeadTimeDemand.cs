using System.Numerics;

namespace Ledger.Core.Reordering;

/// <summary>
/// How much is used until a delivery comes: the whole distribution, worked out and not drawn. Every past period is as
/// likely as the others, periods follow each other independently, and their sums are the convolution of one period's
/// distribution with itself. A part of a period is a whole one with that part's chance, so that lumps stay lumps.
/// <see cref="UseScale"/> brings it to the forecast.
/// </summary>
/// <remarks>
/// Amounts are counted in steps. The step is the greatest one that divides every amount used, and then nothing is
/// rounded. Where that would be too fine (millilitres to a thousandth), every period's amount is rounded up to a step
/// of the user's unit ÷ the number of periods: the sum is then less than one unit too high and never too low. Beyond
/// <see cref="MostSteps"/> the step grows, to the same side.
/// </remarks>
public sealed class LeadTimeDemand
{
    /// <summary>No more steps than this are counted.</summary>
    public const int MostSteps = 1 << 18;

    /// <summary>Amounts that are exceeded with less than this chance are not told apart.</summary>
    private const double Negligible = 1e-7;

    /// <summary>
    /// So many steps show where the negligible part begins, before the exact ones are counted up to there.
    /// </summary>
    private const int RoughSteps = 1024;

    /// <summary>Sums of some thousand chances differ by so much from what they are.</summary>
    private const double Rounding = 1e-11;

    private readonly double[] _upTo;
    private readonly double _step;

    private LeadTimeDemand(double[] upTo, double step, double mean) => (_upTo, _step, Mean) = (upTo, step, mean);

    /// <summary>What is used on average, in base units: the forecast for the lead time.</summary>
    public double Mean { get; }

    /// <summary>Works the distribution out.</summary>
    /// <param name="history">What was used in each period.</param>
    /// <param name="possibleDays">The lead times in days, each as likely as the others.</param>
    /// <param name="scale">How the past is brought to the forecast.</param>
    /// <param name="unit">The unit in which the answer has to be right, in base units.</param>
    public static LeadTimeDemand Of(DemandSeries history, IReadOnlyList<int> possibleDays,
        UseScale scale, long unit = 1)
    {
        var chances = ChancesOfPeriods(possibleDays, history.PeriodDays);
        var mean = history.Mean * scale.Often * scale.Amount * possibleDays.Average() / history.PeriodDays;
        var most = checked(history.Uses.Max() * (chances.Length - 1));
        if (most == 0)
            return new([1], 1, 0);

        var rough = Math.Max(1, most / RoughSteps);
        var limit = most;
        if (most > RoughSteps)
        {
            var upTo = Summed(history, chances, scale.Often, rough, most);
            limit = Math.Min(most, rough * (1L + Array.FindIndex(upTo, chance => chance >= 1 - Negligible)));
        }

        var step = Step(history.Uses, (long)Math.Floor(unit / ((chances.Length - 1) * Math.Max(1, scale.Amount))),
            limit);
        return new(Summed(history, chances, scale.Often, step, limit), step * scale.Amount, mean);
    }

    /// <summary>The least amount that suffices with at least that chance, in base units.</summary>
    public double Level(decimal service)
    {
        var at = Array.FindIndex(_upTo, chance => chance >= (double)service - Rounding);
        return (at < 0 ? _upTo.Length - 1 : at) * _step;
    }

    /// <summary>The chance with which an amount suffices.</summary>
    public double Reached(double amount) => amount < 0 ? 0
        : Math.Min(1, _upTo[(int)Math.Min(_upTo.Length - 1, Math.Floor(amount / _step + 1e-9))] + Rounding);

    /// <summary>
    /// With which chance a lead time has no period, one, two …: a part of a period counts with its share.
    /// </summary>
    private static double[] ChancesOfPeriods(IReadOnlyList<int> possibleDays, int periodDays)
    {
        var chances = new double[(possibleDays.Max() + periodDays - 1) / periodDays + 1];
        foreach (var days in possibleDays)
        {
            var (whole, rest) = Math.DivRem(days, periodDays);
            var share = (double)rest / periodDays;
            chances[whole] += (1 - share) / possibleDays.Count;
            if (rest > 0)
                chances[whole + 1] += share / possibleDays.Count;
        }

        return chances;
    }

    /// <summary>The step in base units, as told above.</summary>
    private static long Step(IReadOnlyList<long> uses, long enough, long limit)
    {
        var common = uses.Aggregate(0L, Gcd);
        return Math.Max(common >= enough || limit / common <= RoughSteps ? common : Math.Max(1, enough),
            limit / MostSteps);
    }

    private static long Gcd(long one, long other) => other == 0 ? one : Gcd(other, one % other);

    /// <summary>With which chance no more than no step, one, two … are used, up to a limit.</summary>
    private static double[] Summed(DemandSeries history, double[] chances, double often, long step, long limit)
    {
        var period = OnePeriod(history.Uses, often, step);
        var length = limit / step + chances.Length; // each period may be rounded up by a step
        var (sum, next) = (new double[length], new double[length]);
        var upTo = new double[length];
        sum[0] = 1;
        for (var count = 0; ; count++)
        {
            Add(sum, upTo, 0, chances[count]);
            if (count == chances.Length - 1)
                break;
            Array.Clear(next);
            foreach (var (steps, chance) in period)
                Add(sum, next, steps, chance);
            (sum, next) = (next, sum);
        }

        for (var at = 1; at < upTo.Length; at++)
            upTo[at] += upTo[at - 1];
        return upTo;
    }

    /// <summary>The steps that one period uses, with their chances.</summary>
    private static List<(int Steps, double Chance)> OnePeriod(IReadOnlyList<long> uses, double often, long step)
    {
        List<(int Steps, double Chance)> found = [.. uses.Where(use => use > 0)
            .GroupBy(use => (int)((use + step - 1) / step))
            .Select(alike => (alike.Key, often * alike.Count() / uses.Count))];
        found.Add((0, 1 - found.Sum(one => one.Chance)));
        return found;
    }

    /// <summary>
    /// Adds so many times one row to another, moved by some steps; what would lie beyond the end is left out.
    /// </summary>
    private static void Add(ReadOnlySpan<double> from, Span<double> to, int moved, double times)
    {
        if (moved >= to.Length || times == 0)
            return;
        from = from[..(to.Length - moved)];
        to = to[moved..];
        var at = 0;
        for (; at <= to.Length - Vector<double>.Count; at += Vector<double>.Count)
            (new Vector<double>(to[at..]) + times * new Vector<double>(from[at..])).CopyTo(to[at..]);
        for (; at < to.Length; at++)
            to[at] += times * from[at];
    }
}
