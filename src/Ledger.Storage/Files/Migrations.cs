using NodaTime.Text;

namespace Ledger.Storage.Files;

/// <summary>
/// Brings a file's tables up to date with the numbered scripts in migrations/: all that it lacks in one transaction, or
/// nothing. Foreign keys are off meanwhile and checked before the end, so that a script may rebuild a table.
/// </summary>
/// <param name="scripts">The scripts in their order.</param>
internal sealed class Migrations(IReadOnlyList<MigrationScript> scripts)
{
    /// <summary>How long a process waits for another one that is migrating.</summary>
    public const int LongestWaitSeconds = 60;

    /// <summary>As the first versions made it, so that they say of a newer file that it is newer.</summary>
    private const string Journal =
        """
        CREATE TABLE IF NOT EXISTS [SchemaVersions] (
            SchemaVersionID INTEGER CONSTRAINT [PK_SchemaVersions_Id] PRIMARY KEY AUTOINCREMENT NOT NULL,
            ScriptName TEXT NOT NULL,
            Applied DATETIME NOT NULL
        )
        """;

    /// <summary>The scripts of this version.</summary>
    public static Migrations OfThisVersion { get; } = new(MigrationScript.Embedded());

    /// <summary>The scripts that the file still lacks.</summary>
    /// <exception cref="LedgerFileException">The file has scripts that this program does not know: it was made by a
    /// newer version.</exception>
    public IReadOnlyList<MigrationScript> Missing(SqliteConnection connection, string path)
    {
        var applied = Applied(connection);
        var unknown = applied.Except(scripts.Select(script => script.Name)).ToList();
        return unknown.Count == 0
            ? [.. scripts.Where(script => !applied.Contains(script.Name))]
            : throw new LedgerFileException(
                $"{path} was made by a newer version of trayledger ({unknown[0]} is not known here); update the "
                    + "program to open it");
    }

    /// <summary>
    /// Applies what is missing. Of several processes one does it, and the others wait until it is done. A failure
    /// leaves the file as it was.
    /// </summary>
    /// <param name="connection">The file.</param>
    /// <param name="path">Its name, for sentences.</param>
    /// <param name="now">When it is done.</param>
    /// <param name="keep">Keeps a copy of the file as it is, and says where; asked only by the process that migrates.
    /// Null: no copy.</param>
    /// <returns>Where the copy is; null when there is none.</returns>
    public string? Apply(SqliteConnection connection, string path, Instant now, Func<KeptCopy>? keep)
    {
        // No effect inside a transaction, so before it.
        connection.Run("PRAGMA foreign_keys = OFF");
        try
        {
            connection.Run("BEGIN IMMEDIATE");
            return ApplyInside(connection, path, now, keep);
        }
        finally
        {
            connection.Run("PRAGMA foreign_keys = ON");
        }
    }

    private string? ApplyInside(SqliteConnection connection, string path, Instant now, Func<KeptCopy>? keep)
    {
        KeptCopy? copy = null;
        try
        {
            var missing = Missing(connection, path);
            if (missing.Count > 0)
            {
                copy = keep?.Invoke();
                Guards.Drop(connection);
                connection.Run(Journal);
                foreach (var script in missing)
                    Run(script, connection, path, now);
                CheckReferences(connection, path);
                Guards.Create(connection);
            }

            connection.Run("COMMIT");
            return copy?.Path;
        }
        catch
        {
            // A full disk may have rolled it back already.
            if (SQLitePCL.raw.sqlite3_get_autocommit(connection.Handle!) == 0)
                connection.Run("ROLLBACK");
            copy?.TakeBack();
            throw;
        }
    }

    private static void Run(MigrationScript script, SqliteConnection connection, string path, Instant now)
    {
        try
        {
            connection.Run(script.Sql);
        }
        catch (SqliteException trouble) when (!Trouble.IsOfTheFile(trouble))
        {
            throw new LedgerFileException(
                $"{path} could not be brought up to date ({script.Name}: {trouble.Message}); it is as it was "
                    + "before", trouble);
        }

        using var command = connection.CreateCommand();
        command.CommandText = "INSERT INTO SchemaVersions (ScriptName, Applied) VALUES ($name, $applied)";
        command.Parameters.AddWithValue("$name", script.Name);
        command.Parameters.AddWithValue(
            "$applied", InstantPattern.CreateWithInvariantCulture("uuuu'-'MM'-'dd' 'HH':'mm':'ss").Format(now));
        command.ExecuteNonQuery();
    }

    private static void CheckReferences(SqliteConnection connection, string path)
    {
        if (connection.Texts("""SELECT DISTINCT "table" FROM pragma_foreign_key_check""") is [var table, ..])
            throw new LedgerFileException(
                $"{path} could not be brought up to date: rows of {table} would refer to something that is not there; "
                    + "it is as it was before");
    }

    private static IReadOnlyList<string> Applied(SqliteConnection connection) =>
        connection.Number("SELECT count(*) FROM sqlite_schema WHERE name = 'SchemaVersions'") == 0
            ? [] : connection.Texts("SELECT ScriptName FROM SchemaVersions");
}

/// <summary>One step from an older file to a newer one.</summary>
/// <param name="name">Under which a file remembers that it was applied.</param>
/// <param name="read">Reads what it does: only where a file lacks it, since most files lack nothing.</param>
internal sealed class MigrationScript(string name, Func<string> read)
{
    private const string Folder = "migrations/";

    /// <summary>Under which name a file remembers that it was applied.</summary>
    public string Name => name;

    /// <summary>What it does.</summary>
    public string Sql => read();

    /// <summary>The scripts inside this program, in their order.</summary>
    public static IReadOnlyList<MigrationScript> Embedded()
    {
        var assembly = typeof(MigrationScript).Assembly;
        var names = Array.FindAll(assembly.GetManifestResourceNames(),
            name => name.StartsWith(Folder, StringComparison.Ordinal));
        Array.Sort(names, StringComparer.Ordinal);
        return Array.ConvertAll(names, name => new MigrationScript(name, () => Read(name)));

        string Read(string name)
        {
            using var text = new StreamReader(assembly.GetManifestResourceStream(name)!);
            return text.ReadToEnd();
        }
    }
}
