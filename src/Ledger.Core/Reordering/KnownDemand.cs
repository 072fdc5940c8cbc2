using Ledger.Core.Journal;
using Ledger.Core.Measures;
using Ledger.Core.Planning;
using NodaTime;

namespace Ledger.Core.Reordering;

/// <summary>Use that is known beforehand: a planned session, a trip.</summary>
/// <param name="Item">The item's code.</param>
/// <param name="Date">The day it is needed.</param>
/// <param name="Quantity">How much.</param>
/// <param name="Plan">The plan's name.</param>
public sealed record KnownDemand(string Item, LocalDate Date, Quantity Quantity, string Plan)
{
    /// <summary>What all open plans will use.</summary>
    public static IEnumerable<KnownDemand> OfPlans(Holdings holdings) =>
        PlannedDemand.Of(holdings).Select(planned => new KnownDemand(planned.Item, planned.On, planned.Quantity, planned.Plan));

    /// <summary>What all open plans together will use of each item.</summary>
    public static IReadOnlyDictionary<string, Quantity> Planned(Holdings holdings) => OfPlans(holdings)
        .GroupBy(one => one.Item)
        .ToDictionary(
            item => item.Key, item => item.Aggregate(holdings.Item(item.Key)!.Of(0), (sum, one) => sum + one.Quantity),
            StringComparer.OrdinalIgnoreCase);
}
