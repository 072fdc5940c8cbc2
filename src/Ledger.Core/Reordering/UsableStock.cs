using Ledger.Core.Measures;
using Ledger.Core.Planning;
using Ledger.Core.Stock;

namespace Ledger.Core.Reordering;

/// <summary>What can be used before it expires: stock that will expire before it is used does not count.</summary>
public static class UsableStock
{
    /// <summary>The usable part of what is on the shelf, in base units.</summary>
    /// <param name="shelf">The item's containers with their last good days.</param>
    /// <param name="perDay">What a day uses on average; zero when it is not known, so that nothing is left out.</param>
    /// <param name="known">What is planned: it uses what the usual use would leave to expire.</param>
    public static long Of(ShelfReading shelf, double perDay, IReadOnlyList<PlannedDemand> known)
    {
        long sum = 0;
        foreach (var container in shelf.Containers.Where(container => container.IsUsable)
            .OrderBy(container => container.GoodUntil?.Date ?? LocalDate.MaxIsoValue))
        {
            sum += container.Container.Drawable(shelf.Item.DeadVolume).Base;
            if (perDay > 0 && container.GoodUntil is { } good)
                sum = Math.Min(sum, Math.Max(
                    WholeUnits(perDay * (good.DaysLeft(container.Today) + 1), shelf.Item.Unit.BasePerUnit()),
                    Planned(known, good.Date)));
        }

        return sum;
    }

    /// <summary>Rounded down: a statistic has no thousandths of a millilitre.</summary>
    private static long WholeUnits(double amount, long perUnit) =>
        (long)Math.Min(Math.Floor(amount / perUnit), long.MaxValue / perUnit / 2) * perUnit;

    private static long Planned(IReadOnlyList<PlannedDemand> known, LocalDate until) =>
        known.Where(one => one.On <= until).Sum(one => one.Quantity.Base);
}
