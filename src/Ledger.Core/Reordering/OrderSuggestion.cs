using Ledger.Core.Measures;

namespace Ledger.Core.Reordering;

/// <summary>When to order and how much.</summary>
/// <param name="OrderBy">
/// The last day on which an order comes in time: the stock is not yet below the reorder point, and does not run out
/// before the order has come. When it is past, the order is due now and so many days late.
/// </param>
/// <param name="Packs">How many whole packs.</param>
/// <param name="IsNow">Whether the order is due today or late, and possible now.</param>
/// <param name="OpensOn">The day on which the order window opens; null without a window or within it.</param>
/// <param name="PacksBeforeRise">How many packs to buy before an announced price rise; zero when there is none or they
/// are not worth it.</param>
/// <param name="Saved">What those cost less than after the rise; nothing when no price is known.</param>
public sealed record OrderSuggestion(LocalDate OrderBy, long Packs, bool IsNow, LocalDate? OpensOn,
    long PacksBeforeRise, Money Saved)
{
    /// <summary>How many days ago the order would still have come in time; zero when it still does.</summary>
    /// <param name="today">The day of the reading.</param>
    public int DaysLate(LocalDate today) => Math.Max(0, Period.DaysBetween(OrderBy, today));

    /// <summary>The suggestion for a reading; null when nothing calls for an order.</summary>
    internal static OrderSuggestion? Of(ReorderReading reading)
    {
        var day = reading.IsDue ? reading.Today : reading.Path.ReachesOn(reading.ReorderPoint.Base);
        var last = reading.Path.LastChance(reading.LeadTime.Days);
        if ((day < last ? day : last ?? day) is not { } needed)
            return null;
        var (orderBy, opensOn, cover) = reading.Terms.WindowOpens is null
            ? (needed, null, Cover(reading))
            : InWindow(reading, needed);
        var packs = WholePacks(reading, Wanted(reading, orderBy, cover));
        var (before, saved) = BeforeRise(reading);
        return new(orderBy, packs, orderBy <= reading.Today && opensOn is null, opensOn, before, saved);
    }

    /// <summary>
    /// With a yearly window an order has to last until what is ordered in the next window comes, and the window before
    /// the need is the last one that helps.
    /// </summary>
    private static (LocalDate OrderBy, LocalDate? OpensOn, double Cover) InWindow(ReorderReading reading,
        LocalDate needed)
    {
        var terms = reading.Terms;
        var chance = terms.NextChance(reading.Today);
        while (true)
        {
            var days = terms.DaysToFollowingWindow(chance)!.Value;
            var following = chance.PlusDays(days);
            if (needed < following || days <= 0)
            {
                var orderBy = needed < chance && chance > reading.Today
                    ? chance
                    : needed < terms.LastChance(chance) ? needed : terms.LastChance(chance)!.Value;
                var cover = reading.Path.Position(LocalDate.Max(orderBy, reading.Today))
                    - reading.Path.Position(following);
                return (orderBy, chance > reading.Today ? chance : null, cover);
            }

            chance = following;
        }
    }

    /// <summary>
    /// What should be ordered beyond the reorder point: the economic quantity where its costs are known, else some
    /// weeks' use.
    /// </summary>
    private static double Cover(ReorderReading reading)
    {
        var terms = reading.Terms;
        if (terms is { OrderCost: { Millionths: > 0 } cost, HoldingThousandths: { } holding }
            && reading.LastPrice is { Pack.Millionths: > 0 } price)
        {
            var keeping = (double)price.Pack.Millionths / reading.Item.Pack.Base * holding / 1000;
            return new EconomicOrder(reading.PerDay * 365, cost.Millionths, keeping).Quantity;
        }

        return reading.PerDay * (terms.CoverDays ?? Stock.OrderTerms.UsualCoverDays);
    }

    /// <summary>What brings the stock on the day of the order up to the reorder point and the cover.</summary>
    private static double Wanted(ReorderReading reading, LocalDate orderBy, double cover) =>
        reading.ReorderPoint.Base + cover - reading.Path.Position(LocalDate.Max(orderBy, reading.Today));

    private static long NotYetCome(ReorderReading reading, LocalDate day) =>
        reading.Lines.Where(found => reading.ExpectedOn(found.Line) > day).Sum(found => found.Line.Outstanding.Base);

    /// <summary>
    /// Whole packs, one at least, and not more than can be used before they are past their life, if that is known.
    /// </summary>
    private static long WholePacks(ReorderReading reading, double wanted)
    {
        var pack = reading.Item.Pack.Base;
        var packs = Math.Max(1, NormalLeadTimeDemand.RoundedUp(wanted / pack));
        if (reading.Item.Keeping.SealedDays is { } life && reading.PerDay > 0)
            packs = Math.Min(packs, Math.Max(1, (long)Math.Floor(reading.PerDay * life / pack)));
        return packs;
    }

    /// <summary>
    /// Before a rise it pays to buy what the time after it would need: a year's use beyond the stock that is left by
    /// then.
    /// </summary>
    private static (long Packs, Money Saved) BeforeRise(ReorderReading reading)
    {
        if (reading.PriceRise is not { } rise || reading.PerDay <= 0)
            return (0, Money.Zero);
        var lastDay = rise.From.PlusDays(-1);
        var left = Math.Max(0, reading.Path.On(lastDay) + NotYetCome(reading, lastDay));
        var wanted = reading.ReorderPoint.Base + reading.PerDay * 365 - left;
        if (wanted <= 0)
            return (0, Money.Zero);
        var packs = WholePacks(reading, wanted);
        return (packs, reading.LastPrice is { } price ? rise.SavedOn(price.Pack.At(packs)) : Money.Zero);
    }
}
