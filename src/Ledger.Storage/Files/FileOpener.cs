namespace Ledger.Storage.Files;

/// <summary>
/// Opens the file, or says why it cannot be used: foreign, damaged, locked, newer. An older one is migrated after a
/// backup copy, one whose first use was broken off is finished, and one that may only be read is read from a copy in
/// memory.
/// </summary>
internal static class FileOpener
{
    private const long ApplicationId = 1_416_776_772; // "TrLd", set by the first migration

    /// <summary>How long another program's lock is waited for.</summary>
    public const int WaitSeconds = 5;

    /// <summary>An open connection, and the copy that was kept before the file was migrated.</summary>
    /// <param name="path">The file.</param>
    /// <param name="now">For the name of the copy.</param>
    /// <param name="migrations">Those of this version, unless a test has others.</param>
    public static (SqliteConnection Connection, string? Backup) Open(string path, Instant now,
        Migrations? migrations = null)
    {
        MakeFolder(path);
        migrations ??= Migrations.OfThisVersion;
        return Trouble.Guard(path, () =>
        {
            if (Writable(path) is not { } connection)
                return (InMemory(path, now, migrations), null);
            try
            {
                return (connection, BringUpToDate(connection, path, now, migrations));
            }
            catch
            {
                connection.Dispose();
                throw;
            }
        });
    }

