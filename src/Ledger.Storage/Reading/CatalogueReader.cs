namespace Ledger.Storage.Reading;

/// <summary>Reads what the user has defined: settings, items and processes.</summary>
internal sealed class CatalogueReader(Snapshot snapshot)
{
    public void ReadInto(Holdings holdings)
    {
        foreach (var setting in snapshot.Connection.Query<SettingRow>("SELECT name AS Name, value AS Value FROM setting"))
            holdings.Settings = holdings.Settings.With(setting.Name, setting.Value) ?? holdings.Settings;
        ReadFormats(holdings);
        foreach (var row in Items())
        {
            holdings.Put(ToItem(row, holdings.Formats));
            holdings.SetLastContainerNumber(row.Code, row.LastContainer ?? 0);
        }

        new HandlingReader(snapshot).ReadInto(holdings);
        ReadProcesses(holdings);
    }

    /// <summary>A size may stand there under an older spelling too ("4x5in"); what was defined under the present one is the later.</summary>
    private void ReadFormats(Holdings holdings)
    {
        var formats = snapshot.Connection.Query<FormatRow>("SELECT code AS Code, unit AS Unit, area AS Area FROM film_format")
            .Select(row => (row.Code, Format: new Format(row.Code, Area.FromHundredths(row.Area), Units.Named(row.Unit)!.Value)));
        foreach (var (_, format) in formats.OrderBy(stored => stored.Code == stored.Format.Code))
            holdings.Put(format);
    }

    private IEnumerable<ItemRow> Items() => snapshot.Connection.Query<ItemRow>(
        """
        SELECT i.id AS Id, i.code AS Code, i.name AS Name, i.kind AS Kind, i.role AS Role, i.format AS Format, i.unit AS Unit, i.pack AS Pack,
            i.dilution AS Dilution, i.capacity_per_litre AS CapacityPerLitre, i.capacity_basis AS CapacityBasis,
            i.minimum_per_80 AS MinimumPer80, i.fixer_factor AS FixerFactor, i.sealed_days AS SealedDays,
            i.opened_full_days AS OpenedFullDays, i.opened_part_days AS OpenedPartDays, i.working_full_days AS WorkingFullDays,
            i.working_part_days AS WorkingPartDays, i.tray_hours AS TrayHours, i.lead_time_days AS LeadTimeDays,
            i.service_level AS ServiceLevel, i.minimum_on_hand AS MinimumOnHand, i.formula AS Formula, i.cautions AS Cautions,
            (SELECT max(c.number) FROM container c WHERE c.item_id = i.id) AS LastContainer
        FROM item i ORDER BY i.id
        """);

    private void ReadProcesses(Holdings holdings)
    {
        var steps = snapshot.Connection.Query<StepRow>(
            """
            SELECT s.process_id AS ProcessId, s.number AS Number, s.role AS Role, i.code AS Item, s.dilution AS Dilution,
                s.working_volume AS WorkingVolume, s.amount AS Amount, s.use AS "Use", s.per AS Per, s.minutes AS Minutes, s.note AS Note,
                s.volumes_by_format AS VolumesByFormat, s.celsius AS Celsius
            FROM process_step s LEFT JOIN item i ON i.id = s.item_id ORDER BY s.process_id, s.number
            """).ToLookup(row => row.ProcessId);
        foreach (var row in snapshot.Connection.Query<ProcessRow>("SELECT id AS Id, name AS Name, version AS Version FROM process"))
            holdings.Put(new Process(new(row.Id), row.Name, [.. steps[row.Id].Select(step => ToStep(step, holdings))]) { Version = row.Version });
    }

    private static Item ToItem(ItemRow row, FormatTable formats)
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
            Capacity = ToCapacity(row.CapacityPerLitre, row.CapacityBasis),
            MinimumPer80SquareInches = row.MinimumPer80 is { } least ? Volume.FromMicrolitres(least) : null,
            FixerFactorThousandths = row.FixerFactor,
            Keeping = new(row.SealedDays, row.OpenedFullDays, row.OpenedPartDays, row.WorkingFullDays, row.WorkingPartDays, row.TrayHours),
            LeadTimeDays = row.LeadTimeDays,
            ServiceLevel = row.ServiceLevel is null ? null : decimal.Parse(row.ServiceLevel, CultureInfo.InvariantCulture),
            MinimumOnHand = row.MinimumOnHand is { } minimum ? new(minimum, unit) : null,
            Formula = row.Formula,
            Cautions = row.Cautions,
        };
    }

    internal static Capacity? ToCapacity(long? perLitre, string? basis) =>
        perLitre is { } area ? new(Area.FromHundredths(area), basis!) : null;

    /// <summary>A version of a process as it was defined; null when there never was one.</summary>
    public Process? ProcessVersion(string name, int version, Holdings holdings)
    {
        var steps = snapshot.Connection.Query<StepRow>(
            """
            SELECT s.process_id AS ProcessId, s.number AS Number, s.role AS Role, i.code AS Item, s.dilution AS Dilution,
                s.working_volume AS WorkingVolume, s.amount AS Amount, s.use AS "Use", s.per AS Per, s.minutes AS Minutes, s.note AS Note,
                s.volumes_by_format AS VolumesByFormat, s.celsius AS Celsius
            FROM process p JOIN process_version_step s ON s.process_id = p.id AND s.version = @version LEFT JOIN item i ON i.id = s.item_id
            WHERE p.name = @name ORDER BY s.number
            """,
            new { name = name.Trim(), version }).ToList();
        return steps.Count == 0 ? null
            : new(new(steps[0].ProcessId), holdings.Process(name)!.Name, [.. steps.Select(step => ToStep(step, holdings))]) { Version = version };
    }

    private static ProcessStep ToStep(StepRow row, Holdings holdings) => new()
    {
        Number = row.Number,
        Role = Named.Role(row.Role),
        Item = row.Item,
        Dilution = row.Dilution is null ? null : Dilution.Parse(row.Dilution),
        WorkingVolume = row.WorkingVolume is { } volume ? Volume.FromMicrolitres(volume) : null,
        Amount = row.Amount is { } amount ? holdings.Item(row.Item!)!.Of(amount) : null,
        Use = Named.Use(row.Use),
        Per = Named.Per(row.Per),
        Minutes = row.Minutes is null ? null : decimal.Parse(row.Minutes, CultureInfo.InvariantCulture),
        Note = row.Note,
        VolumesByFormat = row.VolumesByFormat is null ? null : FormatVolumes.Read(row.VolumesByFormat),
        Celsius = row.Celsius is null ? null : decimal.Parse(row.Celsius, CultureInfo.InvariantCulture),
    };

    internal sealed record SettingRow(string Name, string Value);

    internal sealed record FormatRow(string Code, string Unit, long Area);

    internal sealed record ItemRow(
        long Id, string Code, string Name, string Kind, string Role, string? Format, string Unit, long Pack, string? Dilution,
        long? CapacityPerLitre, string? CapacityBasis, long? MinimumPer80, int FixerFactor, int? SealedDays, int? OpenedFullDays,
        int? OpenedPartDays, int? WorkingFullDays, int? WorkingPartDays, int? TrayHours, int? LeadTimeDays, string? ServiceLevel,
        long? MinimumOnHand, string Formula, string Cautions, long? LastContainer);

    internal sealed record ProcessRow(long Id, string Name, int Version);

    internal sealed record StepRow(
        long ProcessId, int Number, string Role, string? Item, string? Dilution, long? WorkingVolume, long? Amount, string Use, string Per,
        string? Minutes, string Note, string? VolumesByFormat, string? Celsius);
}
