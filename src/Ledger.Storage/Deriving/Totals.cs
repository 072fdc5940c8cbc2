using Ledger.Storage.Files;
using Ledger.Storage.Writing;

namespace Ledger.Storage.Deriving;

/// <summary>
/// What the file keeps although it follows from what was recorded, so that reading it does not grow with the history.
/// Triggers keep it while entries are written; here it is derived from the beginning, to check and to mend.
/// </summary>
internal static class Totals
{
    /// <summary>What each place holds of each lot: what came, less what went.</summary>
    public const string Balances = """
        SELECT place_id, lot_id, sum(quantity) AS quantity, sum(value) AS value
        FROM (
            SELECT to_place AS place_id, lot_id, quantity, value FROM movement
            UNION ALL SELECT from_place, lot_id, -quantity, -value FROM movement)
        GROUP BY place_id, lot_id HAVING sum(quantity) <> 0 OR sum(value) <> 0
        """;

    /// <summary>What has passed through each bath that counts.</summary>
    public const string BathTotals = """
        SELECT w.place_id, sum(w.area) AS area, sum(w.weighted) AS weighted
        FROM bath_work w JOIN standing_entry e ON e.id = w.entry_id WHERE w.is_first = 1 GROUP BY w.place_id
        """;

    /// <summary>
    /// What the stock's value changed by in each month; stock is every real place (100 and up) that is no bath.
    /// </summary>
    public const string StockMonths = """
        SELECT substr(e.date, 1, 7) AS month, sum(
            iif(t.id >= 100 AND t.kind <> 'bath', m.value, 0) - iif(f.id >= 100
                AND f.kind <> 'bath', m.value, 0)) AS change
        FROM movement m JOIN entry e ON e.id = m.entry_id
        JOIN place f ON f.id = m.from_place JOIN place t ON t.id = m.to_place
        WHERE m.value > 0 GROUP BY 1
        """;

    /// <summary>What was used of each item on each day.</summary>
    public static string UseDays { get; } = UseByDay.Of("entry");

    /// <summary>The tables, their columns, and what their rows are derived from.</summary>
    public static IReadOnlyList<(string Table, string Columns, string Rows)> All { get; } =
    [
        ("balance", "place_id, lot_id, quantity, value", Balances),
        ("bath_total", "place_id, area, weighted", BathTotals),
        ("stock_month", "month, change", StockMonths),
        ("use_day", "item_id, date, quantity", UseDays),
    ];

    /// <summary>Derives all of them from the beginning.</summary>
    public static void AddUp(SqliteConnection connection)
    {
        foreach (var (table, columns, rows) in All)
        {
            connection.Run($"DELETE FROM {table}");
            connection.Run($"INSERT INTO {table} ({columns}) {rows}");
        }
    }
}
