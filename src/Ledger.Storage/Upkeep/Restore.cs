using Ledger.Storage.Files;
using Ledger.Storage.Reading;
using SQLitePCL;

namespace Ledger.Storage.Upkeep;

/// <summary>
/// Writes what a backup holds into the ledger. The backup is read into memory and proved there before anything is
/// touched, and what was proved is what is written. The ledger is never moved away: SQLite writes into it in one
/// transaction, so that whoever reads it sees the old state or the new one, and whoever has it open stays with it.
/// </summary>
internal static class Restore
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(50);

    /// <summary>Restores.</summary>
    /// <param name="backup">The backup; an older one is brought up to date in memory.</param>
    /// <param name="ledger">The ledger, whether it is there yet or not.</param>
    /// <param name="today">The day on which the backup is checked.</param>
    /// <param name="now">For the name of the copy of what stood there.</param>
    /// <returns>Where the copy of what stood there is; empty when nothing did.</returns>
    /// <exception cref="LedgerFileException">The backup is not in order, or the ledger cannot be written to; it is as
    /// it was.</exception>
    public static string Run(string backup, string ledger, LocalDate today, Instant now)
    {
        if (!File.Exists(backup))
            throw new LedgerFileException($"there is no file {backup}");
        if (RealPath.Of(backup) == RealPath.Of(ledger))
            throw new LedgerFileException($"{backup} is the ledger itself; name the backup");
        using var proved = Trouble.Guard(backup, () => Proved(backup, today, now));
        return Trouble.Guard(ledger, () =>
        {
            try
            {
                return WriteInto(ledger, proved, now);
            }
            catch (SqliteException trouble) when (Trouble.IsDamage(trouble))
            {
                return ReplaceDamaged(ledger, proved, now);
            }
        });
    }

    /// <summary>The whole backup in memory, once nothing is wrong with it.</summary>
    private static SqliteConnection Proved(string backup, LocalDate today, Instant now)
    {
        SqliteConnection? memory = null;
        try
        {
            memory = FileOpener.InMemory(backup, now, Migrations.OfThisVersion, isEmptyRefused: true);
            using var snapshot = new Snapshot(memory);
            var report = new Checker(snapshot).Run(today, null, CancellationToken.None);
            if (!report.Ok)
                throw new LedgerFileException(
                    $"{backup} is not in order, so nothing was changed; try another backup. {More(report.Problems)}");
            return memory;
        }
        catch (SqliteException trouble) when (Trouble.IsDamage(trouble))
        {
            memory?.Dispose();
            throw new LedgerFileException(
                $"{backup} is damaged or no ledger, so nothing was changed; try another backup", trouble);
        }
        catch
        {
            memory?.Dispose();
            throw;
        }
    }

    private static string More(IReadOnlyList<string> problems) =>
        problems.Count == 1 ? $"Wrong is: {problems[0]}" : $"{problems.Count} things are wrong, first: {problems[0]}";

    private static string WriteInto(string ledger, SqliteConnection proved, Instant now)
    {
        using var live = FileOpener.Connect(ledger);
        if (FileOpener.IsReadOnly(ledger) || raw.sqlite3_db_readonly(live.Handle!, "main") != 0)
            throw new LedgerFileException(
                $"{ledger} may only be read, so nothing was changed; allow writing to it and try again");
        var holdsSomething = FileOpener.RequireOwner(live, ledger);
        FileOpener.LogAhead(live);
        KeptCopy? old = null;
        using (var writing = raw.sqlite3_backup_init(live.Handle!, "main", proved.Handle!, "main"))
        {
            if (writing.IsInvalid)
                SqliteException.ThrowExceptionForRC(raw.sqlite3_errcode(live.Handle!), live.Handle!);

            // With its first page it is the only writer, so that nothing can come between the copy and what takes its
            // place.
            Step(writing, 1, live);
            if (holdsSomething)
            {
                using var reader = FileOpener.Connect(ledger);
                old = Backup.Keep(reader, ledger, now, "old");
            }

            try
            {
                Step(writing, -1, live);
            }
            catch
            {
                old?.TakeBack();
                throw;
            }
        }

        Checkpoint.AsFarAsReadersAllow(live);
        return old?.Path ?? "";
    }

    private static void Step(sqlite3_backup writing, int pages, SqliteConnection live)
    {
        for (var waited = TimeSpan.Zero; ; waited += Pause)
        {
            var result = raw.sqlite3_backup_step(writing, pages);
            if (result is raw.SQLITE_OK or raw.SQLITE_DONE)
                return;
            if (result is not (raw.SQLITE_BUSY or raw.SQLITE_LOCKED) || waited.TotalSeconds >= FileOpener.WaitSeconds)
                throw new SqliteException(raw.sqlite3_errstr(result).utf8_to_string(), result & 0xFF, result);
            Thread.Sleep(Pause);
        }
    }

    /// <summary>
    /// What stands there is no database any more, so that SQLite cannot write into it. It is copied byte for byte with
    /// what stands beside it, and a whole file takes its place in one step.
    /// </summary>
    private static string ReplaceDamaged(string ledger, SqliteConnection proved, Instant now)
    {
        var real = RealPath.Of(ledger);
        var old = FileOpener.NameBeside(ledger, now, "old");
        try
        {
            foreach (var ending in DetachedCopy.Parts(real))
                CopyBytes(real + ending, old + ending, real);
            using var fresh = new NewFile(real, real);
            Backup.Fill(fresh.Unfinished, proved, "wal");
            foreach (var ending in new[] { "-wal", "-journal", "-shm" })
                File.Delete(real + ending);
            fresh.Finish(isReplacing: true);
            return old;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw new LedgerFileException($"{ledger} could not be replaced: {FileTrouble.Reason(trouble)}", trouble);
        }
    }

    private static void CopyBytes(string from, string to, string like)
    {
        using var file = new NewFile(to, like);
        using (var source = new FileStream(from, FileMode.Open, FileAccess.Read,
            FileShare.ReadWrite | FileShare.Delete))
        using (var target = file.Open())
            source.CopyTo(target);
        file.Finish(isReplacing: false);
    }
}
