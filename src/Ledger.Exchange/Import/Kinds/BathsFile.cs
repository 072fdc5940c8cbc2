using Ledger.Core.Baths;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Keeping;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>baths.csv: working solutions that are used again. What was measured out is in the item's unit: grams for a powder.</summary>
internal sealed class BathsFile() : RowFileKind(
    "baths",
    ["date", "bath", "item", "working_ml"],
    ["dilution", "concentrate_ml", "material", "capacity_sq_in_per_litre", "capacity_basis", "paired_with", "reference", "stands_in"])
{
    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms)
    {
        var item = row.Needed("item", "accepted is the code of an item");
        return new BathMixing
        {
            Key = keys.Of(row),
            Date = row.Date("date"),
            Bath = row.Needed("bath", "accepted is a name of its own for the bath"),
            Item = item,
            Dilution = row.Dilution("dilution"),
            WorkingVolume = row.Needed("working_ml", row.Volume("working_ml")),
            Amount = row.Quantity("concentrate_ml", terms.UnitOf(item)),
            Material = (BathMaterial)row.Choice("material", BathMaterials.Names),
            Capacity = row.Capacity("capacity_sq_in_per_litre", "capacity_basis"),
            PairedWith = row.TextOrNull("paired_with"),
            StandsIn = (WorkingContainer)row.Choice("stands_in", WorkingContainers.Names),
        };
    }
}
