using Ledger.Core.Journal.Entries;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>counts.csv: what was really found of an item or in a container, in the item's unit; in holder sides and exposed boxes, sheets.</summary>
internal sealed class CountsFile() : RowFileKind("counts", ["date", "item", "found", "reason"], ["reference"])
{
    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms)
    {
        var what = row.Needed("item", "accepted is the code of an item or a container, a holder side, or a box of exposed sheets");
        return new StockCount
        {
            Key = keys.Of(row),
            Date = row.Date("date"),
            What = what,
            Found = row.Needed("found", row.Quantity("found", terms.HeldUnitOf(what))),
            Reason = row.Text("reason"),
        };
    }
}
