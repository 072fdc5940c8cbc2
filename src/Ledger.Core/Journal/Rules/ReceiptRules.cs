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
        var item = draft.Item(receipt.Item);
        var packs = Scaled.ToText(receipt.Packs, 6);
        Require.That(receipt.Packs is > 0 and <= MostPacks, $"the packs must be more than 0 and at most {MostPacks}, not {packs}");
        var full = decimal.ToInt64(decimal.Truncate(receipt.Packs));
        var part = Scaled.ToBase(receipt.Packs - full, item.Pack.Base);
        Require.That(part is not null, $"{packs} packs of {item.Pack} are no whole number of {item.Unit.Plural()}");
        Require.That(receipt.ExpiresOn is null or { Year: >= 1900 and <= 2200 }, "the printed date must lie between 1900 and 2200");

        UseCurrency(receipt, draft);
        var quantity = item.Of(full * item.Pack.Base + part!.Value);
        var lot = new Lot(
            draft.NewLot(), item.Code, receipt.Date, quantity, receipt.Landed.Total, receipt.Batch.Trim(), receipt.ExpiresOn,
            receipt.Storage.Trim()) { Formula = item.Formula };
        draft.Add(new LotReceived(lot, receipt));

        var number = draft.Holdings.LastContainerNumber(item.Code);
        var left = (Quantity: quantity, lot.Cost);
        for (var pack = 0; pack < full; pack++)
            left = Fill(item.Pack, isOpen: false, left, ++number, item, lot, draft);
        if (part > 0)
            Fill(item.Of(part.Value), isOpen: true, left, ++number, item, lot, draft);

        draft.Summary = $"{packs} {(receipt.Packs == 1 ? "pack" : "packs")} of {item.Code}, "
            + $"{quantity.ToText(draft.Style)} for {lot.Cost.Rounded()}";
    }

    /// <summary>Puts one container on the shelf, and says what of the lot is left for the next.</summary>
    private static (Quantity Quantity, Money Cost) Fill(
        Quantity held, bool isOpen, (Quantity Quantity, Money Cost) left, long number, Item item, Lot lot, Draft draft)
    {
        var (place, code) = (draft.NewPlace(), $"{item.Code}/{number}");
        var cost = left.Cost.PartOf(held.Base, left.Quantity.Base);
        draft.Add(new ContainerArrived(place, code, number, lot, item.Pack));
        if (isOpen)
            draft.Add(new ContainerOpened(place));
        draft.Add(new Movement(lot.Id, Places.Supplier, place, held.Base, cost));
        draft.Touch(new(place, code, lot, item.Pack, held, cost, isOpen ? draft.Date : null));
        return (left.Quantity - held, left.Cost - cost);
    }

    /// <summary>The first receipt names the ledger's currency; a later one in another needs the day's rate.</summary>
    private static void UseCurrency(Receipt receipt, Draft draft)
    {
        Require.NotNegative(receipt.Price, "the price");
        Require.NotNegative(receipt.Discount, "the discount");
        Require.NotNegative(receipt.Shipping, "the shipping");
        Require.NotNegative(receipt.Duty, "the duty");
        Require.That(receipt.Rate is null or (> 0 and < 1_000_000), "the rate must be more than 0 and less than a million");
        Require.NotNegative(receipt.Landed.Total, "the cost after the discount");
        var settings = draft.Holdings.Settings;
        if (receipt.Currency is not { } currency)
            return;
        if (settings.Currency.Length == 0)
        {
            Require.That(
                receipt.Rate is null or 1,
                $"the ledger has no currency yet, so a rate for {currency} means nothing; set the currency first");
            var named = settings.With("currency", currency);
            Require.That(named is not null, $"\"{currency}\" is no currency code; write three capital letters, such as EUR");
            draft.Add(new SettingChanged("currency", currency, named!));
        }
        else if (currency == settings.Currency)
            Require.That(receipt.Rate is null or 1, $"the ledger is kept in {currency}, so a purchase in {currency} needs no rate");
        else
            Require.That(
                receipt.Rate is not null,
                $"the ledger is kept in {settings.Currency}; a purchase in {currency} needs the rate, "
                + $"the {settings.Currency} for one {currency}");
    }
}
