using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Reordering;

namespace Ledger.Core.Notices;

/// <summary>What needs the user about buying: orders that are late, orders to place, prices that will rise.</summary>
internal static class BuyingNotices
{
    /// <summary>The orders that should have come by now.</summary>
    public static IEnumerable<Notice> LateOrders(Holdings holdings)
    {
        foreach (var order in holdings.Orders.Open)
            foreach (var line in order.OpenLines.Where(line => line.IsLate(holdings.AsOf)))
            {
                var style = holdings.Settings.Style;
                var days = Period.DaysBetween(line.ExpectedOn!.Value, holdings.AsOf);
                var came = line.IsPartDelivered
                    ? $"{line.Delivered.ToText(style)} of {line.Ordered.ToText(style)} were delivered"
                    : "nothing was delivered so far";
                yield return new(
                    NoticeKind.OrderLate, Severity.Soon, line.Item,
                    $"order {order.Code}: {line.Outstanding.ToText(style)} of {line.Item} "
                    + $"{(line.Outstanding.Base == 1 ? "is" : "are")} {Counted.Of(days, "day")} late",
                    $"placed {Dates.Text(order.PlacedOn)}"
                        + $"{(order.Supplier.Length > 0 ? $" with {order.Supplier}" : "")}, expected "
                        + $"{Dates.Text(line.ExpectedOn.Value)}{(line.IsBackOrdered ? ", back-ordered" : "")}"
                        + $"{(order.IsPrepaid ? ", prepaid" : "")}; {came}",
                    $"ask {(order.Supplier.Length > 0 ? order.Supplier : "the supplier")}, then enter the new date or "
                        + "cancel the rest",
                    line.ExpectedOn);
            }
    }

    /// <summary>
    /// The items to order now or within the days of warning. Below the minimum, its own notice tells it.
    /// </summary>
    public static IEnumerable<Notice> OrdersToPlace(Holdings holdings, IEnumerable<ReorderReading> readings)
    {
        foreach (var reading in readings)
        {
            if (reading.Suggestion is not { } suggestion
                || Period.DaysBetween(holdings.AsOf, suggestion.OrderBy) > holdings.Settings.WarnDays)
                continue;
            if (reading.Item.MinimumOnHand is { } minimum && reading.Usable < minimum)
                continue;
            yield return new(
                NoticeKind.OrderDue, RunsOutFirst(reading) ? Severity.Now : Severity.Soon, reading.Item.Code,
                suggestion.IsNow ? $"order {reading.Item.Code} now{reading.LateText}"
                    : $"order {reading.Item.Code} by {Dates.Text(suggestion.OrderBy)}",
                reading.Basis, Order(reading, suggestion), suggestion.OrderBy);
        }
    }

    /// <summary>The prices that will rise, with what it pays to buy before.</summary>
    public static IEnumerable<Notice> PriceRises(Holdings holdings, IReadOnlyCollection<ReorderReading> readings)
    {
        foreach (var rise in holdings.Orders.PriceRises)
        {
            var reading = readings.FirstOrDefault(reading => reading.Item.Code == rise.Item);
            var suggestion = reading?.Suggestion;
            var lastDay = rise.From.PlusDays(-1);
            yield return new(
                NoticeKind.PriceRise,
                Period.DaysBetween(holdings.AsOf, lastDay) <= holdings.Settings.WarnDays ? Severity.Soon
                    : Severity.Note, rise.Item,
                $"{rise.Item} costs {rise.PercentText} more from {Dates.Text(rise.From)}",
                suggestion is { PacksBeforeRise: > 0 }
                    ? $"{Counted.Of(suggestion.PacksBeforeRise, "pack")} at the old price last for the year after at "
                        + "the present use"
                        + Saving(suggestion, holdings)
                    : reading is { PerDay: > 0 } ? "at the present use buying ahead saves nothing"
                    : "too little was used so far to say what buying ahead saves",
                suggestion is { PacksBeforeRise: > 0 }
                    ? $"order {Counted.Of(suggestion.PacksBeforeRise, "pack")} by {Dates.Text(lastDay)}"
                    : "nothing to do", lastDay);
        }
    }

    /// <summary>
    /// The step that settles low stock: wait for what is on order where that suffices, otherwise order so many packs.
    /// </summary>
    public static string Step(ReorderReading reading)
    {
        if (!reading.IsDue && reading.Lines is [var first, ..])
            return first.Line.IsLate(reading.Today)
                ? $"ask when order {first.Order.Code} comes; it was expected {Dates.Text(first.Line.ExpectedOn!.Value)}"
                : "wait for order "
                    + $"{first.Order.Code}{(first.Line.ExpectedOn is { } day ? $", expected {Dates.Text(day)}" : "")}";
        return reading.Suggestion is { } suggestion
            ? Order(reading, suggestion)
            : $"order {reading.Item.Name}{Takes(reading)}";
    }

    private static string Order(ReorderReading reading, OrderSuggestion suggestion)
    {
        var when = suggestion.OpensOn is { } opens ? $" when the order window opens on {Dates.Text(opens)}" : "";
        return $"order {Counted.Of(suggestion.Packs, "pack")} of {reading.Item.Name}{when}"
            + $"{(suggestion.IsNow ? " now" : "")}{Takes(reading)}";
    }

    private static string Takes(ReorderReading reading) =>
        reading.LeadTime.Source == LeadTimeSource.Assumed
            ? ""
            : $"; it takes {Counted.Of(reading.LeadTime.Days, "day")}";

    /// <summary>Whether nothing will be left before an order of today could come.</summary>
    private static bool RunsOutFirst(ReorderReading reading) =>
        reading.RunsOutOn <= reading.Today.PlusDays(reading.LeadTime.Days);

    private static string Saving(OrderSuggestion suggestion, Holdings holdings) =>
        suggestion.Saved == Money.Zero
            ? ""
            : $", and cost {suggestion.Saved.Text(holdings.Settings.Style)} "
            + $"{holdings.Settings.Currency} less".TrimEnd();
}
