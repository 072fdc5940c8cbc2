namespace Ledger.Storage.Files;

/// <summary>
/// The tables, indexes, triggers and views of a ledger: those that are there, and those that this version makes.
/// </summary>
internal static class Schema
{
    /// <summary>Each row of what the file says of itself, as text.</summary>
    public const string ReadMeRows =
        """SELECT json_array("table", "column", unit, meaning) FROM read_me ORDER BY "table", "column" """;

    /// <summary>What of sqlite_schema is neither SQLite's own nor the list of migrations that were applied.</summary>
    public const string IsTheLedgers = "name NOT LIKE 'sqlite\\_%' ESCAPE '\\' AND name <> 'SchemaVersions'";

    private static readonly Lazy<FreshLedger> Fresh = new(Make);

    /// <summary>What a ledger of this version consists of, by name: read from an empty one in memory.</summary>
    public static IReadOnlyDictionary<string, SchemaPart> Expected => Fresh.Value.Parts;

    /// <summary>What a ledger of this version says of its own tables and columns, row by row.</summary>
    public static IReadOnlyList<string> ExpectedReadMe => Fresh.Value.ReadMe;

    /// <summary>
    /// The same of its readable views alone, each before its columns, which stand in the order of the view.
    /// </summary>
    public static IReadOnlyList<ReadMeRow> ReadMeOfViews => Fresh.Value.Views;

    /// <summary>What a file consists of, by name.</summary>
    public static IReadOnlyDictionary<string, SchemaPart> Of(SqliteConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText =
            $"SELECT type, name, tbl_name, sql FROM sqlite_schema WHERE sql IS NOT NULL AND {IsTheLedgers} ORDER BY "
                + "name";
        using var reader = command.ExecuteReader();
        var parts = new SortedDictionary<string, SchemaPart>(StringComparer.Ordinal);
        while (reader.Read())
            parts[reader.GetString(1)] = new(reader.GetString(0), reader.GetString(1), reader.GetString(2),
                reader.GetString(3));
        return parts;
    }

    private static FreshLedger Make()
    {
        using var connection = FileOpener.Connect(":memory:");
        Migrations.OfThisVersion.Apply(connection, "a new ledger", Instant.MinValue, keep: null);
        return new(Of(connection), connection.Texts(ReadMeRows), [.. connection.Query<ReadMeRow>(
            """
            SELECT r."table" AS "Table", r."column" AS "Column", r.unit AS Unit, r.meaning AS Meaning
            FROM read_me r CROSS JOIN sqlite_schema v ON v.name = r."table" AND v.type = 'view'
            LEFT JOIN pragma_table_info(r."table") c ON c.name = r."column"
            ORDER BY r."table", coalesce(c.cid, -1)
            """)]);
    }

    private sealed record FreshLedger(
        IReadOnlyDictionary<string, SchemaPart> Parts, IReadOnlyList<string> ReadMe, IReadOnlyList<ReadMeRow> Views);
}

/// <summary>A table, index, trigger or view.</summary>
/// <param name="Type">Which of them it is.</param>
/// <param name="Name">Its name.</param>
/// <param name="Table">The table that it belongs to; its own name for a table or view.</param>
/// <param name="Sql">The statement that makes it.</param>
internal sealed record SchemaPart(string Type, string Name, string Table, string Sql)
{
    /// <summary>Whether it holds no data of its own, so that it can be made again.</summary>
    public bool IsMadeAgain => Type != "table";

    /// <summary>
    /// Whether the other says the same, written in whichever way: SQLite itself puts quotes in when it renames.
    /// </summary>
    public bool Means(SchemaPart other) => Type == other.Type && Table == other.Table && Bare(Sql) == Bare(other.Sql);

    private static string Bare(string sql) => string.Concat(sql.Where(c => !char.IsWhiteSpace(c) && c != '"'));
}

/// <summary>What a ledger says of one of its tables or columns.</summary>
/// <param name="Table">The table or view.</param>
/// <param name="Column">The column; empty for the table itself.</param>
/// <param name="Unit">The unit of its values; may be empty.</param>
/// <param name="Meaning">What stands there.</param>
internal sealed record ReadMeRow(string Table, string Column, string Unit, string Meaning);
