using Ledger.Core.Journal.Entries;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>top_ups.csv: fresh solution or replenisher added to a bath, and what was poured off for it, into a jug when one is named.</summary>
internal sealed class TopUpsFile() : RowFileKind(
    "top_ups", ["date", "bath", "added_ml"], ["item", "dilution", "concentrate_ml", "poured_off_ml", "reference", "jug"])
{
    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms)
    {
        var item = row.TextOrNull("item");
        return new TopUp
        {
            Key = keys.Of(row),
            Date = row.Date("date"),
            Bath = row.Needed("bath", "accepted is the name of a bath"),
            Added = row.Needed("added_ml", row.Volume("added_ml")),
            Item = item,
            Dilution = row.Dilution("dilution"),
            Amount = row.Quantity("concentrate_ml", terms.UnitOf(item ?? "")),
            Bled = row.Volume("poured_off_ml") ?? default,
            Jug = row.TextOrNull("jug"),
        };
    }
}
