namespace Ledger.Storage.Tests;

/// <summary>What happens to a file that is not what it should be, and to one that somebody else writes to.</summary>
public sealed class FileTests : IDisposable
{
    private readonly TemporaryLedger _file = new();

    public void Dispose() => _file.Dispose();

    [Fact]
    public void A_value_that_cannot_be_read_is_the_files_fault_and_the_check_says_so()
    {
        Some.Stock(_file);
        _file.Run("PRAGMA ignore_check_constraints = ON; UPDATE item SET unit = 'no unit' WHERE code = 'pan'");
        var trouble = Assert.Throws<LedgerFileException>(() => _file.Ledger.HoldingsOn(_file.Ledger.Today));
        Assert.Contains("holds a value that cannot be read", trouble.Message, StringComparison.Ordinal);
        Assert.NotNull(trouble.InnerException);
        Assert.Contains(_file.Ledger.Check(null, default).Problems,
            problem => problem.Contains("cannot be read", StringComparison.Ordinal));
    }

    [Fact]
    public void A_file_that_is_no_database_is_refused_in_a_sentence()
    {
        var path = Path.Combine(_file.Folder, "letter.db");
        File.WriteAllText(path, string.Concat(Enumerable.Repeat("Dear reader, this is no database. ", 100)));
        Assert.Contains("not an SQLite file", Refusal(path));
    }

    [Fact]
    public void Another_programs_database_is_refused()
    {
        var path = Path.Combine(_file.Folder, "other.db");
        Sql(path, "CREATE TABLE t (x)");
        Assert.Contains("another program", Refusal(path));
    }

    [Fact]
    public void A_damaged_file_is_refused_and_says_how_to_get_on()
    {
        Some.Stock(_file);
        var copy = Path.Combine(_file.Folder, "copy.db");
        _file.Ledger.BackUp(copy);
        using (var stream = File.OpenWrite(copy))
        {
            stream.Position = 4096;
            stream.Write(new byte[8192]);
        }

        Assert.Contains("restore a backup", Assert.Throws<LedgerFileException>(() =>
        {
            using var ledger = LedgerFile.Open(copy, _file.Clock);
            ledger.HoldingsOn(ledger.Today);
        }).Message);
    }

    [Fact]
    public void A_file_of_a_newer_version_is_refused()
    {
        _file.Ledger.Dispose();
        Sql(_file.FilePath,
            "INSERT INTO SchemaVersions (ScriptName, Applied) VALUES ('migrations/9999_from_the_future.sql', "
                + "'2030-01-01')");
        Assert.Contains("newer version", Refusal(_file.FilePath));
    }

    [Fact]
    public void A_folder_is_no_file() => Assert.Contains("is a folder", Refusal(_file.Folder));

    [Fact]
    public void An_entry_in_a_locked_file_says_so_and_writes_nothing()
    {
        using var other = new SqliteConnection($"Data Source={_file.FilePath};Pooling=False");
        other.Open();
        other.Run("BEGIN IMMEDIATE");
        _file.Ledger.Connection.DefaultTimeout = 1;
        Assert.Contains("locked",
            Assert.Throws<LedgerFileException>(() => _file.Ledger.Post(Some.Define(Some.Film()))).Message);
        other.Run("ROLLBACK");
        Assert.Empty(_file.Ledger.Journal(_file.Ledger.Today, null, 10));
        _file.Accept(Some.Define(Some.Film()));
    }

    [Fact]
    public void A_full_disk_says_so_and_writes_nothing()
    {
        Some.Stock(_file);
        var entries = _file.Ledger.Journal(_file.Ledger.Today, null, 1000).Count;
        _file.LimitToItsPresentSize();
        var refusal = Assert.Throws<LedgerFileException>(() =>
        {
            for (var i = 0; i < 1000; i++)
                _file.Ledger.Post(Some.Delivery("pan", 25) with { Note = new('x', 9000) });
        });
        Assert.Contains("full", refusal.Message);
        Assert.True(_file.Ledger.Check(null, default).Ok);
        Assert.True(_file.Ledger.Journal(_file.Ledger.Today, null, 5000).Count < entries + 1000);
    }

