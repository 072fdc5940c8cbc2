namespace Ledger.Storage.Writing;

/// <summary>
/// Writes a process: its steps as they are now, and a version of them that stays for the sessions that were run with
/// it.
/// </summary>
internal sealed class ProcessWriter(SqliteConnection connection, long entry)
{
    public void Write(Process process)
    {
        var (id, version) = (process.Id.Value, process.Version);
        connection.Execute(
            "INSERT INTO process (id, name, version) VALUES (@id, @Name, @version) ON CONFLICT (id) DO UPDATE SET "
                + "version = excluded.version",
            new { id, process.Name, version });
        connection.Execute("DELETE FROM process_step WHERE process_id = @id", new { id });
        foreach (var step in process.Steps)
            Write(step, id);
        connection.Execute(
            "INSERT OR IGNORE INTO process_version (process_id, version, entry_id) VALUES (@id, @version, "
                + "@entry)", new { id, version, entry });
        connection.Execute(
            """
            INSERT OR IGNORE INTO process_version_step
                (process_id, version, number, role, item_id, dilution, working_volume, amount, use, per, minutes, note,
                    volumes_by_format, celsius)
            SELECT process_id, @version, number, role, item_id, dilution, working_volume, amount, use, per, minutes,
                note, volumes_by_format, celsius
            FROM process_step WHERE process_id = @id
            """,
            new { id, version });
    }

    private void Write(ProcessStep step, long id) => connection.Execute(
        """
        INSERT INTO process_step
            (process_id, number, role, item_id, dilution, working_volume, amount, use, per, minutes, note,
                volumes_by_format, celsius)
        VALUES (@id, @Number, @Role, (SELECT id FROM item WHERE code = @Item), @Dilution, @WorkingVolume, @Amount, @Use,
            @Per, @Minutes, @Note,
            @VolumesByFormat, @Celsius)
        """,
        new
        {
            id, step.Number, Role = step.Role.Name(), step.Item, Dilution = step.Dilution?.Text,
            WorkingVolume = step.WorkingVolume?.Microlitres, Amount = step.Amount?.Base, Use = step.Use.Name(),
            Per = step.Per.Name(), Minutes = Scaled.PlainText(step.Minutes), step.Note,
            VolumesByFormat = step.VolumesByFormat?.Text, Celsius = Scaled.PlainText(step.Celsius),
        });
}