    /// <summary>
    /// An open connection to a ledger of this version; null where the file is none, and nothing is made of it.
    /// </summary>
    public static SqliteConnection? AsItIs(string path) => !File.Exists(path) ? null : Trouble.Guard(path, () =>
    {
        var connection = Connect(path, SqliteOpenMode.ReadWrite);
        try
        {
            if (Owner(connection) == ApplicationId && Migrations.OfThisVersion.Missing(connection, path).Count == 0)
                return connection;
            connection.Dispose();
            return null;
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    });

    /// <summary>
    /// An open connection with the settings that every reader and writer of the file uses; the file is made if there is
    /// none.
    /// </summary>
    public static SqliteConnection Connect(string path) => Connect(path, SqliteOpenMode.ReadWriteCreate);

    /// <summary>
    /// What a file holds, brought up to date, in memory: the file is neither written to nor locked, and nothing is made
    /// beside it. What stands in a log beside it counts.
    /// </summary>
    /// <exception cref="LedgerFileException">It is no ledger, or one of a newer version.</exception>
    /// <param name="path">The file.</param>
    /// <param name="now">When it is brought up to date.</param>
    /// <param name="migrations">What it is brought up to date with.</param>
    /// <param name="isEmptyRefused">Whether a file that holds nothing is no ledger; otherwise it is an empty
    /// one.</param>
    public static SqliteConnection InMemory(string path, Instant now, Migrations migrations,
        bool isEmptyRefused = false)
    {
        var memory = Connect(":memory:", SqliteOpenMode.Memory);
        try
        {
            DetachedCopy.Read(path, memory);
            if (!RequireOwner(memory, path) && isEmptyRefused)
                throw new LedgerFileException($"{path} holds nothing, so nothing was changed; name another file");
            if (migrations.Missing(memory, path).Count > 0)
                migrations.Apply(memory, path, now, keep: null);
            memory.Run("PRAGMA query_only = ON");
            return memory;
        }
        catch
        {
            memory.Dispose();
            throw;
        }
    }

    /// <summary>Refuses a file of another program. One that holds nothing yet becomes a ledger.</summary>
    /// <returns>Whether it is a ledger already.</returns>
    public static bool RequireOwner(SqliteConnection connection, string path) => Owner(connection) switch
    {
        ApplicationId => true,
        null => false,
        _ => throw new LedgerFileException(
            $"{path} is an SQLite file of another program, not a ledger; name another file with --file"),
    };

    /// <summary>
    /// Sets write-ahead logging, which lets a screen read while a command writes; the file keeps it. Before each
    /// writing, since a backup that was copied over by hand has none, and not when it is only read. Later, if the file
    /// is in use now.
    /// </summary>
    public static void LogAhead(SqliteConnection connection)
    {
        try
        {
            if (connection.Texts("PRAGMA journal_mode")[0] != "wal")
                connection.Texts("PRAGMA journal_mode = wal");
        }
        catch (SqliteException trouble) when (Trouble.IsBusy(trouble))
        {
        }
    }

    /// <summary>A name for a copy that is kept beside the ledger, which no file has yet.</summary>
    public static string NameBeside(string path, Instant now, string ending)
    {
        var stamp = $"{path}.{now.ToDateTimeUtc().ToString("yyyyMMdd-HHmmss", CultureInfo.InvariantCulture)}";
        return Enumerable.Range(1, int.MaxValue).Select(i => i == 1 ? $"{stamp}.{ending}" : $"{stamp}-{i}.{ending}")
            .First(name => !Path.Exists(name));
    }

    /// <summary>Whether the file's own permission bits say that it is not to be written to.</summary>
    public static bool IsReadOnly(string path)
    {
        FileSystemInfo file = new FileInfo(path);
        if (file.LinkTarget is not null)
            file = file.ResolveLinkTarget(returnFinalTarget: true) ?? file;
        return file is FileInfo { Exists: true, IsReadOnly: true };
    }

    /// <summary>A connection that may write; null where the file, its folder or its disk may only be read.</summary>
    private static SqliteConnection? Writable(string path)
    {
        if (IsReadOnly(path))
            return null;
        SqliteConnection? connection = null;
        try
        {
            connection = Connect(path);
            if (SQLitePCL.raw.sqlite3_db_readonly(connection.Handle!, "main") == 0)
            {
                RequireOwner(connection, path);
                return connection;
            }

            connection.Dispose();
            return null;
        }
        catch (SqliteException trouble) when (Trouble.IsRefusal(trouble)
            && new FileInfo(path) is { Exists: true, Length: > 0 })
        {
            connection?.Dispose();
            return null;
        }
        catch
        {
            connection?.Dispose();
            throw;
        }
    }

    private static string? BringUpToDate(SqliteConnection connection, string path, Instant now, Migrations migrations)
    {
        var isLedger = RequireOwner(connection, path);
        if (migrations.Missing(connection, path).Count == 0)
            return null;
        connection.DefaultTimeout = Migrations.LongestWaitSeconds;
        LogAhead(connection);
        var copied = migrations.Apply(connection, path, now, isLedger ? Keep : null);
        connection.DefaultTimeout = WaitSeconds;
        return copied;

        KeptCopy Keep()
        {
            using var reader = Connect(path);
            return Backup.Keep(reader, path, now, "backup");
        }
    }

    private static ReusingConnection Connect(string path, SqliteOpenMode mode)
    {
        SqliteSetup.Prepare();
        var connection = new ReusingConnection(new SqliteConnectionStringBuilder
        {
            DataSource = path, Mode = mode, ForeignKeys = true, Pooling = false, DefaultTimeout = WaitSeconds,
        }.ToString());
        try
        {
            connection.Open();
            Guards.Pass(connection);
            return connection;
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    private static void MakeFolder(string path)
    {
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw new LedgerFileException($"the folder of {path} cannot be made: {FileTrouble.Reason(trouble)}",
                trouble);
        }

        if (Directory.Exists(path))
            throw new LedgerFileException($"{path} is a folder; name a file with --file");
    }

    /// <summary>
    /// The program that the file belongs to; null while it holds nothing, as after a first use that was broken off. One
    /// statement, so that a first use by another process is seen whole or not at all.
    /// </summary>
    private static long? Owner(SqliteConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText =
            """
            SELECT CASE WHEN application_id = 0 AND NOT EXISTS (
                SELECT 1 FROM sqlite_schema WHERE name <> 'SchemaVersions' AND tbl_name NOT LIKE 'sqlite\_%' ESCAPE '\')
                    THEN NULL ELSE application_id END
            FROM pragma_application_id
            """;
        return command.ExecuteScalar() as long?;
    }
}