    [Fact]
    public void What_another_process_writes_is_seen()
    {
        Some.Stock(_file);
        var version = _file.Ledger.Version;
        using (var other = LedgerFile.Open(_file.FilePath, _file.Clock))
            other.Post(Some.Session());
        Assert.NotEqual(version, _file.Ledger.Version);
        _file.Accept(Some.Session("S02"));
        Assert.Equal(42, _file.Ledger.HoldingsOn(_file.Ledger.Today).OnHand(Some.Film()).Base);
    }

    [Fact]
    public void A_backup_holds_everything_and_is_restored_beside_the_old_file()
    {
        Some.Stock(_file);
        var backup = Path.Combine(_file.Folder, "backup.db");
        _file.Ledger.BackUp(backup);
        Assert.Throws<LedgerFileException>(() => _file.Ledger.BackUp(backup));
        _file.Accept(Some.Session());
        _file.Ledger.Dispose();
        var old = LedgerFile.Restore(backup, _file.FilePath, _file.Clock);

        _file.Reopen();
        Assert.Empty(_file.Ledger.Sessions(_file.Ledger.Today, null, 10));
        using var before = LedgerFile.Open(old, _file.Clock);
        Assert.Single(before.Sessions(before.Today, null, 10));
    }

    [Fact]
    public void An_import_is_written_whole_or_not_at_all()
    {
        Entry[] entries = [Some.Define(Some.Film()), Some.Delivery("pan"), Some.Delivery("none"),
            Some.Delivery("pan", -1)];
        var outcome = _file.Ledger.Import(entries, dryRun: false, null, default);
        Assert.Equal([2, 3], outcome.Refused.Select(refused => refused.Index));
        Assert.Empty(_file.Ledger.Journal(_file.Ledger.Today, null, 10));

        Assert.Equal(2, _file.Ledger.Import(entries[..2], dryRun: true, null, default).Posted);
        Assert.Empty(_file.Ledger.Journal(_file.Ledger.Today, null, 10));
        Assert.Equal(2, _file.Ledger.Import(entries[..2], dryRun: false, null, default).Posted);
        Assert.Equal(2, _file.Ledger.Import(entries[..2], dryRun: false, null, default).AlreadyThere);

        using var cancel = new CancellationTokenSource();
        var more = Enumerable.Range(0, 100).Select(i =>
        {
            if (i == 50)
                cancel.Cancel();
            return (Entry)Some.Delivery("pan");
        });
        Assert.Throws<OperationCanceledException>(() => _file.Ledger.Import(more, dryRun: false, null, cancel.Token));
        Assert.Equal(25, _file.Ledger.HoldingsOn(_file.Ledger.Today).OnHand(Some.Film()).Base);
    }

    [Fact]
    public void Numbers_go_by_the_days_however_a_file_is_sorted()
    {
        Some.Stock(_file);
        Entry[] newestFirst =
        [
            Some.Session("S02", 1) with { Date = Some.Day(3, 9) }, Some.Delivery("pan", 1, month: 4),
            Some.Session("S03", 1) with { Date = Some.Day(3, 9) }, Some.Delivery("pan", 1, month: 3),
            Some.Session("S01", 1) with { Date = Some.Day(3, 2) },
        ];
        Assert.Equal(5, _file.Ledger.Import(newestFirst, dryRun: false, null, default).Posted);
        Assert.Equal(["2025-001", "2025-002", "2025-003"], new[] { "S01", "S02", "S03" }.Select(
            session => Assert.Single(_file.Ledger.SheetsOf(session, _file.Ledger.Today)).Negative));
        Assert.Equal(
            [("pan/3", Some.Day(3, 2)), ("pan/4", Some.Day(4, 2))],
            _file.Ledger.HoldingsOn(_file.Ledger.Today).Containers
                .Where(box => box.Code is "pan/3" or "pan/4").Select(box => (box.Code, box.Lot.ReceivedOn)));
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }

    private string Refusal(string path) =>
        Assert.Throws<LedgerFileException>(() => LedgerFile.Open(path, _file.Clock)).Message;

    private static void Sql(string path, string sql)
    {
        using var connection = new SqliteConnection($"Data Source={path};Pooling=False;Foreign Keys=True");
        connection.Open();
        connection.Run(sql);
    }
}
