using Ledger.Core.Journal;
using Ledger.Core.Measures;

namespace Ledger.Core.Planning;

/// <summary>So much of an item that a plan will use on a day.</summary>
/// <param name="Item">The item's code.</param>
/// <param name="On">The day.</param>
/// <param name="Quantity">How much.</param>
/// <param name="Plan">The plan's name.</param>
public sealed record PlannedDemand(string Item, LocalDate On, Quantity Quantity, string Plan)
{
    /// <summary>
    /// What all open plans will use, by day. A trip takes film only, even where it names the process that will develop
    /// it: that session is planned on its own. A plan whose day is past still counts, on its own day, until it is done
    /// or given up.
    /// </summary>
    public static IReadOnlyList<PlannedDemand> Of(Holdings holdings) =>
        [.. holdings.Plans.SelectMany(plan => plan.IsTrip ? Trip(plan, holdings) : Session(plan, holdings))];

    /// <summary>What all open plans together will use of each item.</summary>
    public static IReadOnlyDictionary<string, Quantity> Together(Holdings holdings) => Of(holdings)
        .GroupBy(one => one.Item)
        .ToDictionary(
            item => item.Key, item => item.Aggregate(holdings.Item(item.Key)!.Of(0), (sum, one) => sum + one.Quantity),
            StringComparer.OrdinalIgnoreCase);

    /// <summary>
    /// The film alone; sheets that are in holders or boxes of exposed sheets have left their box already.
    /// </summary>
    private static IEnumerable<PlannedDemand> Trip(Sessions.OpenPlan plan, Holdings holdings) => plan.Request.Sheets
        .Where(line => line.From is not { Length: > 0 })
        .GroupBy(line => line.Film, StringComparer.OrdinalIgnoreCase)
        .Where(lines => holdings.Item(lines.Key) is not null)
        .Select(lines => new PlannedDemand(
            holdings.Item(lines.Key)!.Code, plan.On, holdings.Item(lines.Key)!.Of(lines.Sum(line => (long)line.Count)),
            plan.Name));

    private static IEnumerable<PlannedDemand> Session(Sessions.OpenPlan plan, Holdings holdings) =>
        SessionPlanning.Of(plan.Request, holdings, plan.On) is Planned planned
            ? planned.Plan.Uses.Select(use => new PlannedDemand(use.Item.Code, plan.On, use.Needed, plan.Name))
            : Trip(plan, holdings);
}
