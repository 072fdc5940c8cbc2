using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>Orders: placed, changed before they come, cancelled, and delivered by a delivery that names them.</summary>
internal static class OrderRules
{
    private const int MostPacks = 10_000;

    public static void Post(OrderPlacement placement, Draft draft)
    {
        var code = Require.Name(placement.Order, "an order");
        if (draft.Past.HasOrder(code))
            throw new RefusedException(RefusalKind.AlreadyThere,
                $"there was an order {code} already; give the new one a name of its own");
        Require.That(placement.Lines.Count > 0, $"order {code} names no item; name at least one");
        var lines = placement.Lines.Select(line => ToLine(line, placement, draft)).ToList();
        Require.That(
            lines.Select(line => line.Item).Distinct().Count() == lines.Count,
            $"order {code} names an item twice; put its packs together");
        foreach (var line in lines)
            ShowOnOrder(line.Item, line.Ordered, draft);
        draft.Add(new OrderPlaced(new(code, draft.Date, placement.Supplier.Trim(), placement.IsPrepaid, lines)));
        draft.Summary = $"order {code}: {string.Join(", ", lines.Select(Text))}"
            + $"{(placement.Supplier.Trim() is { Length: > 0 } from ? $" from {from}" : "")}"
            + $"{(placement.IsPrepaid ? ", prepaid" : "")}";
    }

    public static void Post(OrderChange change, Draft draft)
    {
        var order = Open(change.Order, draft);
        Require.That(
            change.ExpectedOn is not null || change.IsBackOrdered is not null || change.Packs is not null
                || change.Price is not null,
            "say what is new: the day it is expected, that it is back-ordered, how many packs, or the price of a pack");
        if (change.ExpectedOn is { } expected)
            Require.That(expected >= order.PlacedOn,
                $"order {order.Code} was placed on {Dates.Text(order.PlacedOn)}; it cannot be expected before");
        var lines = Named(change.Item, order).ToList();
        if (change.Packs is not null || change.Price is not null)
            Require.That(
                lines.Count == 1,
                $"order {order.Code} waits for {string.Join(", ", lines.Select(line => line.Item))}; say of which the "
                    + "packs or the price are new");
        Require.NotNegative(change.Price ?? Money.Zero, $"the price of {lines[0].Item}");
        foreach (var line in lines)
            Change(line, change, order, draft);
        string?[] news =
        [
            change.IsBackOrdered switch { true => "back-ordered", false => "no longer back-ordered", _ => null },
            change.ExpectedOn is { } day ? $"expected on {Dates.Text(day)}" : null,
            change.Packs is { } now ? $"{Counted.Of(now, "pack")} instead of {lines[0].Packs}" : null,
            change.Price is { } cost
                ? $"a pack costs {cost.Text(draft.Style)} instead of {lines[0].Price.Text(draft.Style)}"
                : null,
        ];
        draft.Summary = $"order {order.Code}: {string.Join(", ", lines.Select(line => line.Item))} "
            + string.Join(", ", news.OfType<string>());
    }

    public static void Post(OrderCancellation cancellation, Draft draft)
    {
        var reason = Require.Reason(cancellation.Reason);
        var order = Open(cancellation.Order, draft);
        var lines = Named(cancellation.Item, order).ToList();
        foreach (var line in lines)
        {
            ShowOnOrder(line.Item, line.Outstanding with { Base = -line.Outstanding.Base }, draft);
            draft.Add(new OrderLineChanged(order.Code, line.Item, null, null, IsCancelled: true));
        }

        draft.Summary =
            $"cancelled of order {order.Code}: {string.Join(", ", lines.Select(line => Outstanding(line)))}: {reason}";
        if (order.IsPrepaid)
            draft.Remark($"order {order.Code} was prepaid: see that the money comes back");
    }

    public static void Post(PriceRiseNotice notice, Draft draft)
    {
        var item = draft.Item(notice.Item);
        var thousandths = Scaled.ToBase(notice.Percent, 10);
        Require.That(
            thousandths is > 0 and <= 10_000,
                $"the rise of {item.Code} must be from 0.1 to 1000 percent in tenths, not "
                    + $"{Scaled.ToText(notice.Percent, 6)}");
        Require.That(notice.From > draft.Date,
            $"the new price must begin after {Dates.Text(draft.Date)}, not on {Dates.Text(notice.From)}");
        var rise = new PriceRise(item.Code, notice.From, (int)thousandths!.Value);
        draft.Add(new PriceRiseAnnounced(rise));
        draft.Summary = $"price rise of {item.Code} by {rise.PercentText} from {Dates.Text(rise.From)}";
    }

    public static void Post(OrderTermsSetting setting, Draft draft)
    {
        var item = draft.Item(setting.Terms.Item);
        var terms = setting.Terms with { Item = item.Code };
        Require.That(terms.CoverDays is null or (> 0 and <= 3650),
            $"an order of {item.Code} must last from 1 to 3650 days");
        Require.That((terms.WindowOpens is null) == (terms.WindowCloses is null),
            "an order window needs its first and its last day");
        Require.NotNegative(terms.OrderCost ?? Money.Zero, "the cost of an order");
        Require.That(terms.HoldingThousandths is null or (> 0 and <= 10_000),
            "the cost of keeping must be more than 0 and at most 1000 percent");
        draft.Add(new OrderTermsSet(terms));
        draft.Summary = $"order terms of {item.Code}";
    }

