using Ledger.Core.Journal.Entries;

namespace Ledger.Core.Journal.Rules;

/// <summary>A delivery of several items: a lot for each line, and nothing of what was paid for all of them is lost.</summary>
internal static class PurchaseRules
{
    private const int MostLines = 200;

    public static void Post(Purchase purchase, Draft draft)
    {
        var name = Require.Name(purchase.Name, "a purchase");
        Require.That(
            purchase.Lines.Count is > 0 and <= MostLines,
            $"a purchase has from 1 to {MostLines} lines, not {purchase.Lines.Count}");
        Require.NotNegative(purchase.Discount, "the discount");
        Require.NotNegative(purchase.Shipping, "the shipping");
        Require.NotNegative(purchase.Duty, "the duty");
        foreach (var line in purchase.Lines)
        {
            ReceiptRules.RequirePacks(line.Packs, $"the packs of {line.Item}");
            Require.NotNegative(line.Price, $"the price of {line.Item}");
        }

        PurchaseCurrency.RequireRate(purchase.Rate);
        PurchaseCurrency.Use(purchase.Currency, purchase.Rate, draft);
        PurchaseCurrency.RequirePayable(purchase.Currency, draft,
            [
                (purchase.Discount, "the discount"), (purchase.Shipping, "the shipping"), (purchase.Duty, "the duty"),
                .. purchase.Lines.Select(line => (line.Price, $"the price of {line.Item}")),
            ]);
        var value = purchase.Lines.Aggregate(Measures.Money.Zero, (sum, line) => sum + line.Price.At(line.Packs));
        Require.That(
            purchase.Discount <= value,
            $"the discount, {purchase.Discount.Rounded()}, is more than the {value.Rounded()} that the goods cost");

        var shared = purchase.Shared;
        var came = purchase.Lines.Select((line, i) =>
            ReceiptRules.Receive(purchase.Delivery(line, shared.Lines[i]), () => shared.Costs[i], draft)).ToList();
        draft.Summary = $"purchase {name}, {shared.Total.Rounded()}: {string.Join("; ", came)}";
    }
}
