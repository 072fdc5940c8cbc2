using Ledger.Core.Journal.Entries;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>
/// deliveries.csv: what arrived, and the stock a ledger starts with. The price is that of one pack; a part of a pack is an open one. Rows
/// with the same reference, such as an invoice's number, are one delivery: its discount, shipping, duty and tax stand in one of them and are
/// shared by value. A row without a reference is a delivery of its own.
/// </summary>
internal sealed class DeliveriesFile() : FileKind(
    "deliveries",
    ["date", "item", "packs"],
    ["price", "discount", "shipping", "duty", "currency", "rate", "expires", "batch", "storage", "order", "reference"])
{
    public override IEnumerable<SourcedEntry> Entries(IEnumerable<Row> rows, ImportTerms terms)
    {
        var keys = new RowKeys(Name, Columns);
        var all = rows.ToList();
        var named = RowGroup.By("reference", all.Where(row => row.TextOrNull("reference") is not null)).ToDictionary(group => group.Rows[0]);
        foreach (var row in all)
        {
            var group = row.TextOrNull("reference") is null ? new RowGroup("", [row]) : named.GetValueOrDefault(row);
            if (group is null)
                continue;
            var delivery = Delivery(group, group.Name.Length == 0 ? keys.Of(row) : $"{Name}:{group.Name}");
            if (group.IsGood)
                yield return new(group.Line, delivery);
        }
    }

    private static Delivery Delivery(RowGroup group, string key) => new()
    {
        Key = key,
        Reference = group.Name,
        Date = group.Saying("date").Date("date"),
        Lines = [.. group.Rows.Select(Line)],
        Discount = group.Saying("discount").Money("discount"),
        Shipping = group.Saying("shipping").Money("shipping"),
        Duty = group.Saying("duty").Money("duty"),
        Currency = group.Saying("currency").TextOrNull("currency")?.ToUpperInvariant(),
        Rate = group.Saying("rate").Number("rate"),
    };

    private static DeliveryLine Line(Row row) => new()
    {
        Item = row.Needed("item", "accepted is the code of an item"),
        Packs = row.Needed("packs", row.Number("packs")),
        Price = row.TextOrNull("price") is null ? null : row.Money("price"),
        ExpiresOn = row.DateOrNull("expires"),
        Batch = row.Text("batch"),
        Storage = row.Text("storage"),
        Order = row.TextOrNull("order"),
    };
}
