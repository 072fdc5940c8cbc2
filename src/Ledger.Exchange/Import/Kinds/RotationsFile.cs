using Ledger.Core.Journal.Entries;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>
/// rotations.csv: the first bath of a pair poured out, the second moved up, a new one mixed; what is left out is as it was.
/// </summary>
internal sealed class RotationsFile() : RowFileKind(
    "rotations",
    ["date", "new_bath"],
    ["bath", "item", "dilution", "working_ml", "concentrate_ml", "reason", "jug", "reference"])
{
    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms)
    {
        var item = row.TextOrNull("item");
        return new Rotation
        {
            Key = keys.Of(row),
            Date = row.Date("date"),
            NewBath = row.Needed("new_bath", "accepted is a name of its own for the bath"),
            Bath = row.TextOrNull("bath"),
            Item = item,
            Dilution = row.Dilution("dilution"),
            WorkingVolume = row.Volume("working_ml"),
            Amount = row.Quantity("concentrate_ml", terms.UnitOf(item ?? "")),
            Reason = row.TextOrNull("reason") ?? "rotated",
            Jug = row.TextOrNull("jug"),
        };
    }
}
