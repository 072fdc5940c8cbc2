namespace Ledger.Storage.Tests;

/// <summary>A file of an older version is brought up to date, and a copy from before is kept beside it.</summary>
public sealed class MigrationTests : IDisposable
{
    private readonly TemporaryLedger _file = new();

    public void Dispose() => _file.Dispose();

    [Fact]
    public void An_older_file_is_migrated_after_a_backup_copy()
    {
        var path = Path.Combine(_file.Folder, "older.db");
        MakeOlder(path);
        using (var ledger = LedgerFile.Open(path, _file.Clock))
        {
            var copy = Assert.IsType<string>(ledger.MigratedFrom);
            Assert.True(File.Exists(copy));
            Assert.Contains("holder", ledger.Tables);
            Assert.True(ledger.Check(null, default).Ok);
        }

        using var again = LedgerFile.Open(path, _file.Clock);
        Assert.Null(again.MigratedFrom);
    }

    [Fact]
    public void What_a_migration_kept_that_was_killed_is_not_kept_twice()
    {
        var path = Path.Combine(_file.Folder, "older.db");
        MakeOlder(path);
        var before = File.ReadAllBytes(path);
        string first;
        using (var ledger = LedgerFile.Open(path, _file.Clock))
            first = Assert.IsType<string>(ledger.MigratedFrom);
        File.WriteAllBytes(path, before);
        using var again = LedgerFile.Open(path, _file.Clock);
        Assert.Equal(first, again.MigratedFrom);
        Assert.Single(Directory.EnumerateFiles(_file.Folder, "older.db.*.backup"));
    }

    [Fact]
    public void A_failure_leaves_the_file_byte_for_byte_and_no_copy()
    {
        _file.Ledger.Dispose();
        foreach (var bad in new[] { "INSERT INTO nowhere VALUES (1)",
            "INSERT INTO lot (id, item_id) SELECT 1, 1 FROM nowhere", "not SQL" })
            AssertUnchanged(
                "could not be brought up to date",
                new("migrations/9998_good.sql", () => "CREATE TABLE extra (x) STRICT"),
                new("migrations/9999_bad.sql", () => bad));
    }

    [Fact]
    public void A_reference_that_would_be_broken_is_a_failure()
    {
        Some.Stock(_file);
        _file.Ledger.Dispose();
        AssertUnchanged("refer to something that is not there", new MigrationScript(
            "migrations/9999_bad.sql",
            () => "CREATE TABLE extra (item_id INTEGER REFERENCES item (id)); INSERT INTO extra VALUES (4711)"));
    }

    [Fact]
    public void A_script_may_rebuild_a_table_that_others_refer_to()
    {
        Some.Stock(_file);
        _file.Ledger.Dispose();
        var (connection, copy) = FileOpener.Open(_file.FilePath, _file.Clock.GetCurrentInstant(),
            With(new MigrationScript(
                "migrations/9999_process.sql",
                () => """
                CREATE TABLE new_process (id INTEGER PRIMARY KEY, name TEXT NOT NULL UNIQUE COLLATE NOCASE,
                    extra TEXT) STRICT;
                INSERT INTO new_process (id, name) SELECT id, name FROM process;
                DROP TABLE process;
                ALTER TABLE new_process RENAME TO process;
                """)));
        using (connection)
        {
            Assert.Equal(1,
                connection.Number(
                    "SELECT count(*) FROM process_version v JOIN process p ON p.id = v.process_id WHERE p.name = "
                        + "'tray'"));
            Assert.Equal(1, connection.Number("PRAGMA foreign_keys"));
        }

        using var before = new SqliteConnection($"Data Source={copy};Pooling=False");
        before.Open();
        Assert.Equal(0, before.Number("SELECT count(*) FROM pragma_table_info('process') WHERE name = 'extra'"));
    }

    [Fact]
    public async Task Of_several_at_once_one_migrates_and_the_others_wait()
    {
        for (var round = 0; round < 5; round++)
        {
            var path = Path.Combine(_file.Folder, $"round{round}.db");
            MakeOlder(path);
            using var start = new Barrier(6);
            var copies = await Task.WhenAll(Enumerable.Range(0, 6).Select(_ => Task.Factory.StartNew(
                () =>
                {
                    start.SignalAndWait();
                    using var ledger = LedgerFile.Open(path, _file.Clock);
                    Assert.True(ledger.Check(null, default).Ok);
                    return ledger.MigratedFrom;
                },
                CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default)));
            Assert.Single(copies, copy => copy is not null);
            Assert.Single(Directory.EnumerateFiles(_file.Folder, $"round{round}.db.2*"));
        }
    }

    [Fact]
    public void An_older_file_that_may_only_be_read_is_read_all_the_same()
    {
        var path = Path.Combine(_file.Folder, "older.db");
        MakeOlder(path);
        File.SetAttributes(path, FileAttributes.ReadOnly);
        var before = File.ReadAllBytes(path);
        using (var ledger = LedgerFile.Open(path, _file.Clock))
            Assert.True(ledger.Check(null, default).Ok);
        Assert.Equal(before, File.ReadAllBytes(path));
        Assert.Single(Directory.EnumerateFiles(_file.Folder, "older.db*"));
    }

    private void AssertUnchanged(string sentence, params MigrationScript[] scripts)
    {
        var before = File.ReadAllBytes(_file.FilePath);
        Assert.Contains(sentence, Assert.Throws<LedgerFileException>(() =>
            FileOpener.Open(_file.FilePath, _file.Clock.GetCurrentInstant(), With(scripts))).Message,
                StringComparison.Ordinal);
        Assert.Equal([_file.FilePath], Directory.EnumerateFiles(_file.Folder));
        Assert.Equal(before, File.ReadAllBytes(_file.FilePath));
    }

    private static Migrations With(params MigrationScript[] scripts) =>
        new([.. MigrationScript.Embedded(), .. scripts]);

    /// <summary>A file that knows the first migration only.</summary>
    private static void MakeOlder(string path)
    {
        const string first = "migrations/0001_ledger.sql";
        using var script = new StreamReader(typeof(LedgerFile).Assembly.GetManifestResourceStream(first)!);
        using var connection = new SqliteConnection($"Data Source={path};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = script.ReadToEnd() + $"""
            ;
            CREATE TABLE SchemaVersions (SchemaVersionID INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL,
                ScriptName TEXT NOT NULL, Applied DATETIME NOT NULL);
            INSERT INTO SchemaVersions (ScriptName, Applied) VALUES ('{first}', '2025-01-01');
            """;
        command.ExecuteNonQuery();
    }
}
