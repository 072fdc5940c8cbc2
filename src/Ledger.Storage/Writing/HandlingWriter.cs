namespace Ledger.Storage.Writing;

/// <summary>Writes the settings of an item that only some have, and how long its formula version keeps.</summary>
internal sealed class HandlingWriter(SqliteConnection connection)
{
    public void Write(Item item)
    {
        var id = item.Id.Value;
        connection.Execute("DELETE FROM item_handling WHERE item_id = @id", new { id });
        connection.Execute("DELETE FROM item_capacity WHERE item_id = @id", new { id });
        connection.Execute(
            """
            INSERT INTO item_handling (item_id, floating_lid_days, density, dead_volume, replenisher,
                replenisher_ceiling, stock_of, indicator,
                other_parts, freezer_days, fridge_days, thaw_hours)
            VALUES (@id, @FloatingLidDays, @Density, @DeadVolume, @Replenisher, @ReplenisherCeilingPercent, @StockOf,
                @Indicator, @OtherParts,
                @FreezerDays, @FridgeDays, @ThawHours)
            """,
            new
            {
                id, item.Keeping.FloatingLidDays, Density = item.Density?.Thousandths,
                DeadVolume = item.DeadVolume?.Base, Replenisher = item.ReplenisherPer80SquareInches?.Microlitres,
                item.ReplenisherCeilingPercent, item.StockOf, item.Indicator, OtherParts = item.OtherParts.Count == 0
                    ? null
                    : string.Join(", ", item.OtherParts),
                item.FreezerDays, item.FridgeDays, item.ThawHours,
            });
        for (var number = 0; number < item.OtherCapacities.Count; number++)
            connection.Execute(
                "INSERT INTO item_capacity (item_id, number, basis, per_litre) VALUES (@id, @number, @Basis, "
                    + "@PerLitre)",
                new { id, number, item.OtherCapacities[number].Basis,
                    PerLitre = item.OtherCapacities[number].PerLitre.Hundredths });
        WriteFormula(item);
    }

    public void WriteOrigin(Lot lot, string? mixedFrom) => connection.Execute(
        "INSERT INTO lot_origin (lot_id, formula, mixed_from) VALUES (@Lot, @Formula, @mixedFrom)",
        new { Lot = lot.Id.Value, lot.Formula, mixedFrom });

    private void WriteFormula(Item item) => connection.Execute(
        """
        INSERT OR REPLACE INTO formula (item_id, version, sealed_days, opened_full_days, opened_part_days,
            working_full_days,
            working_part_days, tray_hours, floating_lid_days)
        VALUES (@Id, @Formula, @SealedDays, @OpenedFullDays, @OpenedPartDays, @WorkingFullDays,
            @WorkingPartDays, @TrayHours, @FloatingLidDays)
        """,
        new
        {
            Id = item.Id.Value, item.Formula, item.Keeping.SealedDays, item.Keeping.OpenedFullDays,
            item.Keeping.OpenedPartDays, item.Keeping.WorkingFullDays, item.Keeping.WorkingPartDays,
            item.Keeping.TrayHours, item.Keeping.FloatingLidDays,
        });
}
