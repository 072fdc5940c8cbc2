using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>A delivery: one lot, one container for each pack, and its landed cost.</summary>
internal static class ReceiptRules
{
    private const int MostPacks = 10_000;

    public static void Post(Receipt receipt, Draft draft)
    {
        var priced = OrderRules.Priced(receipt, draft);
        draft.Summary = Receive(priced, () => Landed(priced, draft), draft);
    }

    /// <summary>Puts the packs on the shelf for what they cost there, and says what came in a few words.</summary>
    public static string Receive(Receipt receipt, Func<Money> landed, Draft draft)
    {
        var item = draft.Item(receipt.Item);
        var packs = RequirePacks(receipt.Packs);
        var full = decimal.ToInt64(decimal.Truncate(receipt.Packs));
        var part = Scaled.ToBase(receipt.Packs - full, item.Pack.Base);
        Require.That(part is not null, $"{packs} packs of {item.Pack} are no whole number of {item.Unit.Plural()}");
        Require.That(receipt.ExpiresOn is null or { Year: >= 1900 and <= 2200 }, "the printed date must lie between 1900 and 2200");
        var cost = landed();
        var quantity = item.Of(full * item.Pack.Base + part!.Value);
        var lot = new Lot(
            draft.NewLot(), item.Code, receipt.Date, quantity, cost, receipt.Batch.Trim(), receipt.ExpiresOn,
            receipt.Storage.Trim()) { Formula = item.Formula };
        draft.Add(new LotReceived(lot, receipt));

        var left = (Quantity: quantity, lot.Cost);
        for (var pack = 0; pack < full; pack++)
            left = Fill(item.Pack, isOpen: false, left, item, lot, draft);
        if (part > 0)
            Fill(item.Of(part.Value), isOpen: true, left, item, lot, draft);

        OrderRules.Deliver(receipt, item, quantity, draft);
        return $"{packs} {(receipt.Packs == 1 ? "pack" : "packs")} of {item.Code}, "
            + $"{quantity.ToText(draft.Style)} for {lot.Cost.Rounded()}";
    }

    private static Money Landed(Receipt receipt, Draft draft)
    {
        Require.NotNegative(receipt.Price, "the price");
        Require.NotNegative(receipt.Discount, "the discount");
        Require.NotNegative(receipt.Shipping, "the shipping");
        Require.NotNegative(receipt.Duty, "the duty");
        PurchaseCurrency.RequireRate(receipt.Rate);
        Require.NotNegative(receipt.Landed.Total, "the cost after the discount");
        PurchaseCurrency.Use(receipt.Currency, receipt.Rate, draft);
        PurchaseCurrency.RequirePayable(
            receipt.Currency, draft,
            (receipt.Price, "the price"), (receipt.Discount, "the discount"),
            (receipt.Shipping, "the shipping"), (receipt.Duty, "the duty"));
        return receipt.Landed.Total;
    }

    /// <summary>Puts one container on the shelf, and says what of the lot is left for the next.</summary>
    private static (Quantity Quantity, Money Cost) Fill(
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

    /// <summary>The packs as text, when so many can come.</summary>
    public static string RequirePacks(decimal packs, string what = "the packs")
    {
        var text = Scaled.ToText(packs, 6);
        Require.That(packs is > 0 and <= MostPacks, $"{what} must be more than 0 and at most {MostPacks}, not {text}");
        return text;
    }
}
