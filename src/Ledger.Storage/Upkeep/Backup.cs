using Ledger.Storage.Files;
using Microsoft.Data.Sqlite;

namespace Ledger.Storage.Upkeep;

/// <summary>Copies a ledger while it is in use. The copy appears under its name only when it is whole and on the disk.</summary>
internal static class Backup
{
    /// <summary>Makes the copy.</summary>
    /// <param name="source">The open ledger.</param>
    /// <param name="target">The copy, which must not be there yet.</param>
    /// <param name="like">The ledger's file: the copy may be read by those who may read it.</param>
    /// <exception cref="LedgerFileException">The copy cannot be written; nothing stands under its name.</exception>
    public static void Copy(SqliteConnection source, string target, string like)
    {
        try
        {
            using var file = new NewFile(target, like);
            Trouble.Guard(target, () =>
            {
                Fill(file.Unfinished, source, "delete"); // a backup is one file, without a log beside it
                return true;
            });
            file.Finish(isReplacing: false);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw new LedgerFileException($"{target} cannot be written: {FileTrouble.Reason(trouble)}", trouble);
        }
    }

    /// <summary>Fills an empty file with what a ledger holds.</summary>
    /// <param name="empty">The file, which nobody else has open.</param>
    /// <param name="source">The open ledger.</param>
    /// <param name="journal">What SQLite is to keep beside it from then on: "wal" or "delete".</param>
    public static void Fill(string empty, SqliteConnection source, string journal)
    {
        using var copy = FileOpener.Connect(empty);
        copy.Texts("PRAGMA journal_mode = memory"); // what is unfinished is thrown away whole
        source.BackupDatabase(copy);
        copy.Texts($"PRAGMA journal_mode = {journal}");
    }
}
