using Microsoft.Data.Sqlite;

namespace Ledger.Storage.Upkeep;

/// <summary>Copies a ledger while it is in use. The copy appears under its name only when it is whole.</summary>
internal static class Backup
{
    public static void Copy(SqliteConnection source, string target)
    {
        var unfinished = target + ".part";
        File.Delete(unfinished);
        try
        {
            using (var copy = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = unfinished, Pooling = false }.ToString()))
            {
                copy.Open();
                source.BackupDatabase(copy);
                using var command = copy.CreateCommand();
                command.CommandText = "PRAGMA journal_mode = delete"; // a backup is one file, without a log beside it
                command.ExecuteNonQuery();
            }

            File.Move(unfinished, target, overwrite: false);
        }
        finally
        {
            File.Delete(unfinished);
        }
    }
}
