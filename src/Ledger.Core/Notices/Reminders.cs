using Ledger.Core.Baths;
using Ledger.Core.Journal;
using Ledger.Core.Keeping;
using Ledger.Core.Measures;
using Ledger.Core.Reordering;
using Ledger.Core.Stock;

namespace Ledger.Core.Notices;

/// <summary>
/// The days to come that a calendar should hold: ends of bottles, boxes and baths, days to order, deliveries, price
/// rises, planned sessions and trips.
/// </summary>
public static class Reminders
{
    /// <summary>The reminders from the day that the holdings stand for on, the earliest first.</summary>
    public static IReadOnlyList<Reminder> Of(Holdings holdings, IEnumerable<ReorderReading> reorder) =>
    [
        .. Containers(holdings).Concat(Baths(holdings)).Concat(Orders(reorder)).Concat(Deliveries(holdings))
            .Concat(PriceRises(holdings))
            .Concat(Plans(holdings))
            .Where(reminder => reminder.Date >= holdings.AsOf)
            .Select(reminder =>
                reminder with { DaysAhead = Math.Min(reminder.DaysAhead,
                    Period.DaysBetween(holdings.AsOf, reminder.Date)) })
            .OrderBy(reminder => reminder.Date)
            .ThenBy(reminder => reminder.Kind)
            .ThenBy(reminder => reminder.Subject, StringComparer.OrdinalIgnoreCase),
    ];

    private static IEnumerable<Reminder> Containers(Holdings holdings)
    {
        foreach (var item in holdings.ItemsInUse)
            foreach (var reading in new ShelfReading(item, holdings.ContainersOf(item.Code), holdings.AsOf).Containers)
                if (reading.GoodUntil is { } good)
                    yield return new(
                        ReminderKind.GoodUntil, reading.Container.Code, good.Date,
                        $"{reading.Container.Code} is good until today",
                        $"{item.Name}, {reading.Container.Held.ToText(holdings.Settings.Style)} left on "
                            + $"{Dates.Text(holdings.AsOf)}; "
                        + good.Reason, 14);
    }

    private static IEnumerable<Reminder> Baths(Holdings holdings)
    {
        foreach (var bath in holdings.Baths)
            if (new BathReading(bath, holdings.AsOf).GoodUntil is { } good)
                yield return new(
                    ReminderKind.BathGoodUntil, bath.Code, good.Date, $"Bath {bath.Code} is good until today",
                    $"{bath.Item}, mixed {Dates.Text(bath.MixedOn)}; {good.Rule.Name()}", 7);
    }

    private static IEnumerable<Reminder> Orders(IEnumerable<ReorderReading> reorder)
    {
        foreach (var reading in reorder)
            if (reading.Suggestion is { } suggestion)
                yield return new(
                    ReminderKind.OrderBy, reading.Item.Code, LocalDate.Max(suggestion.OrderBy, reading.Today),
                    $"Order {Counted.Of(suggestion.Packs, "pack")} of {reading.Item.Name}", reading.Basis, 1);
    }

    private static IEnumerable<Reminder> Deliveries(Holdings holdings)
    {
        foreach (var order in holdings.Orders.Open)
            foreach (var line in order.OpenLines)
                if (line.ExpectedOn is { } day)
                    yield return new(
                        ReminderKind.Delivery, $"{order.Code}/{line.Item}", day,
                        $"{line.Outstanding.ToText(holdings.Settings.Style)} of {line.Item} expected",
                        $"order {order.Code}, placed {Dates.Text(order.PlacedOn)}"
                        + $"{(order.Supplier.Length > 0 ? $" with {order.Supplier}" : "")}; "
                        + line.State(holdings.AsOf), 0);
    }

    private static IEnumerable<Reminder> Plans(Holdings holdings)
    {
        foreach (var plan in holdings.Plans)
            yield return new(
                plan.IsTrip ? ReminderKind.Trip : ReminderKind.Session, plan.Name, plan.On,
                $"{(plan.IsTrip ? "Trip" : "Session")} {plan.Name}: {Counted.Of(plan.Sheets, "sheet")}",
                string.Join(", ",
                    plan.Request.Sheets.Select(line => $"{line.Count} {line.Film} {line.Group}".TrimEnd()))
                + (plan.IsTrip ? "" : $"; `plan session --from-plan {plan.Name}` shows what it needs"), 1);
    }

    private static IEnumerable<Reminder> PriceRises(Holdings holdings)
    {
        foreach (var rise in holdings.Orders.PriceRises)
            yield return new(
                ReminderKind.PriceRise, rise.Item, rise.From.PlusDays(-1), $"Last day of the old price of {rise.Item}",
                $"{rise.PercentText} more from {Dates.Text(rise.From)}", 14);
    }
}
