using Ledger.Core.Journal.Entries;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>
/// purchases.csv: deliveries, and the stock a ledger starts with. The price is that of one pack; a part of a pack is an open one. Rows
/// that name the same purchase make one entry: its discount, shipping, duty and tax stand in one of them and are shared by value.
/// </summary>
internal sealed class PurchasesFile() : FileKind(
    "purchases",
    ["date", "item", "packs"],
    ["price", "discount", "shipping", "duty", "currency", "rate", "expires", "batch", "storage", "order", "purchase", "reference"])
{
    public override IEnumerable<SourcedEntry> Entries(IEnumerable<Row> rows, ImportTerms terms)
    {
        var keys = new RowKeys(Name, [.. Columns.Where(column => column != "purchase")]);
        var all = rows.ToList();
        var purchases = RowGroup.By("purchase", all.Where(row => row.Text("purchase").Length > 0))
            .ToDictionary(group => group.Rows[0]);
        foreach (var row in all)
        {
            if (purchases.TryGetValue(row, out var group))
            {
                var purchase = Purchase(group);
                if (group.IsGood)
                    yield return new(group.Line, purchase);
            }
            else if (row.Text("purchase").Length == 0)
            {
                var receipt = Receipt(row, keys);
                if (row.IsGood)
                    yield return new(row.Line, receipt);
            }
        }
    }

    private Purchase Purchase(RowGroup group) => new()
    {
        Key = $"{Name}:purchase {group.Name}",
        Name = group.Name,
        Date = group.Saying("date").Date("date"),
        Lines = [.. group.Rows.Select(Line)],
        Discount = group.Saying("discount").Money("discount"),
        Shipping = group.Saying("shipping").Money("shipping"),
        Duty = group.Saying("duty").Money("duty"),
        Currency = group.Saying("currency").TextOrNull("currency")?.ToUpperInvariant(),
        Rate = group.Saying("rate").Number("rate"),
    };

    private static PurchaseLine Line(Row row) => new()
    {
        Item = row.Needed("item", "accepted is the code of an item"),
        Packs = row.Needed("packs", row.Number("packs")),
        Price = row.Money("price"),
        ExpiresOn = row.DateOrNull("expires"),
        Batch = row.Text("batch"),
        Storage = row.Text("storage"),
        Order = row.TextOrNull("order"),
    };

    private static Receipt Receipt(Row row, RowKeys keys) => new()
    {
        Key = keys.Of(row),
        Date = row.Date("date"),
        Item = row.Needed("item", "accepted is the code of an item"),
        Packs = row.Needed("packs", row.Number("packs")),
        Price = row.Money("price"),
        Discount = row.Money("discount"),
        Shipping = row.Money("shipping"),
        Duty = row.Money("duty"),
        Currency = row.TextOrNull("currency")?.ToUpperInvariant(),
        Rate = row.Number("rate"),
        ExpiresOn = row.DateOrNull("expires"),
        Batch = row.Text("batch"),
        Storage = row.Text("storage"),
        Order = row.TextOrNull("order"),
    };
}
