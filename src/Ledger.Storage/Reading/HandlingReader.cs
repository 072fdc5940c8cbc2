namespace Ledger.Storage.Reading;

/// <summary>Reads the settings of items that only some have, and how long their formula versions keep.</summary>
internal sealed class HandlingReader(Snapshot snapshot)
{
    public void ReadInto(Holdings holdings)
    {
        var capacities = snapshot.Connection.Query<CapacityRow>(
            "SELECT item_id AS ItemId, basis AS Basis, per_litre AS PerLitre FROM item_capacity ORDER BY item_id, number")
            .ToLookup(row => row.ItemId, row => new Capacity(Area.FromHundredths(row.PerLitre), row.Basis));
        var items = holdings.Items.ToDictionary(item => item.Id.Value);
        foreach (var row in Handlings())
            holdings.Put(With(items[row.ItemId], row, [.. capacities[row.ItemId]]));
        foreach (var row in Formulas())
            holdings.SetFormula(
                new(row.ItemId),
                row.Version,
                new(row.SealedDays, row.OpenedFullDays, row.OpenedPartDays, row.WorkingFullDays, row.WorkingPartDays,
                    row.TrayHours, row.FloatingLidDays));
    }

    private IEnumerable<HandlingRow> Handlings() => snapshot.Connection.Query<HandlingRow>(
        """
        SELECT item_id AS ItemId, floating_lid_days AS FloatingLidDays, density AS Density, dead_volume AS DeadVolume,
            replenisher AS Replenisher, replenisher_ceiling AS ReplenisherCeilingPercent, stock_of AS StockOf, indicator AS Indicator,
            other_parts AS OtherParts, freezer_days AS FreezerDays, fridge_days AS FridgeDays, thaw_hours AS ThawHours
        FROM item_handling
        """);

    private IEnumerable<FormulaRow> Formulas() => snapshot.Connection.Query<FormulaRow>(
        """
        SELECT f.item_id AS ItemId, f.version AS Version, f.sealed_days AS SealedDays, f.opened_full_days AS OpenedFullDays,
            f.opened_part_days AS OpenedPartDays, f.working_full_days AS WorkingFullDays, f.working_part_days AS WorkingPartDays,
            f.tray_hours AS TrayHours, f.floating_lid_days AS FloatingLidDays
        FROM formula f JOIN item i ON i.id = f.item_id AND i.formula <> f.version
        """);

    private static Item With(Item item, HandlingRow row, IReadOnlyList<Capacity> capacities) => item with
    {
        Keeping = item.Keeping with { FloatingLidDays = row.FloatingLidDays },
        Density = row.Density is { } density ? new(density) : null,
        DeadVolume = row.DeadVolume is { } dead ? item.Of(dead) : null,
        ReplenisherPer80SquareInches = row.Replenisher is { } replenisher ? Volume.FromMicrolitres(replenisher) : null,
        ReplenisherCeilingPercent = row.ReplenisherCeilingPercent,
        Indicator = row.Indicator,
        StockOf = row.StockOf,
        OtherParts = row.OtherParts is { } parts ? parts.Split(", ") : [],
        FreezerDays = row.FreezerDays,
        FridgeDays = row.FridgeDays,
        ThawHours = row.ThawHours,
        OtherCapacities = capacities,
    };

    internal sealed record CapacityRow(long ItemId, string Basis, long PerLitre);

    internal sealed record HandlingRow(
        long ItemId, int? FloatingLidDays, int? Density, long? DeadVolume, long? Replenisher, int? ReplenisherCeilingPercent,
        string? StockOf, string? Indicator, string? OtherParts, int? FreezerDays, int? FridgeDays, int? ThawHours);

    internal sealed record FormulaRow(
        long ItemId, string Version, int? SealedDays, int? OpenedFullDays, int? OpenedPartDays, int? WorkingFullDays, int? WorkingPartDays,
        int? TrayHours, int? FloatingLidDays);
}
