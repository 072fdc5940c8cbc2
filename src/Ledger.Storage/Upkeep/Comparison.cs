using Ledger.Storage.Files;

namespace Ledger.Storage.Upkeep;

/// <summary>
/// Compares two ledgers table by table, by names: places, lots and items may have other numbers in the other file, and
/// still be the same. How a column is named follows from the tables' own references.
/// </summary>
internal sealed class Comparison
{
    /// <summary>
    /// What is no part of what follows: the words themselves, what is typed and not saved, totals that may hold a
    /// nought, and what the file says of itself.
    /// </summary>
    private static readonly string[] NotDerived = ["said", "said_name", "draft", "stock_month",
        "bath_total", ReadMeCheck.Table];

    private readonly SqliteConnection _schema;
    private readonly IReadOnlyList<string> _tables;

    /// <summary>Compares by the tables of a connection.</summary>
    public Comparison(SqliteConnection schema)
    {
        _schema = schema;
        _tables = [.. Schema.Expected.Values.Where(part => part.Type == "table" && !NotDerived.Contains(part.Name))
            .Select(part => part.Name)];
    }

    /// <summary>What differs: the first row of each table that only one of them holds.</summary>
    public IEnumerable<(string Table, string? Kept, string? Derived)> Differences(SqliteConnection kept,
        SqliteConnection derived)
    {
        foreach (var table in _tables)
            if (Difference(table, kept, derived) is var (one, other))
                yield return (table, one, other);
    }

    /// <summary>
    /// All rows of all tables as text, by names, in order, with the words in which the journal tells them.
    /// </summary>
    public IEnumerable<string> Dump(SqliteConnection connection) =>
        _tables.SelectMany(table => Rows(Columns(table), table, connection).Select(row => $"{table}: {row}"));

    private (string? Kept, string? Derived)? Difference(string table, SqliteConnection kept, SqliteConnection derived)
    {
        var columns = Columns(table).FindAll(column => !IsOnlyWords(table, column.Name));
        using var one = Rows(columns, table, kept).GetEnumerator();
        using var other = Rows(columns, table, derived).GetEnumerator();
        while (true)
        {
            var (isThere, isThereToo) = (one.MoveNext(), other.MoveNext());
            if (!isThere && !isThereToo)
                return null;
            if (!isThere || !isThereToo || one.Current != other.Current)
                return (isThere ? one.Current : null, isThereToo ? other.Current : null);
        }
    }

    private static IEnumerable<string> Rows(List<(string Name, string Sql)> columns, string table,
        SqliteConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText =
            $"SELECT {string.Join(", ", columns.Select(column => column.Sql))} FROM \"{table}\" t0 ORDER BY "
                + string.Join(", ", Enumerable.Range(1, columns.Count));
        using var reader = command.ExecuteReader();
        while (reader.Read())
            yield return string.Join(", ", columns.Select((column, i) =>
                $"{column.Name} "
                    + $"{(reader.IsDBNull(i) ? "-"
                        : Convert.ToString(reader.GetValue(i), CultureInfo.InvariantCulture))}"));
    }

    private List<(string Name, string Sql)> Columns(string table) =>
    [
        .. _schema.Texts($"SELECT name FROM pragma_table_info('{table}')")
            .Where(column => !IsOnlyANumber(table, column))
            .Select(column => (column, Named(table, column, $"t0.\"{column}\""))),
    ];

    private static bool IsOnlyANumber(string table, string column) =>
        column == "id" && table is "item" or "process" or "holder" or "movement" or "place" or "lot";

    /// <summary>How a version tells what was said: another one may tell it otherwise, and nothing is wrong.</summary>
    private static bool IsOnlyWords(string table, string column) => (table, column) is ("entry", "summary");

    /// <summary>What names the row that a column refers to.</summary>
    private string Named(string table, string column, string value) => (table, column) switch
    {
        ("entry", "id") => $"(SELECT key FROM entry WHERE id = {value})",
        ("item", "id") => $"(SELECT code FROM item WHERE id = {value})",
        ("process", "id") => $"(SELECT name FROM process WHERE id = {value})",
        ("holder", "id") => $"(SELECT code FROM holder WHERE id = {value})",
        ("place", "id") =>
            "(SELECT iif(p.id < 100, p.id, p.kind || ' ' || p.code || ' of ' || (SELECT key FROM entry WHERE id = "
                + "p.entry_id))"
            + $" FROM place p WHERE p.id = {value})",
        ("lot", "id") =>
            "(SELECT (SELECT key FROM entry WHERE id = l.entry_id) || '/' || (SELECT count(*) FROM lot m WHERE "
                + "m.entry_id = l.entry_id AND m.id <= l.id)"
            + $" FROM lot l WHERE l.id = {value})",
        _ => Referred(table, column) is var (parent, target) ? Named(parent, target, value) : value,
    };

    private (string Table, string Column)? Referred(string table, string column) => _schema.Texts(
        $"SELECT \"table\" || '|' || \"to\" FROM pragma_foreign_key_list('{table}') WHERE \"from\" = '"
            + $"{column}' ORDER BY id DESC LIMIT 1") is [var found]
        ? (found.Split('|')[0], found.Split('|')[1]) : null;
}
