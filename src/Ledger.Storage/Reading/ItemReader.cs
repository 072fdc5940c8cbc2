namespace Ledger.Storage.Reading;

/// <summary>
/// Reads items as they are defined: one, those of a kind, all, or only those of which something can be said beside
/// their definition. What only few items have is asked for where an item says that it has it.
/// </summary>
internal sealed class ItemReader(Snapshot snapshot, FormatTable formats)
{
    private const string Columns =
        """
        SELECT i.id AS Id, i.code AS Code, i.name AS Name, i.kind AS Kind, i.role AS Role, i.format AS Format,
            i.unit AS Unit, i.pack AS Pack,
            i.dilution AS Dilution, i.capacity_per_litre AS CapacityPerLitre, i.capacity_basis AS CapacityBasis,
            i.minimum_per_80 AS MinimumPer80, i.fixer_factor AS FixerFactor, i.sealed_days AS SealedDays,
            i.opened_full_days AS OpenedFullDays, i.opened_part_days AS OpenedPartDays,
            i.working_full_days AS WorkingFullDays,
            i.working_part_days AS WorkingPartDays, i.tray_hours AS TrayHours, i.lead_time_days AS LeadTimeDays,
            i.service_level AS ServiceLevel, i.minimum_on_hand AS MinimumOnHand, i.formula AS Formula,
            i.cautions AS Cautions,
            max(coalesce((SELECT max(c.number) FROM container c WHERE c.item_id = i.id), 0),
                coalesce((SELECT max(n.number) FROM said_name n WHERE n.series = 'container ' || i.code), 0))
                AS LastContainer,
            h.floating_lid_days AS FloatingLidDays, h.density AS Density, h.dead_volume AS DeadVolume,
            h.replenisher AS Replenisher,
            h.replenisher_ceiling AS ReplenisherCeilingPercent, h.stock_of AS StockOf, h.indicator AS Indicator,
            h.other_parts AS OtherParts, h.freezer_days AS FreezerDays, h.fridge_days AS FridgeDays,
            h.thaw_hours AS ThawHours,
            EXISTS (SELECT 1 FROM item_capacity o WHERE o.item_id = i.id) AS HasCapacities,
            EXISTS (SELECT 1 FROM formula f WHERE f.item_id = i.id AND f.version <> i.formula) AS HasFormulas
        FROM item i LEFT JOIN item_handling h ON h.item_id = i.id

        """;

    /// <summary>The item of that code, in any case; null when there is none.</summary>
    public CataloguedItem? Find(string code) => Catalogued(snapshot.Connection.Query<ItemRow>(
        Columns + """
        WHERE i.code = @code
        """,
        new { code })) is [var found, ..] ? found : null;

    /// <summary>All items.</summary>
    public IReadOnlyList<CataloguedItem> All() => Catalogued(snapshot.Connection.Query<ItemRow>(
        Columns + """
        ORDER BY i.id
        """));

    /// <summary>The items of a kind.</summary>
    public IReadOnlyList<CataloguedItem> Of(ItemKind kind) => Catalogued(snapshot.Connection.Query<ItemRow>(
        Columns + """
        WHERE i.kind = @kind ORDER BY i.id
        """,
        new { kind = kind.Name() }));

    /// <summary>The items that were ever there or ordered, are part of a process, or have a minimum.</summary>
    public IReadOnlyList<CataloguedItem> InUse() => Catalogued(snapshot.Connection.Query<ItemRow>(
        Columns + """
        WHERE i.id IN (
            SELECT item_id FROM lot UNION SELECT item_id FROM order_line UNION SELECT item_id FROM bath
            UNION SELECT item_id FROM process_step WHERE item_id IS NOT NULL
            UNION SELECT id FROM item WHERE minimum_on_hand IS NOT NULL)
        ORDER BY i.id
        """));

    /// <summary>The names of all items.</summary>
    public IReadOnlyList<ItemName> Names() =>
    [
        .. snapshot.Connection.Query<NameRow>(
            """
            SELECT i.code AS Code, i.name AS Name, i.kind AS Kind, i.unit AS Unit,
                EXISTS (SELECT 1 FROM item_handling h WHERE h.item_id = i.id AND h.stock_of IS NOT NULL) AS IsMixed
            FROM item i
            """, buffered: false)
        .Select(row => new ItemName(
            row.Code, row.Name, Named.Kind(row.Kind), Units.Named(row.Unit)!.Value, row.IsMixed == 1)),
    ];

    private List<CataloguedItem> Catalogued(IEnumerable<ItemRow> read)
    {
        var rows = read.ToList();
        var capacities = Capacities([.. rows.Where(row => row.HasCapacities == 1).Select(row => row.Id)]);
        var formulas = Formulas([.. rows.Where(row => row.HasFormulas == 1).Select(row => row.Id)]);
        return [.. rows.Select(row => new CataloguedItem(ToItem(row, [.. capacities[row.Id]]),
            row.LastContainer, [.. formulas[row.Id]]))];
    }

