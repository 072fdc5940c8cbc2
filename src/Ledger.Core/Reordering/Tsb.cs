namespace Ledger.Core.Reordering;

/// <summary>
/// The method of Teunter, Syntetos and Babai for use that dies away: the amount is smoothed when something is used, the
/// chance of use in every period, so that the forecast falls while nothing is used. Teunter, Syntetos and Babai (2011),
/// Intermittent demand: linking forecasting to inventory obsolescence, European Journal of Operational Research 214,
/// 606-615.
/// </summary>
public static class Tsb
{
    /// <summary>The usual share of a surprise that is believed, for amounts and for the chance of use.</summary>
    public const double Alpha = 0.1;

    /// <summary>The forecast for any coming period from where a start rule begins.</summary>
    /// <param name="uses">What was used in each period, the oldest first.</param>
    /// <param name="alpha">The share of a surprise in the amount that is believed.</param>
    /// <param name="beta">The share of a surprise in the chance of use that is believed.</param>
    /// <param name="start">Where it starts.</param>
    public static double Forecast(IReadOnlyList<long> uses, double alpha, double beta, TsbStart start)
    {
        var (size, chance) = (start.Size, start.Chance);
        for (var period = start.From; period < uses.Count; period++)
        {
            var use = uses[period];
            if (use > 0)
                size += alpha * (use - size);
            chance += beta * ((use > 0 ? 1 : 0) - chance);
        }

        return size * chance;
    }
}

/// <summary>
/// The levels that TSB starts with. The rule moves the answer by several percent, so it is always named.
/// </summary>
/// <param name="Size">The amount.</param>
/// <param name="Chance">The chance of use in a period.</param>
/// <param name="From">The first period that moves the levels, counting from 0.</param>
public sealed record TsbStart(double Size, double Chance, int From)
{
    /// <summary>
    /// The first amount, and the share of periods with use over the whole history; the periods after the first use move
    /// the levels. The ledger's own rule.
    /// </summary>
    public static TsbStart FirstUseMeanChance(IReadOnlyList<long> uses) =>
        new(uses.FirstOrDefault(use => use > 0), Share(uses), FirstPosition(uses));

    /// <summary>The first amount, and one by its position; the periods after it move the levels.</summary>
    public static TsbStart FirstUse(IReadOnlyList<long> uses)
    {
        var position = FirstPosition(uses);
        return position > uses.Count ? new(0, 0, uses.Count) : new(uses[position - 1], 1.0 / position, position);
    }

    /// <summary>The average amount, and the share of periods with use; every period moves the levels.</summary>
    public static TsbStart Means(IReadOnlyList<long> uses) =>
        new(uses.Where(use => use > 0).Select(use => (double)use).DefaultIfEmpty().Average(), Share(uses), 0);

    /// <summary>The position of the first use, counting from 1; beyond the end when there is none.</summary>
    private static int FirstPosition(IReadOnlyList<long> uses) => 1 + uses.TakeWhile(use => use == 0).Count();

    private static double Share(IReadOnlyList<long> uses) =>
        uses.Count == 0 ? 0 : (double)uses.Count(use => use > 0) / uses.Count;
}