    /// <summary>
    /// The price of a pack: as said, else that of the order the line names; null when neither says one. Orders are
    /// priced in the ledger's currency.
    /// </summary>
    public static Money? PriceOf(DeliveryLine delivered, string? currency, Draft draft)
    {
        if (delivered.Price is { } said)
            return said;
        if (delivered.Order is not { Length: > 0 } named)
            return null;
        var order = Open(named, draft);
        var line = Named(draft.Item(delivered.Item).Code, order).Single();
        Require.That(
            currency is null || currency == draft.Holdings.Settings.Currency,
            $"order {order.Code} says no price in {currency}; say what a pack of {line.Item} cost");
        if (line.Price == Money.Zero)
            return null;
        draft.Remark($"price {line.Price.Text(draft.Style)} taken from order {order.Code}");
        return line.Price;
    }

    /// <summary>A delivery that names an order closes that much of it.</summary>
    public static void Deliver(DeliveryLine delivered, Item item, Quantity quantity, Draft draft)
    {
        if (delivered.Order is not { Length: > 0 } named)
        {
            if (draft.Holdings.Orders.LinesOf(item.Code).Select(found => found.Order.Code)
                .ToList() is { Count: > 0 } waiting)
                draft.Remark(
                    $"{string.Join(" and ", waiting.Select(code => $"order {code}"))} waits for {item.Code}; "
                    + "a delivery that names the order closes it");
            return;
        }

        var order = Open(named, draft);
        var line = Named(item.Code, order).Single();
        ShowOnOrder(line.Item, line.Outstanding with { Base = -Math.Min(quantity.Base, line.Outstanding.Base) }, draft);
        draft.Add(new OrderDelivered(order.Code, line.Item, quantity));
        if (quantity > line.Outstanding)
            draft.Remark($"order {order.Code} waited for {line.Outstanding.ToText(draft.Style)} of {item.Code} only");
        else if (quantity < line.Outstanding)
            draft.Remark(
                $"{(line.Outstanding - quantity).ToText(draft.Style)} of {item.Code} are still to come of order "
                    + $"{order.Code}");
    }

    private static OrderLine ToLine(OrderedPacks ordered, OrderPlacement placement, Draft draft)
    {
        var item = draft.Item(ordered.Item);
        Require.That(ordered.Packs is > 0 and <= MostPacks,
            $"the packs of {item.Code} must be from 1 to {MostPacks}, not {ordered.Packs}");
        Require.NotNegative(ordered.Price, $"the price of {item.Code}");
        Require.That(
            ordered.ExpectedOn is null || ordered.ExpectedOn >= placement.Date,
            $"{item.Code} cannot be expected before the order of {Dates.Text(placement.Date)}");
        var expected = ordered.ExpectedOn ?? (item.LeadTimeDays is { } days ? draft.Date.PlusDays(days) : null);
        return new(
            item.Code, ordered.Packs, item.Of(item.Pack.Base * ordered.Packs), ordered.Price,
            expected, ordered.IsBackOrdered, item.Of(0),
                IsCancelled: false);
    }

    private static void Change(OrderLine line, OrderChange change, Order order, Draft draft)
    {
        Quantity? ordered = change.Packs is { } packs ? Reordered(line, packs, order) : null;
        if (ordered is { } now)
            ShowOnOrder(line.Item, now - line.Ordered, draft);
        if (change.ExpectedOn is { } day)
            draft.Show($"{line.Item} expected", line.ExpectedOn is { } before ? Dates.Text(before) : "-",
                Dates.Text(day));
        draft.Add(new OrderLineChanged(order.Code, line.Item, change.ExpectedOn, change.IsBackOrdered,
            IsCancelled: false)
        {
            Ordered = ordered is { } hold ? (change.Packs!.Value, hold) : null,
            Price = change.Price,
        });
    }

    private static void ShowOnOrder(string item, Quantity change, Draft draft)
    {
        var before = draft.Holdings.Orders.OnOrder(draft.Item(item));
        draft.Show($"{item} on order", before.ToText(draft.Style), (before + change).ToText(draft.Style));
    }

    /// <summary>What so many packs hold, of the size that was ordered. Something must be still to come.</summary>
    private static Quantity Reordered(OrderLine line, int packs, Order order)
    {
        Require.That(packs is > 0 and <= MostPacks,
            $"the packs of {line.Item} must be from 1 to {MostPacks}, not {packs}");
        var ordered = line.Ordered with { Base = line.Ordered.Base / line.Packs * packs };
        Require.That(
            ordered > line.Delivered,
            $"{line.Delivered} of {line.Item} have come of order {order.Code} already; to have no more of it, cancel "
                + "the rest");
        return ordered;
    }

    private static Order Open(string code, Draft draft)
    {
        var order = draft.Holdings.Orders.Order(code) ?? throw new RefusedException(
            RefusalKind.Unknown,
            $"no order \"{code}\" is open; "
                + $"{(draft.Holdings.Orders.Open.Select(order => order.Code).ToList() is { Count: > 0 } open
                ? $"open: {string.Join(", ", open)}" : "none is")}");
        Require.That(order.PlacedOn <= draft.Date,
            $"order {order.Code} was placed on {Dates.Text(order.PlacedOn)}, after {Dates.Text(draft.Date)}; date the "
                + "entry then or later");
        return order;
    }

    private static IEnumerable<OrderLine> Named(string? item, Order order)
    {
        if (item is not { Length: > 0 })
            return order.OpenLines;
        var line = order.LineOf(item) is { IsOpen: true } open ? open : throw new RefusedException(
            RefusalKind.Unknown,
            $"order {order.Code} waits for no {item}; still to come: "
                + $"{string.Join(", ", order.OpenLines.Select(line => line.Item))}");
        return [line];
    }

    private static string Text(OrderLine line) => $"{Counted.Of(line.Packs, "pack")} of {line.Item}";

    private static string Outstanding(OrderLine line) => $"{line.Outstanding} of {line.Item}";
}
