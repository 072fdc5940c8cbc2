using System.Runtime.CompilerServices;
using Ledger.Storage.Files;
using Ledger.Storage.Writing;

namespace Ledger.Storage.Deriving;

/// <summary>
/// Takes out all that some entries wrote, so that they can be decided once more. Which rows those are follows from the
/// tables' own references: rows that name the entry, and rows that belong to a place, a lot or an order which such a
/// row made.
/// </summary>
internal sealed class Wipe(SqliteConnection connection)
{
    /// <summary>The list of entries, a table of this connection alone.</summary>
    private const string Entries = "temp.wiped";

    /// <summary>How to delete, for each connection: the schema of an open ledger stays as it is.</summary>
    private static readonly ConditionalWeakTable<SqliteConnection, IReadOnlyList<string>> _deletions = [];

    /// <summary>Takes out what the entries wrote. References are checked when the transaction ends.</summary>
    public void Of(IEnumerable<long> entries)
    {
        connection.Run("PRAGMA defer_foreign_keys = ON");
        connection.Run($"CREATE TABLE IF NOT EXISTS {Entries} (id INTEGER PRIMARY KEY); DELETE FROM {Entries}");
        using (var insert = connection.CreateCommand())
        {
            insert.CommandText = $"INSERT INTO {Entries} (id) VALUES ($id)";
            var id = insert.Parameters.Add("$id", SqliteType.Integer);
            foreach (var entry in entries)
            {
                id.Value = entry;
                insert.ExecuteNonQuery();
            }
        }

        connection.Run(TotalsThatGo);
        connection.Run(TotalsLessWhatGoes);
        new UseByDay(connection).Take(Entries);
        foreach (var statement in _deletions.GetValue(connection, _ => Deletions()))
            connection.Run(statement);
    }

    private const string TotalsThatGo =
        """
        CREATE TEMP TABLE IF NOT EXISTS wiped_total (place INTEGER, lot INTEGER, quantity INTEGER, value INTEGER,
            PRIMARY KEY (place, lot)) WITHOUT ROWID
        """;

    private static readonly string TotalsLessWhatGoes =
        $"""
        DELETE FROM temp.wiped_total;
        INSERT INTO temp.wiped_total
        SELECT place, lot, sum(quantity), sum(value) FROM (
            SELECT m.to_place AS place, m.lot_id AS lot, m.quantity, m.value FROM {Entries} w
                CROSS JOIN movement m ON m.entry_id = w.id
            UNION ALL
            SELECT m.from_place, m.lot_id, -m.quantity, -m.value FROM {Entries} w
                CROSS JOIN movement m ON m.entry_id = w.id)
        GROUP BY place, lot;
        INSERT OR IGNORE INTO balance (place_id, lot_id, quantity, value)
        SELECT place, lot, 0, 0 FROM temp.wiped_total WHERE quantity <> 0 OR value <> 0;
        UPDATE balance SET quantity = balance.quantity - t.quantity, value = balance.value - t.value
        FROM temp.wiped_total t WHERE balance.place_id = t.place AND balance.lot_id = t.lot;
        DELETE FROM balance WHERE (place_id, lot_id) IN (SELECT place, lot
            FROM temp.wiped_total) AND quantity = 0 AND value = 0;
        """;

    private IReadOnlyList<string> Deletions()
    {
        var tables = connection.Texts(
            $"SELECT name FROM sqlite_schema WHERE type = 'table' AND {Schema.IsTheLedgers} ORDER BY name");
        var owned = tables.Where(table => table != "entry" && HasEntry(table)).ToList();
        var belonging = tables.Except(owned).Except(Totals.All.Select(total => total.Table))
            .SelectMany(table => Belonging(table, owned)).ToList();
        return
        [
            $"""
            UPDATE bath_total SET area = bath_total.area - g.area, weighted = bath_total.weighted - g.weighted
            FROM (SELECT b.place_id, sum(b.area) AS area, sum(b.weighted) AS weighted
                FROM {Entries} w CROSS JOIN bath_work b ON b.entry_id = w.id JOIN standing_entry e ON e.id = w.id
                    WHERE b.is_first = 1
                GROUP BY b.place_id) g
            WHERE g.place_id = bath_total.place_id
            """,
            $"DELETE FROM bath_total WHERE place_id IN (SELECT b.place_id FROM {Entries} w CROSS JOIN bath b ON "
                + "b.entry_id = w.id)",
            $"""
            UPDATE stock_month SET change = stock_month.change - g.change
            FROM (SELECT substr(e.date, 1, 7) AS month, sum(
                    iif(t.id >= 100 AND t.kind <> 'bath', m.value, 0) - iif(f.id >= 100
                        AND f.kind <> 'bath', m.value, 0)) AS change
                FROM {Entries} w CROSS JOIN movement m ON m.entry_id = w.id JOIN entry e ON e.id = m.entry_id
                JOIN place f ON f.id = m.from_place JOIN place t ON t.id = m.to_place WHERE m.value > 0 GROUP BY 1) g
            WHERE g.month = stock_month.month
            """,
            .. belonging,
            .. owned.Select(table => $"DELETE FROM \"{table}\" WHERE entry_id IN (SELECT id FROM {Entries})"),
        ];
    }

    private bool HasEntry(string table) =>
        connection.Texts($"SELECT name FROM pragma_table_info('{table}') WHERE name = 'entry_id'").Count == 1;

    /// <summary>How to delete rows that name no entry themselves, but something that an entry made.</summary>
    private IEnumerable<string> Belonging(string table, List<string> owned)
    {
        foreach (var parent in Parents(connection, table).Where(parent => owned.Contains(parent.Table)))
            yield return
                $"""
                DELETE FROM "{table}" WHERE ({string.Join(", ", parent.From)}) IN (
                    SELECT {string.Join(", ", parent.To.Select(column => $"p.{column}"))}
                    FROM {Entries} w CROSS JOIN "{parent.Table}" p ON p.entry_id = w.id)
                """;
    }

    /// <summary>What the rows of a table refer to.</summary>
    public static IEnumerable<Reference> Parents(SqliteConnection connection, string table) => connection.Texts(
        $"""
        SELECT DISTINCT "table" || '|' || group_concat("from") || '|' || group_concat(coalesce("to", ''))
            FROM pragma_foreign_key_list('{table}')
        GROUP BY id
        """).Select(text => text.Split('|'))
            .Select(parts => new Reference(parts[0], parts[1].Split(','), parts[2].Split(',')));
}

/// <summary>A reference of a table to another one.</summary>
/// <param name="Table">The other one.</param>
/// <param name="From">The columns that refer.</param>
/// <param name="To">The columns that they refer to.</param>
internal sealed record Reference(string Table, IReadOnlyList<string> From, IReadOnlyList<string> To);
