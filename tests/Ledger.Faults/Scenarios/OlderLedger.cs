using System.IO.Compression;
using Ledger.Faults.Running;
using Microsoft.Data.Sqlite;

namespace Ledger.Faults.Scenarios;

/// <summary>Ledgers as older versions left them.</summary>
internal static class OlderLedger
{
    /// <summary>The demo year as 0.2.0 wrote it.</summary>
    public static void OfRelease(string path)
    {
        using var packed = File.OpenRead(
            Path.Combine(NativeBinary.Root, "tests", "Ledger.Storage.Tests", "Fixtures", "0.2.0-demo.db.gz"));
        using var unpacked = new GZipStream(packed, CompressionMode.Decompress);
        using var file = File.Create(path);
        unpacked.CopyTo(file);
    }

    /// <summary>An empty ledger that has the first scripts only, as in the making of 0.2.0.</summary>
    public static void OfScripts(string path, int scripts)
    {
        using var connection = new SqliteConnection($"Data Source={path};Pooling=False;Foreign Keys=False");
        connection.Open();
        Execute(connection, "PRAGMA journal_mode = wal");
        Execute(connection, """
            CREATE TABLE [SchemaVersions] (SchemaVersionID INTEGER CONSTRAINT 'PK_SchemaVersions_SchemaVersionID' PRIMARY KEY AUTOINCREMENT NOT NULL,
                ScriptName TEXT NOT NULL, Applied DATETIME NOT NULL)
            """);
        foreach (var script in Directory.EnumerateFiles(Path.Combine(NativeBinary.Root, "migrations"), "*.sql")
            .Order().Take(scripts))
        {
            Execute(connection, File.ReadAllText(script));
            Execute(connection,
                $"INSERT INTO SchemaVersions (ScriptName, Applied) VALUES ('migrations/{Path.GetFileName(script)}', "
                    + "'2026-01-01')");
        }
    }

    private static void Execute(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // the scripts of the repository
        command.CommandText = sql;
#pragma warning restore CA2100
        command.ExecuteNonQuery();
    }
}
