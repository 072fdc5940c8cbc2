using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Ledger.Storage.Files;

namespace Ledger.Storage.Deriving;

/// <summary>
/// What an earlier version posted and kept no words of: the rows of its entries, as one block that travels whole. Which
/// rows those are follows from the tables' own references: those that name such an entry, those that belong to
/// something that only such entries made, and what was defined then.
/// </summary>
internal sealed class HorizonBlock
{
    private const string Member = "horizon";

    /// <summary>What is kept up as rows come, the words themselves, and what is typed and not saved.</summary>
    private static readonly string[] Elsewhere = ["said", "said_name", "draft",
        .. Totals.All.Select(total => total.Table)];

    /// <summary>What is defined, by the kind of its entry, and the column that names it.</summary>
    private static readonly (string Table, string Name, string Kind)[] Catalogue =
    [
        ("item", "code", "item"), ("process", "name", "process"), ("holder", "code", "holder"),
        ("film_format", "code", "format"), ("setting", "name", "setting"),
    ];

    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private readonly Dictionary<string, (IReadOnlyList<string> Columns,
        IReadOnlyList<IReadOnlyList<object?>> Rows)> _tables;

    private HorizonBlock(
        string digest,
        Dictionary<string, (IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<object?>> Rows)> tables)
    {
        Digest = digest;
        _tables = tables;
    }

    /// <summary>
    /// What tells one block from another. What was taken back since, and how things are defined now, is no part of it.
    /// </summary>
    public string Digest { get; }

    /// <summary>The block of a ledger; null when all that it holds was said.</summary>
    public static HorizonBlock? Of(SqliteConnection connection)
    {
        if (!new SaidLog(connection).IsBehindHorizon())
            return null;
        var tables = new Dictionary<string, (IReadOnlyList<string>, IReadOnlyList<IReadOnlyList<object?>>)>();
        foreach (var table in Tables(connection))
        {
            var columns = connection.Texts($"SELECT name FROM pragma_table_info('{table}')");
            var rows = Rows(connection,
                $"SELECT * FROM \"{table}\" t WHERE {Condition(connection, table)} ORDER BY {Numbered(columns.Count)}");
            if (rows.Count > 0)
                tables.Add(table, (columns, rows));
        }

        return new(DigestOf(tables), tables);
    }

    /// <summary>Whether a line of a journal holds a block.</summary>
    public static bool IsOne(string line) => line.StartsWith($"{{\"{Member}\":", StringComparison.Ordinal);

    /// <summary>The block that a line holds.</summary>
    /// <exception cref="LedgerFileException">It is not as it was written.</exception>
    public static HorizonBlock Read(string line)
    {
        try
        {
            using var document = JsonDocument.Parse(line);
            var root = document.RootElement.GetProperty(Member);
            var tables = root.GetProperty("tables").EnumerateObject().ToDictionary(table => table.Name, table => (
                (IReadOnlyList<string>)[.. table.Value.GetProperty("columns").EnumerateArray()
                    .Select(column => column.GetString()!)],
                (IReadOnlyList<IReadOnlyList<object?>>)[.. table.Value.GetProperty("rows").EnumerateArray().Select(
                    row => (IReadOnlyList<object?>)[.. row.EnumerateArray().Select(ValueOf)])]));
            var block = new HorizonBlock(DigestOf(tables), tables);
            if (block.Digest == root.GetProperty("digest").GetString())
                return block;
        }
        catch (Exception wrong) when (wrong is JsonException or KeyNotFoundException or InvalidOperationException
            or FormatException)
        {
            throw Unreadable(wrong);
        }

        throw Unreadable(null);
    }

