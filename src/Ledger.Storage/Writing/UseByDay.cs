using Ledger.Storage.Files;

namespace Ledger.Storage.Writing;

/// <summary>
/// Keeps what was used of each item on each day (the table use_day): added as an entry is written, taken out as it
/// goes. Film is used by the sheets that became negatives or rejects; everything else by what went from a container
/// down the drain, into a bath, into a stock solution or, as paper, into prints. A bath that is discarded was counted
/// when it was mixed.
/// </summary>
internal sealed class UseByDay(SqliteConnection connection)
{
    /// <summary>What entries used, by item and day.</summary>
    /// <param name="entries">The entries: a table or view with the column id.</param>
    public static string Of(string entries) =>
        $"""
        SELECT item_id, date, sum(quantity) AS quantity
        FROM (
            SELECT l.item_id, e.date, s.sheets AS quantity
            FROM {entries} w CROSS JOIN standing_entry e ON e.id = w.id CROSS JOIN session_sheets s ON s.entry_id = e.id
                CROSS JOIN lot l ON l.id = s.lot_id
            WHERE s.fate IN ({InSql.OfPictures})
            UNION ALL
            SELECT f.item_id, e.date, m.quantity
            FROM {entries} w CROSS JOIN standing_entry e ON e.id = w.id CROSS JOIN movement m ON m.entry_id = e.id
            CROSS JOIN container f ON f.place_id = m.from_place
            WHERE m.to_place IN ({InSql.UsedUp}, {InSql.Mixing}, {InSql.Prints}) OR EXISTS (SELECT 1 FROM bath b
                WHERE b.place_id = m.to_place))
        GROUP BY item_id, date HAVING sum(quantity) > 0
        """;

    /// <summary>Adds what an entry used.</summary>
    public void Add(long entry) => connection.Run(
        $"""
        INSERT INTO use_day (item_id, date, quantity) {Of(Only(entry))}
        ON CONFLICT DO UPDATE SET quantity = quantity + excluded.quantity
        """);

    /// <summary>Takes out what an entry used, while it still counts.</summary>
    public void Take(long entry) => Take(Only(entry));

    /// <summary>Takes out what entries used, while they still count.</summary>
    public void Take(string entries) => connection.Run(
        $"""
        CREATE TEMP TABLE IF NOT EXISTS unused (item_id INTEGER, date TEXT, quantity INTEGER, PRIMARY KEY (item_id,
            date)) WITHOUT ROWID;
        DELETE FROM temp.unused;
        INSERT INTO temp.unused {Of(entries)};
        DELETE FROM use_day WHERE (item_id, date, quantity) IN (SELECT item_id, date, quantity FROM temp.unused);
        UPDATE use_day SET quantity = use_day.quantity - t.quantity FROM temp.unused t
            WHERE t.item_id = use_day.item_id AND t.date = use_day.date
        """);

    private static string Only(long entry) => $"(SELECT {entry} AS id)";
}
