namespace Ledger.Storage.Files;

/// <summary>
/// Copies a ledger while it is in use. The copy appears under its name only when it is whole and on the disk.
/// </summary>
internal static class Backup
{
    /// <summary>Makes the copy.</summary>
    /// <param name="source">The open ledger.</param>
    /// <param name="target">The copy, which must not be there yet.</param>
    /// <param name="like">The ledger's file: the copy may be read by those who may read it.</param>
    /// <exception cref="LedgerFileException">The copy cannot be written; nothing stands under its name.</exception>
    public static void Copy(SqliteConnection source, string target, string like) => Write(source, target, like, file =>
    {
        file.Finish(isReplacing: false);
        return target;
    });

    /// <summary>
    /// Keeps what a ledger holds beside it, before all of it is changed. What a program kept that was killed before it
    /// changed anything is not kept twice.
    /// </summary>
    /// <param name="source">The open ledger.</param>
    /// <param name="ledger">Its file.</param>
    /// <param name="now">For the name of the copy.</param>
    /// <param name="ending">How that name ends.</param>
    /// <exception cref="LedgerFileException">The copy cannot be written; nothing stands under its name.</exception>
    public static KeptCopy Keep(SqliteConnection source, string ledger, Instant now, string ending)
    {
        var target = FileOpener.NameBeside(ledger, now, ending);
        return Write(source, target, ledger, file =>
        {
            if (KeptCopy.Alike(ledger, ending, file.Unfinished) is { } earlier)
                return new(earlier, IsNew: false);
            file.Finish(isReplacing: false);
            return new KeptCopy(target, IsNew: true);
        });
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

    private static T Write<T>(SqliteConnection source, string target, string like, Func<NewFile, T> finish)
    {
        try
        {
            using var file = new NewFile(target, like);
            Trouble.Guard(target, () =>
            {
                Fill(file.Unfinished, source, "delete"); // a backup is one file, without a log beside it
                return true;
            });
            return finish(file);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw new LedgerFileException($"{target} cannot be written: {FileTrouble.Reason(trouble)}", trouble);
        }
    }
}
