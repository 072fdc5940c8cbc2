using Ledger.Faults.Running;
using Ledger.Faults.Verdicts;
using Microsoft.Data.Sqlite;

namespace Ledger.Faults.Scenarios;

/// <summary>
/// A backup is put back. A whole ledger always stands under its name, the old one or the restored one, and once it is
/// the restored one the old one is kept beside it with every entry, those in its log among them.
/// </summary>
/// <param name="hasLog">Whether the last entries of the old one stand in its log only, as after a program that was
/// killed.</param>
public sealed class Restoring(bool hasLog) : Scenario(hasLog ? "restore over a ledger with a log" : "restore")
{
    private long _old;
    private long _restored;

    /// <inheritdoc/>
    public override IReadOnlyList<string> Command(Room room) => ["backup", "--restore", room.Path("copy.db")];

    /// <inheritdoc/>
    public override void Prepare(Room room)
    {
        room.KeepTheDemoYear();
        room.Do("backup", room.Path("copy.db"));
        _restored = Proof.EntriesIn(room);
        for (var i = 0; i < 3; i++)
            room.Do("record", "count", "fen80", $"{50 + i}", "--reason", "counted again");
        if (hasLog)
            LeaveInLog(room);
        using var copy = room.Copy();
        _old = Proof.EntriesIn(copy);
    }

    /// <inheritdoc/>
    public override IEnumerable<Flaw> Judge(Room room, Ran ran)
    {
        var proof = Proof.Of(room);
        if (!proof.IsWhole)
            yield return new(FlawKind.Lost, $"no whole ledger stands under its name: {proof.Trouble}");
        else if (proof.Entries != _old && proof.Entries != _restored)
            yield return new(FlawKind.HalfDone,
                $"{proof.Entries} entries; the old ledger had {_old}, the backup {_restored}");
        else if (proof.Entries != _restored && IsAcknowledged(ran))
            yield return new(FlawKind.Lost, "nothing was restored, though the program ended with 0");
        else if (proof.Entries == _restored
            && !Kept(room).Any(file => Proof.Of(room, room.Path(file)) is { IsWhole: true } old && old.Entries == _old))
            yield return new(FlawKind.Lost, $"the old ledger with its {_old} entries is gone");
        else if (proof.Entries == _restored && !ran.WasKilled && ran.Status != 0
            && !ran.Errors.Contains("restored", StringComparison.Ordinal))
            yield return new(FlawKind.Unreported,
                $"it is restored, and the program ended with {ran.Status}: {ran.Errors}");
    }

    /// <inheritdoc/>
    public override bool MayStand(string file) => file.EndsWith(".old", StringComparison.Ordinal);

    private static IEnumerable<string> Kept(Room room) =>
        room.Files.Where(file => file.EndsWith(".old", StringComparison.Ordinal));

    /// <summary>
    /// Copies the file and its log as they stand while a second connection keeps the log from being emptied.
    /// </summary>
    private static void LeaveInLog(Room room)
    {
        using var connection = new SqliteConnection($"Data Source={room.Ledger};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "BEGIN; SELECT count(*) FROM entry";
        command.ExecuteScalar();
        for (var i = 0; i < 5; i++)
            room.Do("record", "count", "fen80", $"{40 + i}", "--reason", "counted once more");
        foreach (var ending in new[] { "", "-wal" })
            File.Copy(room.Ledger + ending, room.Path("kept") + ending);
        connection.Close();
        foreach (var ending in new[] { "", "-wal" })
            File.Move(room.Path("kept") + ending, room.Ledger + ending, overwrite: true);
        File.Delete(room.Ledger + "-shm");
    }
}
