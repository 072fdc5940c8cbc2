namespace Ledger.Storage.Reading;

/// <summary>
/// Reads what the user has defined: settings, formats, processes, and the items of which something can be said.
/// </summary>
internal sealed class CatalogueReader(Snapshot snapshot)
{
    public void ReadInto(Holdings holdings)
    {
        foreach (var setting in snapshot.Connection.Query<SettingRow>(
            "SELECT name AS Name, value AS Value FROM setting"))
            holdings.Settings = holdings.Settings.With(setting.Name, setting.Value) ?? holdings.Settings;
        ReadFormats(holdings);
        foreach (var item in new ItemReader(snapshot, holdings.Formats).InUse())
            holdings.Put(item);
        ReadProcesses(holdings);
    }

    /// <summary>
    /// A size may stand there under an older spelling too ("4x5in"); what was defined under the present one is the
    /// later.
    /// </summary>
    private void ReadFormats(Holdings holdings)
    {
        var formats = snapshot.Connection.Query<FormatRow>(
            "SELECT code AS Code, unit AS Unit, area AS Area FROM film_format")
            .Select(row => (row.Code, Format: new Format(row.Code, Area.FromHundredths(row.Area),
                Units.Named(row.Unit)!.Value)));
        foreach (var (_, format) in formats.OrderBy(stored => stored.Code == stored.Format.Code))
            holdings.Put(format);
    }

    private void ReadProcesses(Holdings holdings)
    {
        var steps = snapshot.Connection.Query<StepRow>(
            """
            SELECT s.process_id AS ProcessId, s.number AS Number, s.role AS Role, i.code AS Item,
                s.dilution AS Dilution,
                s.working_volume AS WorkingVolume, s.amount AS Amount, s.use AS "Use", s.per AS Per,
                s.minutes AS Minutes, s.note AS Note,
                s.volumes_by_format AS VolumesByFormat, s.celsius AS Celsius
            FROM process_step s LEFT JOIN item i ON i.id = s.item_id ORDER BY s.process_id, s.number
            """).ToLookup(row => row.ProcessId);
        foreach (var row in snapshot.Connection.Query<ProcessRow>(
            "SELECT id AS Id, name AS Name, version AS Version FROM process"))
            holdings.Put(new Process(new(row.Id), row.Name,
                [.. steps[row.Id].Select(step => ToStep(step, holdings))]) { Version = row.Version });
    }

    internal static Capacity? ToCapacity(long? perLitre, string? basis) =>
        perLitre is { } area ? new(Area.FromHundredths(area), basis!) : null;

    /// <summary>A version of a process as it was defined; null when there never was one.</summary>
    public Process? ProcessVersion(string name, int version, Holdings holdings)
    {
        var steps = snapshot.Connection.Query<StepRow>(
            """
            SELECT s.process_id AS ProcessId, s.number AS Number, s.role AS Role, i.code AS Item,
                s.dilution AS Dilution,
                s.working_volume AS WorkingVolume, s.amount AS Amount, s.use AS "Use", s.per AS Per,
                s.minutes AS Minutes, s.note AS Note,
                s.volumes_by_format AS VolumesByFormat, s.celsius AS Celsius
            FROM process p JOIN process_version_step s ON s.process_id = p.id AND s.version = @version
                LEFT JOIN item i ON i.id = s.item_id
            WHERE p.name = @name ORDER BY s.number
            """,
            new { name = name.Trim(), version }).ToList();
        return steps.Count == 0 ? null
            : new(new(steps[0].ProcessId), holdings.Process(name)!.Name,
                [.. steps.Select(step => ToStep(step, holdings))]) { Version = version };
    }

    private static ProcessStep ToStep(StepRow row, Holdings holdings) => new()
    {
        Number = row.Number,
        Role = Named.Role(row.Role),
        Item = row.Item,
        Dilution = row.Dilution is null ? null : Dilution.Parse(row.Dilution),
        WorkingVolume = row.WorkingVolume is { } volume ? Volume.FromMicrolitres(volume) : null,
        Amount = row.Amount is { } amount ? holdings.ItemOf(row.Item).Of(amount) : null,
        Use = Named.Use(row.Use),
        Per = Named.Per(row.Per),
        Minutes = row.Minutes is null ? null : decimal.Parse(row.Minutes, CultureInfo.InvariantCulture),
        Note = row.Note,
        VolumesByFormat = row.VolumesByFormat is null ? null : FormatVolumes.Read(row.VolumesByFormat),
        Celsius = row.Celsius is null ? null : decimal.Parse(row.Celsius, CultureInfo.InvariantCulture),
    };

    internal sealed record SettingRow(string Name, string Value);

    internal sealed record FormatRow(string Code, string Unit, long Area);

    internal sealed record ProcessRow(long Id, string Name, int Version);

    internal sealed record StepRow(
        long ProcessId, int Number, string Role, string? Item, string? Dilution, long? WorkingVolume,
        long? Amount, string Use, string Per, string? Minutes, string Note, string? VolumesByFormat, string? Celsius);
}