    private ILookup<long, Capacity> Capacities(IReadOnlyCollection<long> items) =>
        (items.Count == 0 ? [] : snapshot.Connection.Query<CapacityRow>(
            """
            SELECT o.item_id AS ItemId, o.basis AS Basis, o.per_litre AS PerLitre
            FROM json_each(@items) wanted CROSS JOIN item_capacity o ON o.item_id = wanted.value
                ORDER BY o.item_id, o.number
            """,
            new { items = Json.Array(items) }))
        .ToLookup(row => row.ItemId, row => new Capacity(Area.FromHundredths(row.PerLitre), row.Basis));

    private ILookup<long, (string, KeepingLimits)> Formulas(IReadOnlyCollection<long> items) =>
        (items.Count == 0 ? [] : snapshot.Connection.Query<FormulaRow>(
            """
            SELECT f.item_id AS ItemId, f.version AS Version, f.sealed_days AS SealedDays,
                f.opened_full_days AS OpenedFullDays,
                f.opened_part_days AS OpenedPartDays, f.working_full_days AS WorkingFullDays,
                f.working_part_days AS WorkingPartDays,
                f.tray_hours AS TrayHours, f.floating_lid_days AS FloatingLidDays
            FROM json_each(@items) wanted CROSS JOIN item i ON i.id = wanted.value
            CROSS JOIN formula f ON f.item_id = i.id AND f.version <> i.formula
            """,
            new { items = Json.Array(items) }))
        .ToLookup(row => row.ItemId, row => (row.Version, new KeepingLimits(
            row.SealedDays, row.OpenedFullDays, row.OpenedPartDays, row.WorkingFullDays, row.WorkingPartDays,
            row.TrayHours, row.FloatingLidDays)));

    private Item ToItem(ItemRow row, IReadOnlyList<Capacity> others)
    {
        var unit = Units.Named(row.Unit)!.Value;
        return new()
        {
            Id = new(row.Id),
            Code = row.Code,
            Name = row.Name,
            Kind = Named.Kind(row.Kind),
            Role = Named.Role(row.Role),
            Format = row.Format is null ? null : formats.Find(row.Format),
            Unit = unit,
            Pack = new(row.Pack, unit),
            Dilution = row.Dilution is null ? null : Dilution.Parse(row.Dilution),
            Capacity = CatalogueReader.ToCapacity(row.CapacityPerLitre, row.CapacityBasis),
            MinimumPer80SquareInches = row.MinimumPer80 is { } least ? Volume.FromMicrolitres(least) : null,
            FixerFactorThousandths = row.FixerFactor,
            Keeping = new(row.SealedDays, row.OpenedFullDays, row.OpenedPartDays, row.WorkingFullDays,
                row.WorkingPartDays, row.TrayHours, row.FloatingLidDays),
            LeadTimeDays = row.LeadTimeDays,
            ServiceLevel = row.ServiceLevel is null
                ? null
                : decimal.Parse(row.ServiceLevel, CultureInfo.InvariantCulture),
            MinimumOnHand = row.MinimumOnHand is { } minimum ? new(minimum, unit) : null,
            Formula = row.Formula,
            Cautions = row.Cautions,
            Density = row.Density is { } density ? new(density) : null,
            DeadVolume = row.DeadVolume is { } dead ? new(dead, unit) : null,
            ReplenisherPer80SquareInches = row.Replenisher is { } replenisher
                ? Volume.FromMicrolitres(replenisher)
                : null,
            ReplenisherCeilingPercent = row.ReplenisherCeilingPercent,
            Indicator = row.Indicator,
            StockOf = row.StockOf,
            OtherParts = row.OtherParts is { } parts ? parts.Split(", ") : [],
            FreezerDays = row.FreezerDays,
            FridgeDays = row.FridgeDays,
            ThawHours = row.ThawHours,
            OtherCapacities = others,
        };
    }

    internal sealed record ItemRow(
        long Id, string Code, string Name, string Kind, string Role, string? Format, string Unit,
        long Pack, string? Dilution, long? CapacityPerLitre, string? CapacityBasis, long? MinimumPer80,
        int FixerFactor, int? SealedDays, int? OpenedFullDays, int? OpenedPartDays, int? WorkingFullDays,
        int? WorkingPartDays, int? TrayHours, int? LeadTimeDays, string? ServiceLevel, long? MinimumOnHand,
        string Formula, string Cautions, long LastContainer, int? FloatingLidDays, int? Density,
        long? DeadVolume, long? Replenisher, int? ReplenisherCeilingPercent, string? StockOf, string? Indicator,
        string? OtherParts, int? FreezerDays, int? FridgeDays, int? ThawHours, long HasCapacities, long HasFormulas);

    internal sealed record CapacityRow(long ItemId, string Basis, long PerLitre);

    internal sealed record NameRow(string Code, string Name, string Kind, string Unit, long IsMixed);

    internal sealed record FormulaRow(
        long ItemId, string Version, int? SealedDays, int? OpenedFullDays, int? OpenedPartDays,
        int? WorkingFullDays, int? WorkingPartDays, int? TrayHours, int? FloatingLidDays);
}