    /// <summary>The block as a line of a journal.</summary>
    public string Line()
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, Options))
        {
            json.WriteStartObject();
            json.WriteStartObject(Member);
            json.WriteString("digest", Digest);
            json.WriteStartObject("tables");
            foreach (var (table, (columns, rows)) in _tables)
            {
                json.WriteStartObject(table);
                json.WriteStartArray("columns");
                foreach (var column in columns)
                    json.WriteStringValue(column);
                json.WriteEndArray();
                json.WriteStartArray("rows");
                foreach (var row in rows)
                    Write(row, json);
                json.WriteEndArray();
                json.WriteEndObject();
            }

            json.WriteEndObject();
            json.WriteEndObject();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    /// <summary>
    /// Writes the block into a ledger that holds nothing, inside a transaction of the caller; totals are added up
    /// afterwards.
    /// </summary>
    public void WriteInto(SqliteConnection connection)
    {
        connection.Run("PRAGMA defer_foreign_keys = ON");
        foreach (var (table, (columns, rows)) in _tables)
        {
            var known = connection.Texts($"SELECT name FROM pragma_table_info('{Quoted(table)}')");
            if (known.Count == 0 || columns.Except(known).Any())
                throw Unreadable(null);
            using var insert = connection.CreateCommand();
            insert.CommandText =
                $"INSERT OR IGNORE INTO \"{table}\" ({string.Join(", ", columns.Select(column => $"\"{column}\""))}) "
                    + $"VALUES ({string.Join(", ", columns.Select((_, i) => $"$v{i}"))})";
            var values = columns.Select((_,
                i) => insert.Parameters.Add(new SqliteParameter { ParameterName = $"$v{i}" })).ToList();
            foreach (var row in rows)
            {
                for (var i = 0; i < row.Count; i++)
                    values[i].Value = row[i] ?? DBNull.Value;
                insert.ExecuteNonQuery();
            }
        }

        Totals.AddUp(connection);
    }

    private static IEnumerable<string> Tables(SqliteConnection connection) => connection
        .Texts($"SELECT name FROM sqlite_schema WHERE type = 'table' AND {Schema.IsTheLedgers} ORDER BY name")
        .Except(Elsewhere);

    /// <summary>Which rows of a table belong to the block.</summary>
    private static string Condition(SqliteConnection connection, string table)
    {
        const string Unsaid = "NOT IN (SELECT e.id FROM entry e JOIN said s ON s.key = e.key)";
        if (table == "entry")
            return "t.key NOT IN (SELECT key FROM said)";
        if (Catalogue.FirstOrDefault(one => one.Table == table) is { Table: not null } defined)
            return Kept("t", defined);
        if (HasEntry(connection, table))
            return $"t.entry_id {Unsaid}";
        var parents = Wipe.Parents(connection, table).ToList();
        var owned = parents.Where(parent => HasEntry(connection, parent.Table) && parent.Table != "entry").ToList();
        return owned.Count > 0
            ? string.Join(" AND ",
                owned.Select(parent =>
                    $"EXISTS (SELECT 1 FROM \"{parent.Table}\" p WHERE p.entry_id {Unsaid} AND {Joined(parent)})"))
            : string.Join(" AND ",
                parents.Where(parent => Catalogue.Any(one => one.Table == parent.Table)).Select(parent =>
                    $"EXISTS (SELECT 1 FROM \"{parent.Table}\" p WHERE {Joined(parent)} AND "
                    + $"{Kept("p", Catalogue.First(one => one.Table == parent.Table))})").DefaultIfEmpty("0"));

        static string Joined(Reference parent) =>
            string.Join(" AND ",
                parent.From.Zip(parent.To, (from, to) => $"(t.\"{from}\" IS p.\"{to}\" OR t.\"{from}\" IS NULL)"));
    }

    /// <summary>What was defined when the first words were kept; all that is defined, before that.</summary>
    private static string Kept(string row, (string Table, string Name, string Kind) defined) =>
        $"(NOT EXISTS (SELECT 1 FROM said) OR EXISTS (SELECT 1 FROM said s WHERE s.key = '{Horizon.Prefix}"
            + $"{defined.Kind} ' || {row}.{defined.Name}))";

    private static bool HasEntry(SqliteConnection connection, string table) => table != "setting"
        && connection.Texts($"SELECT name FROM pragma_table_info('{Quoted(table)}') WHERE name = 'entry_id'").Count
            == 1;

    private static string Quoted(string name) => name.Replace("'", "''", StringComparison.Ordinal);

    private static string Numbered(int columns) => string.Join(", ", Enumerable.Range(1, columns));

    private static List<IReadOnlyList<object?>> Rows(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        using var reader = command.ExecuteReader();
        var rows = new List<IReadOnlyList<object?>>();
        while (reader.Read())
            rows.Add(
                [.. Enumerable.Range(0, reader.FieldCount)
                    .Select(i => reader.IsDBNull(i) ? null : reader.GetValue(i))]);
        return rows;
    }

    /// <summary>
    /// Of what can be defined otherwise later, only its number and its name count; of an entry all but whether it
    /// counts now.
    /// </summary>
    private static string DigestOf(
        Dictionary<string, (IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<object?>> Rows)> tables)
    {
        var text = new StringBuilder();
        foreach (var (table, (columns, rows)) in tables.OrderBy(table => table.Key, StringComparer.Ordinal))
        {
            if (table is "item_handling" or "item_capacity" or "formula" or "process_step")
                continue;
            string[] counted = Catalogue.FirstOrDefault(one => one.Table == table) is { Table: not null } defined
                ? ["id", defined.Name] : [.. columns.Where(column => column != "counts" || table != "entry")];
            var indexes = columns.Select((column, i) => (column, i)).Where(one => counted.Contains(one.column))
                .Select(one => one.i).ToList();
            foreach (var row in rows.Select(row => string.Join('|', indexes.Select(i => Text(row[i]))))
                .Order(StringComparer.Ordinal))
                text.Append(table).Append('|').Append(row).Append('\n');
        }

        return Sha256.Hex(text.ToString());
    }

    private static string Text(object? value) =>
        value is null ? "-" : Convert.ToString(value, CultureInfo.InvariantCulture)!;

    private static void Write(IReadOnlyList<object?> row, Utf8JsonWriter json)
    {
        json.WriteStartArray();
        foreach (var value in row)
            if (value is null)
                json.WriteNullValue();
            else if (value is long number)
                json.WriteNumberValue(number);
            else
                json.WriteStringValue(Text(value));
        json.WriteEndArray();
    }

    private static object? ValueOf(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Null => null,
        JsonValueKind.Number => value.GetInt64(),
        _ => value.GetString(),
    };

    private static LedgerFileException Unreadable(Exception? cause) => new(
        "what an earlier version posted cannot be read from this journal; accepted is what `trayledger export` of the "
            + "same version writes into journal.jsonl",
        cause);
}
