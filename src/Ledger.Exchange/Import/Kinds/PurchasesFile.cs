using Ledger.Core.Journal.Entries;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>
/// purchases.csv: deliveries, and the stock a ledger starts with. The price is that of one pack; a part of a pack is an open one.
/// </summary>
internal sealed class PurchasesFile() : RowFileKind(
    "purchases",
    ["date", "item", "packs"],
    ["price", "discount", "shipping", "duty", "currency", "rate", "expires", "batch", "storage", "reference"])
{
    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms) => new Receipt
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
    };
}
