using DbUp;
using Microsoft.Data.Sqlite;

namespace Ledger.Storage.Files;

/// <summary>Brings a file's tables up to date with the numbered scripts in migrations/.</summary>
internal static class Migrations
{
    private const string Folder = "migrations/";

    private static readonly string[] Known = [.. typeof(Migrations).Assembly.GetManifestResourceNames()
        .Where(name => name.StartsWith(Folder, StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

    /// <summary>The scripts that the file still lacks.</summary>
    /// <exception cref="LedgerFileException">The file has scripts that this program does not know: it was made by a newer version.</exception>
    public static IReadOnlyList<string> Missing(SqliteConnection connection, string path)
    {
        var applied = Applied(connection);
        var unknown = applied.Except(Known).ToList();
        return unknown.Count == 0
            ? [.. Known.Except(applied)]
            : throw new LedgerFileException(
                $"{path} was made by a newer version of trayledger ({unknown[0]} is not known here); update the program to open it");
    }

    /// <summary>Applies what is missing, each script whole or not at all.</summary>
    public static void Apply(string path)
    {
        using var guarded = FileOpener.Connect(path);
        Guards.Drop(guarded);
        // Foreign keys are checked once at the end, so that a migration may rebuild a table.
        var connectionString = new SqliteConnectionStringBuilder { DataSource = path, ForeignKeys = false, Pooling = false }.ToString();
        var result = DeployChanges.To.SqliteDatabase(connectionString)
            .WithScriptsEmbeddedInAssembly(typeof(Migrations).Assembly, name => name.StartsWith(Folder, StringComparison.Ordinal))
            .WithTransactionPerScript()
            .WithVariablesDisabled()
            .LogToNowhere()
            .Build()
            .PerformUpgrade();
        Guards.Create(guarded);
        if (!result.Successful)
            throw new LedgerFileException(
                $"{path} could not be brought up to date ({result.ErrorScript?.Name}: {result.Error.Message}); it is as it was before", result.Error);
    }

    private static List<string> Applied(SqliteConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT count(*) FROM sqlite_schema WHERE name = 'SchemaVersions'";
        if ((long)command.ExecuteScalar()! == 0)
            return [];
        command.CommandText = "SELECT ScriptName FROM SchemaVersions";
        var names = new List<string>();
        using var reader = command.ExecuteReader();
        while (reader.Read())
            names.Add(reader.GetString(0));
        return names;
    }
}
