namespace Ledger.Storage.Files;

/// <summary>
/// Reads a database without touching it. SQLite itself needs to write beside a file with a log, even to read it; so the
/// file and what stands beside it are copied to where temporary files are, put together there, and taken into memory.
/// What a killed program leaves there goes at the next reading.
/// </summary>
internal static class DetachedCopy
{
    private const int MostTries = 20;

    /// <summary>The log of what is written ahead, and that of a transaction that was broken off.</summary>
    private static readonly string[] Logs = ["-wal", "-journal"];

    /// <summary>What stands beside the database belongs to it and goes with it.</summary>
    public static IEnumerable<string> Parts(string path) =>
        Logs.Prepend("").Where(ending => new FileInfo(path + ending) is { Exists: true, Length: > 0 });

    /// <summary>Reads the file into a database in memory.</summary>
    public static void Read(string path, SqliteConnection memory)
    {
        try
        {
            UnfinishedFile.ClearAway(Path.GetTempPath());
            using var copy = UnfinishedFile.In(Path.GetTempPath());
            CopyStable(RealPath.Of(path), copy.Path);
            using var connection = FileOpener.Connect(copy.Path);
            connection.Run("PRAGMA journal_mode = delete");
            connection.BackupDatabase(memory);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw new LedgerFileException($"{path} cannot be read: {FileTrouble.Reason(trouble)}", trouble);
        }
    }

    /// <summary>Somebody with more rights may write to the file meanwhile: then it is copied once more.</summary>
    private static void CopyStable(string path, string copy)
    {
        for (var i = 0; i < MostTries; i++)
        {
            var before = State(path);
            foreach (var ending in Logs)
                File.Delete(copy + ending);
            foreach (var ending in Parts(path))
                Copy(path + ending, copy + ending);
            if (State(path) == before)
                return;
            Thread.Sleep(50);
        }

        throw new IOException("it is being written to all the time");
    }

    private static void Copy(string from, string to)
    {
        using var source = new FileStream(from, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        using var target = new FileStream(to, UnfinishedFile.ForOwner(FileMode.Create));
        source.CopyTo(target);
    }

    private static string State(string path) => string.Join(
        ';', Parts(path).Select(ending => new FileInfo(path + ending))
            .Select(file => $"{file.Name} {file.Length} {file.LastWriteTimeUtc.Ticks}"));
}
