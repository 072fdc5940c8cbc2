using Ledger.Storage.Tests.Support;
using Microsoft.Data.Sqlite;

namespace Ledger.Storage.Tests;

/// <summary>A file of an older version is brought up to date, and a copy from before is kept beside it.</summary>
public sealed class MigrationTests : IDisposable
{
    private readonly TemporaryLedger _file = new();

    public void Dispose() => _file.Dispose();

    [Fact]
    public void AnOlderFileIsMigratedAfterABackupCopy()
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
            CREATE TABLE SchemaVersions (SchemaVersionID INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL, ScriptName TEXT NOT NULL, Applied DATETIME NOT NULL);
            INSERT INTO SchemaVersions (ScriptName, Applied) VALUES ('{first}', '2025-01-01');
            """;
        command.ExecuteNonQuery();
    }
}
