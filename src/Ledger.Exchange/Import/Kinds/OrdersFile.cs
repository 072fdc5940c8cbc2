using Ledger.Core.Journal.Entries;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>
/// orders.csv: what was ordered. The rows of one order make one entry; its date stands in one of them at least. deliveries.csv names the
/// order that a delivery belongs to.
/// </summary>
internal sealed class OrdersFile() : FileKind(
    "orders",
    ["order", "date", "item", "packs"],
    ["price", "expected", "back_ordered", "supplier", "prepaid", "note"])
{
    private static readonly string[] NoOrYes = ["no", "yes"];

    public override IEnumerable<SourcedEntry> Entries(IEnumerable<Row> rows, ImportTerms terms)
    {
        foreach (var order in RowGroup.By("order", rows))
        {
            var entry = new OrderPlacement
            {
                Key = $"{Name}:{order.Name}",
                Order = order.Name,
                Date = order.Saying("date").Date("date"),
                Supplier = order.Saying("supplier").Text("supplier"),
                IsPrepaid = order.Saying("prepaid").Choice("prepaid", NoOrYes) == 1,
                Note = order.Saying("note").Text("note"),
                Lines = [.. order.Rows.Select(Line)],
            };
            if (order.IsGood)
                yield return new(order.Line, entry);
        }
    }

    private static OrderedPacks Line(Row row) => new()
    {
        Item = row.Needed("item", "accepted is the code of an item"),
        Packs = row.Needed("packs", row.Whole("packs")),
        Price = row.Money("price"),
        ExpectedOn = row.DateOrNull("expected"),
        IsBackOrdered = row.Choice("back_ordered", NoOrYes) == 1,
    };
}
