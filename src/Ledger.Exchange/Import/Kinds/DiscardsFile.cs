using Ledger.Core.Journal.Entries;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>discards.csv: baths poured out, and stock thrown away unused; the quantity is in the item's unit.</summary>
internal sealed class DiscardsFile() : RowFileKind("discards", ["date", "what", "reason"], ["quantity", "reference", "jug"])
{
    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms)
    {
        var what = row.Needed("what", "accepted is the name of a bath, or the code of a container or an item");
        return new Discard
        {
            Key = keys.Of(row),
            Date = row.Date("date"),
            What = what,
            Quantity = row.Quantity("quantity", terms.HeldUnitOf(what)),
            Reason = row.Text("reason"),
            Jug = row.TextOrNull("jug"),
        };
    }
}
