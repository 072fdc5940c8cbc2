using Ledger.Core.Journal;
using Ledger.Core.Measures;
using Ledger.Core.Planning;
using NodaTime;

namespace Ledger.Core.Reordering;

/// <summary>Use that is known beforehand: a planned session, a trip.</summary>
/// <param name="Item">The item's code.</param>
/// <param name="Date">The day it is needed.</param>
/// <param name="Quantity">How much.</param>
public sealed record KnownDemand(string Item, LocalDate Date, Quantity Quantity)
{
    /// <summary>What all open plans will use.</summary>
    public static IEnumerable<KnownDemand> OfPlans(Holdings holdings) =>
        PlannedDemand.Of(holdings).Select(planned => new KnownDemand(planned.Item, planned.On, planned.Quantity));
}
