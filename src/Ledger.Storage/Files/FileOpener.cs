using System.Globalization;
using Ledger.Storage.Upkeep;
using Microsoft.Data.Sqlite;
using NodaTime;

namespace Ledger.Storage.Files;

/// <summary>Opens the file, or says why it cannot be used: foreign, damaged, locked, newer. An older one is migrated after a backup copy.</summary>
internal static class FileOpener
{
    private const long ApplicationId = 1_416_776_772; // "TrLd", set by the first migration
    private const int WaitSeconds = 5;

    public static (SqliteConnection Connection, string? Backup) Open(string path, Instant now)
    {
        MakeFolder(path);
        if (IsNew(path))
            Create(path);
        var connection = Trouble.Guard(path, () => Connect(path));
        try
        {
            var missing = Trouble.Guard(path, () =>
            {
                CheckOwner(connection, path);
                return Migrations.Missing(connection, path);
            });
            return missing.Count == 0 ? (connection, null) : Trouble.Guard(path, () => Migrate(connection, path, now));
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    /// <summary>An open connection with the settings that every reader and writer of the file uses.</summary>
    public static SqliteConnection Connect(string path)
    {
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder
        {
            DataSource = path, Mode = IsWritable(path) ? SqliteOpenMode.ReadWrite : SqliteOpenMode.ReadOnly,
            ForeignKeys = true, Pooling = false, DefaultTimeout = WaitSeconds,
        }.ToString());
        connection.Open();
        return connection;
    }

    /// <summary>Refuses a file that is no ledger, or one of a newer version.</summary>
    public static void RequireLedger(string path)
    {
        using var connection = Connect(path);
        CheckOwner(connection, path);
        Migrations.Missing(connection, path);
    }

    private static bool IsNew(string path) => new FileInfo(path) is not { Exists: true, Length: > 0 };

    private static bool IsWritable(string path) => !new FileInfo(path).IsReadOnly;

    private static void MakeFolder(string path)
    {
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw new LedgerFileException($"the folder of {path} cannot be made: {FileTrouble.Reason(trouble)}", trouble);
        }

        if (Directory.Exists(path))
            throw new LedgerFileException($"{path} is a folder; name a file with --file");
    }

    /// <summary>Write-ahead logging lets a screen read while a command writes; a file keeps it once it is set.</summary>
    private static void Create(string path) => Trouble.Guard(path, () =>
    {
        using (var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Pooling = false }.ToString()))
        {
            connection.Open();
            using var command = connection.CreateCommand();
            command.CommandText = "PRAGMA journal_mode = wal";
            command.ExecuteNonQuery();
        }

        Migrations.Apply(path);
        return true;
    });

    private static void CheckOwner(SqliteConnection connection, string path)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "PRAGMA application_id";
        if ((long)command.ExecuteScalar()! != ApplicationId)
            throw new LedgerFileException($"{path} is an SQLite file of another program, not a ledger; name another file with --file");
    }

    private static (SqliteConnection Connection, string? Backup) Migrate(SqliteConnection connection, string path, Instant now)
    {
        var stamp = now.ToDateTimeUtc().ToString("yyyyMMdd-HHmmss", CultureInfo.InvariantCulture);
        var backup = $"{path}.{stamp}.backup";
        Backup.Copy(connection, backup);
        connection.Dispose();
        Migrations.Apply(path);
        var migrated = Connect(path);
        using var command = migrated.CreateCommand();
        command.CommandText = "SELECT count(*) FROM pragma_foreign_key_check";
        if ((long)command.ExecuteScalar()! > 0)
            throw new LedgerFileException($"{path} has broken references after it was brought up to date; the copy from before is {backup}");
        return (migrated, backup);
    }
}
