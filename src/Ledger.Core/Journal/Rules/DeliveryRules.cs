using Ledger.Core.Costing;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>
/// A delivery: for each line one lot, one container for each pack, and its landed cost. Nothing of what was paid for
/// all lines is lost.
/// </summary>
internal static class DeliveryRules
{
    private const int MostPacks = 10_000;
    private const int MostLines = 200;

    public static void Post(Delivery delivery, Draft draft)
    {
        Require.That(
            delivery.Lines.Count is > 0 and <= MostLines,
            $"a delivery has from 1 to {MostLines} lines, not {delivery.Lines.Count}");
        delivery = delivery with { Lines = [.. delivery.Lines.Select(line => Counted(line, draft))] };
        var said = RequirePaid(delivery, draft);
        var prices = said.Select(price => price ?? Money.Zero).ToList();
        var shared = new SharedCost(
            [.. delivery.Lines.Select((line, i) => (prices[i], line.Packs!.Value))],
            delivery.Discount, delivery.Shipping, delivery.Duty, delivery.Rate ?? 1);
        Require.NotNegative(shared.Total, "the cost after the discount");
        var came = delivery.Lines
            .Select((line, i) => Receive(
                line, new(shared.Lines[i], delivery.Currency, delivery.Rate), shared.Costs[i],
                said[i] is not null, draft)).ToList();
        if (delivery.Lines.Where((_, i) => said[i] is null).Select(line => draft.Item(line.Item).Code)
            .Distinct().ToList() is { Count: > 0 } unknown)
            draft.Remark(
                $"no price was said for {string.Join(" and ", unknown)}, so what it cost is unknown; put the price in "
                    + "when you know it, 0 for a gift");
        var name = delivery.Reference.Trim() is { Length: > 0 } reference ? $"delivery {reference}" : "delivery";
        draft.Summary = came is [var only]
            ? only
            : $"{name}, {shared.Total.Text(draft.Style)}: {string.Join("; ", came)}";
    }

    /// <summary>The line with its packs: those that were said, or all that are still to come of its order.</summary>
    private static DeliveryLine Counted(DeliveryLine line, Draft draft)
    {
        if (line.Packs is not null)
            return line;
        var item = draft.Item(line.Item);
        Require.That(line.Order is not null,
            $"how many packs of {item.Code} came is not said; say it, or name the order that they came from");
        return line with { Packs = draft.Holdings.Orders.Order(line.Order!)?.LineOf(item.Code) is { IsOpen: true } open
            ? open.OutstandingPacks
            : 1 };
    }

    /// <summary>The packs as text, when so many can come.</summary>
    public static string RequirePacks(decimal packs, string what)
    {
        var text = Scaled.ToText(packs, 6);
        Require.That(packs is > 0 and <= MostPacks, $"{what} must be more than 0 and at most {MostPacks}, not {text}");
        return text;
    }

    /// <summary>
    /// The price of a pack of each line, null where nobody says it, when every amount of the delivery can have been
    /// paid.
    /// </summary>
    private static List<Money?> RequirePaid(Delivery delivery, Draft draft)
    {
        Require.NotNegative(delivery.Discount, "the discount");
        Require.NotNegative(delivery.Shipping, "the shipping");
        Require.NotNegative(delivery.Duty, "the duty");
        foreach (var line in delivery.Lines)
        {
            RequirePacks(line.Packs!.Value, $"the packs of {draft.Item(line.Item).Code}");
            Require.That(
                line.ExpiresOn is null or { Year: >= 1900 and <= 2200 },
                $"the expiry date of {line.Item} must lie between 1900 and 2200");
            Require.NotNegative(line.Price ?? Money.Zero, $"the price of {line.Item}");
        }

        DeliveryCurrency.RequireRate(delivery.Rate);
        var prices = delivery.Lines.Select(line => OrderRules.PriceOf(line, delivery.Currency, draft)).ToList();
        DeliveryCurrency.Use(delivery.Currency, delivery.Rate, draft);
        DeliveryCurrency.RequirePayable(delivery.Currency, draft,
            [
                (delivery.Discount, "the discount"), (delivery.Shipping, "the shipping"), (delivery.Duty, "the duty"),
                .. delivery.Lines.Select((line, i) => (prices[i] ?? Money.Zero, $"the price of {line.Item}")),
            ]);
        var value = delivery.Lines.Select((line, i) => (prices[i] ?? Money.Zero).At(line.Packs!.Value))
            .Aggregate(Money.Zero, (sum, one) => sum + one);
        Require.That(
            delivery.Discount <= value,
            $"the discount, {delivery.Discount.Text(draft.Style)}, is more than the {value.Text(draft.Style)} that the "
                + "goods cost");
        return prices;
    }

    /// <summary>
    /// Puts the packs of a line on the shelf for what they cost there, and says what came in a few words.
    /// </summary>
    private static string Receive(DeliveryLine line, Paid paid, Money cost, bool isPriced, Draft draft)
    {
        var item = draft.Item(line.Item);
        var count = line.Packs!.Value;
        var packs = Scaled.ToText(count, 6);
        var full = decimal.ToInt64(decimal.Truncate(count));
        var part = Scaled.ToBase(count - full, item.Pack.Base);
        Require.That(part is not null, $"{packs} packs of {item.Pack} do not give whole {item.Unit.Plural()}");
        var quantity = item.Of(full * item.Pack.Base + part!.Value);
        var lot = new Lot(
            draft.NewLot(), item.Code, draft.Date, quantity, cost, line.Batch.Trim(), line.ExpiresOn,
            line.Storage.Trim()) { Formula = item.Formula, IsPriced = isPriced };
        draft.Add(new LotReceived(lot, paid));

        var left = (Quantity: quantity, lot.Cost);
        for (var pack = 0; pack < full; pack++)
            left = Shelve(item.Pack, isOpen: false, left, item, lot, draft);
        if (part > 0)
            Shelve(item.Of(part.Value), isOpen: true, left, item, lot, draft);

        OrderRules.Deliver(line, item, quantity, draft);
        return $"{packs} {Measures.Counted.Noun(count, "pack")} of {item.Code}, "
            + $"{quantity.ToText(draft.Style)} {(isPriced ? $"for {lot.Cost.Text(draft.Style)}" : "without a price")}";
    }

    /// <summary>Puts one container on the shelf, and says what of the lot is left for the next.</summary>
    private static (Quantity Quantity, Money Cost) Shelve(
        Quantity held, bool isOpen, (Quantity Quantity, Money Cost) left, Item item, Lot lot, Draft draft)
    {
        var number = draft.NextContainerNumber(item.Code);
        var (place, code) = (draft.NewPlace(), $"{item.Code}/{number}");
        var cost = left.Cost.PartOf(held.Base, left.Quantity.Base);
        draft.Add(new ContainerArrived(place, code, number, lot, item.Pack));
        if (isOpen)
            draft.Add(new ContainerOpened(place));
        draft.Add(new Movement(lot.Id, Places.Supplier, place, held.Base, cost));
        draft.Touch(new(place, code, lot, item.Pack, held, cost, isOpen ? draft.Date : null));
        return (left.Quantity - held, left.Cost - cost);
    }
}
