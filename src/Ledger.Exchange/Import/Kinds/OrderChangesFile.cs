using Ledger.Core.Journal.Entries;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>
/// order_changes.csv: what became of an order before it came: another day, a back-order, other packs or price; or, with a reason in
/// <c>cancelled</c>, that the rest of it was cancelled. A row without an item is about all that was still to come.
/// </summary>
internal sealed class OrderChangesFile() : RowFileKind(
    "order_changes", ["date", "order"], ["item", "expected", "back_ordered", "packs", "price", "cancelled", "note", "reference"])
{
    private static readonly string[] Changed = ["expected", "back_ordered", "packs", "price"];

    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms)
    {
        if (row.TextOrNull("cancelled") is not { } reason)
            return Change(row, keys);
        foreach (var column in Changed.Where(column => row.Text(column).Length > 0))
            row.Refuse(column, "accepted is nothing: the row says that the rest is cancelled");
        return new OrderCancellation
        {
            Key = keys.Of(row), Date = row.Date("date"), Order = Order(row), Item = row.TextOrNull("item"), Reason = reason, Note = row.Text("note"),
        };
    }

    private static OrderChange Change(Row row, RowKeys keys) => new()
    {
        Key = keys.Of(row),
        Date = row.Date("date"),
        Order = Order(row),
        Item = row.TextOrNull("item"),
        ExpectedOn = row.DateOrNull("expected"),
        IsBackOrdered = row.Text("back_ordered").Length == 0 ? null : row.IsYes("back_ordered"),
        Packs = row.Whole("packs"),
        Price = row.Text("price").Length == 0 ? null : row.Money("price"),
        Note = row.Text("note"),
    };

    private static string Order(Row row) => row.Needed("order", "accepted is the name of an order");
}
