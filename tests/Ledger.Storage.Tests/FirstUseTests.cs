namespace Ledger.Storage.Tests;

/// <summary>A first use that was broken off is finished by the next one, and several at once make one ledger.</summary>
public sealed class FirstUseTests : IDisposable
{
    private readonly TemporaryLedger _file = new();

    private string New => Path.Combine(_file.Folder, "new.db");

    public void Dispose() => _file.Dispose();

    [Theory]
    [InlineData("")]
    [InlineData("PRAGMA journal_mode = wal")]
    [InlineData("PRAGMA journal_mode = wal; CREATE TABLE SchemaVersions (SchemaVersionID INTEGER PRIMARY KEY "
        + "AUTOINCREMENT, ScriptName TEXT NOT NULL, Applied DATETIME NOT NULL)")]
    public void An_unfinished_file_is_finished(string sql)
    {
        using (var connection = new SqliteConnection($"Data Source={New};Pooling=False"))
        {
            connection.Open();
            using var command = connection.CreateCommand();
            command.CommandText = sql.Length == 0 ? "VACUUM" : sql;
            command.ExecuteNonQuery();
        }

        AssertUsable();
        Assert.Empty(Directory.EnumerateFiles(_file.Folder, "*.backup"));
    }

    [Fact]
    public void An_empty_file_becomes_a_ledger()
    {
        File.WriteAllBytes(New, []);
        AssertUsable();
    }

    [Fact]
    public async Task Several_at_once_make_one_ledger()
    {
        for (var round = 0; round < 5; round++)
        {
            var path = Path.Combine(_file.Folder, $"round{round}.db");
            using var start = new Barrier(6);
            var copies = await Task.WhenAll(Enumerable.Range(0, 6).Select(i => Task.Factory.StartNew(
                () =>
                {
                    start.SignalAndWait();
                    using var ledger = LedgerFile.Open(path, _file.Clock);
                    Assert.IsType<Ledger.Core.Journal.Posted>(
                        ledger.Post(Some.Define(Some.Film() with { Code = $"film{i}" })));
                    return ledger.MigratedFrom;
                },
                CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default)));
            Assert.All(copies, Assert.Null);
            using var all = LedgerFile.Open(path, _file.Clock);
            Assert.Equal(6, all.Check(null, default).Entries);
        }
    }

    [Fact]
    public void The_list_of_migrations_is_the_one_that_earlier_versions_read()
    {
        using var made = FileOpener.Connect(":memory:");
        Migrations.OfThisVersion.Apply(made, "new", _file.Clock.GetCurrentInstant(), keep: null);
        Assert.Equal(
            """
            CREATE TABLE [SchemaVersions] (
                SchemaVersionID INTEGER CONSTRAINT [PK_SchemaVersions_Id] PRIMARY KEY AUTOINCREMENT NOT NULL,
                ScriptName TEXT NOT NULL,
                Applied DATETIME NOT NULL
            )
            """,
            made.Texts("SELECT sql FROM sqlite_schema WHERE name = 'SchemaVersions'")[0]);
    }

    private void AssertUsable()
    {
        using var ledger = LedgerFile.Open(New, _file.Clock);
        Assert.Null(ledger.MigratedFrom);
        ledger.Post(Some.Define(Some.Film()));
        var report = ledger.Check(null, default);
        Assert.Equal((1, true), (report.Entries, report.Ok));
    }
}
