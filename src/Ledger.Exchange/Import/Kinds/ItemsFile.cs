using Ledger.Core.Journal.Entries;
using Ledger.Core.Keeping;
using Ledger.Core.Measures;
using Ledger.Core.Stock;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>items.csv: what is kept, with its settings. A changed row defines the item anew.</summary>
internal sealed class ItemsFile() : RowFileKind(
    "items",
    ["item", "name", "kind", "pack"],
    [
        "role", "format", "unit", "dilution", "capacity_sq_in_per_litre", "capacity_basis", "minimum_ml_per_80_sq_in", "fixer_factor",
        "sealed_days", "opened_full_days", "opened_part_days", "working_full_days", "working_part_days", "tray_hours",
        "lead_time_days", "service_level", "minimum_on_hand", "formula", "cautions",
        "floating_lid_days", "density_g_per_ml", "dead_volume", "replenisher_ml_per_80_sq_in", "stock_of", "other_capacities",
        "indicator", "replenisher_ceiling_percent",
    ])
{
    public override bool IsUndated => true;

    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms)
    {
        var code = row.Needed("item", "accepted is a short code of letters, digits, dots and dashes");
        var format = row.Format("format", terms.Formats);
        var unit = UnitOf(row, format);
        return new ItemDefinition
        {
            Key = keys.Of(code, row),
            Date = terms.Undated,
            Item = new()
            {
                Code = code,
                Name = row.Needed("name", "accepted is the full name"),
                Kind = (ItemKind)row.Choice("kind", ItemNames.Kinds, mayBeEmpty: false),
                Role = (ItemRole)row.Choice("role", ItemNames.Roles),
                Format = format,
                Unit = unit,
                Pack = row.Needed("pack", row.Quantity("pack", unit)),
                Dilution = row.Dilution("dilution"),
                Capacity = row.Capacity("capacity_sq_in_per_litre", "capacity_basis"),
                MinimumPer80SquareInches = row.Volume("minimum_ml_per_80_sq_in"),
                FixerFactorThousandths = row.Thousandths("fixer_factor") ?? 1000,
                Keeping = new KeepingLimits(
                    row.Whole("sealed_days"),
                    row.Whole("opened_full_days"),
                    row.Whole("opened_part_days"),
                    row.Whole("working_full_days"),
                    row.Whole("working_part_days"),
                    row.Whole("tray_hours"),
                    row.Whole("floating_lid_days")),
                LeadTimeDays = row.Whole("lead_time_days"),
                ServiceLevel = row.Number("service_level"),
                MinimumOnHand = row.Quantity("minimum_on_hand", unit),
                Formula = row.Text("formula"),
                Cautions = row.Text("cautions"),
                Density = row.Density("density_g_per_ml"),
                DeadVolume = row.Quantity("dead_volume", unit),
                ReplenisherPer80SquareInches = row.Volume("replenisher_ml_per_80_sq_in"),
                ReplenisherCeilingPercent = row.Whole("replenisher_ceiling_percent"),
                Indicator = row.TextOrNull("indicator"),
                StockOf = row.TextOrNull("stock_of"),
                OtherCapacities = row.Capacities("other_capacities"),
            },
        };
    }

    /// <summary>The unit as it is written; film may leave it out, because its format says it.</summary>
    private static Unit UnitOf(Row row, Format? format) => row.Text("unit").Length == 0 && format is not null
        ? format.Unit
        : (Unit)row.Choice("unit", Units.Names, mayBeEmpty: false);
}
