namespace Ledger.Core.Reordering;

/// <summary>
/// What may be used until a delivery comes, drawn from the item's own history: many times over, as many past periods as the lead time has
/// are drawn with replacement and added up. A part of a period is drawn whole with that part's probability, so that lumps stay lumps. The
/// draws are the same each time, and a longer lead time only adds to each of them.
/// </summary>
public sealed class LeadTimeDemand
{
    /// <summary>How often the lead time is drawn.</summary>
    public const int Times = 2000;

    private readonly long[] _totals;

    private LeadTimeDemand(long[] totals) => _totals = totals;

    /// <summary>What is used on average.</summary>
    public double Mean => _totals.Average();

    /// <summary>Draws the lead times.</summary>
    /// <param name="history">What was used in each period.</param>
    /// <param name="possibleDays">The lead times in days, each as likely as the others.</param>
    /// <param name="seed">Makes the draws repeatable.</param>
    /// <param name="keep">The chance with which a drawn use still happens: below 1 when use has died away.</param>
    public static LeadTimeDemand Drawn(DemandSeries history, IReadOnlyList<int> possibleDays, ulong seed, double keep = 1)
    {
        var uses = history.Uses.ToArray();
        var totals = new long[Times];
        for (var run = 0; run < Times; run++)
        {
            var draws = Draws.Of(seed, run);
            var days = possibleDays[draws.Below(possibleDays.Count)];
            var (whole, rest) = Math.DivRem(days, history.PeriodDays);
            long total = 0;
            for (var period = 0; period < whole; period++)
                total += Drawn(uses, keep, ref draws);
            if (rest > 0)
            {
                // The use is drawn before it is decided whether it counts: a longer rest then counts all that a shorter one does.
                var use = Drawn(uses, keep, ref draws);
                var isCounted = draws.Share() * history.PeriodDays < rest;
                total += isCounted ? use : 0;
            }

            totals[run] = total;
        }

        return new(totals);
    }

    /// <summary>The least amount that sufficed in at least that share of the draws.</summary>
    public long Level(decimal service)
    {
        var rank = decimal.ToInt32(Math.Ceiling(service * _totals.Length));
        return Ranked.At(_totals, Math.Clamp(rank, 1, _totals.Length) - 1);
    }

    private static long Drawn(long[] uses, double keep, ref Draws draws)
    {
        var use = uses[draws.Below(uses.Length)];
        return keep >= 1 || draws.Share() < keep ? use : 0;
    }
}
