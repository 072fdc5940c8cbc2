using System.Globalization;
using Ledger.Storage.Files;
using NodaTime;

namespace Ledger.Storage.Upkeep;

/// <summary>Puts a backup in a ledger's place; what stood there is moved aside, never deleted.</summary>
internal static class Restore
{
    private static readonly string[] Beside = ["-wal", "-shm"];

    public static string Run(string backup, string ledger, Instant now)
    {
        if (!File.Exists(backup))
            throw new LedgerFileException($"there is no file {backup}");
        var fresh = ledger + ".part";
        File.Delete(fresh);
        try
        {
            CopyWhole(backup, fresh);
            var old = MoveAside(ledger, now);
            File.Move(fresh, ledger);
            return old;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw new LedgerFileException($"{ledger} could not be replaced: {trouble.Message}", trouble);
        }
        finally
        {
            File.Delete(fresh);
        }
    }

    /// <summary>Opening the backup proves that it is a ledger that this version knows; the copy is made through SQLite.</summary>
    private static void CopyWhole(string backup, string target) => Trouble.Guard(backup, () =>
    {
        FileOpener.RequireLedger(backup);
        using var source = FileOpener.Connect(backup);
        Backup.Copy(source, target);
        return true;
    });

    private static string MoveAside(string ledger, Instant now)
    {
        if (!File.Exists(ledger))
            return "";
        RequireUnused(ledger);
        var old = $"{ledger}.{now.ToDateTimeUtc().ToString("yyyyMMdd-HHmmss", CultureInfo.InvariantCulture)}.old";
        File.Move(ledger, old);
        foreach (var beside in Beside.Where(ending => File.Exists(ledger + ending)))
            File.Move(ledger + beside, old + beside);
        return old;
    }

    /// <summary>A ledger that another program has open must not be moved away under it. A damaged one may.</summary>
    private static void RequireUnused(string ledger)
    {
        try
        {
            using var connection = FileOpener.Connect(ledger);
            using var command = connection.CreateCommand();
            command.CommandText = "PRAGMA locking_mode = exclusive; BEGIN EXCLUSIVE; ROLLBACK";
            command.ExecuteNonQuery();
        }
        catch (Microsoft.Data.Sqlite.SqliteException trouble) when (trouble.SqliteErrorCode is not (5 or 6))
        {
            return;
        }
    }
}
