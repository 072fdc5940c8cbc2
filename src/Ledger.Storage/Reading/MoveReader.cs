namespace Ledger.Storage.Reading;

/// <summary>Reads what an item's containers took in and gave.</summary>
internal sealed class MoveReader(Snapshot snapshot)
{
    public IReadOnlyList<ItemMove> MovesOf(string item, LocalDate asOf, int atMost) =>
    [
        .. snapshot.Connection.Query<MoveRow>(
            """
            SELECT Number, Date, Summary, Container, Lot, Change, Value
            FROM (
                SELECT e.id AS Number, e.date AS Date, e.summary AS Summary, p.code AS Container, m.lot_id AS Lot,
                    sum(m.quantity) AS Change, sum(m.value) AS Value,
                    max(m.id) AS Id
                FROM item i JOIN lot l ON l.item_id = i.id JOIN movement m ON m.lot_id = l.id
                    JOIN entry e ON e.id = m.entry_id
                JOIN place p ON p.id = m.to_place WHERE i.code = @item AND e.date <= @asOf AND p.kind = 'container'
                GROUP BY e.id, p.id
                UNION ALL
                SELECT e.id, e.date, e.summary, p.code, m.lot_id, -sum(m.quantity), -sum(m.value), max(m.id)
                FROM item i JOIN lot l ON l.item_id = i.id JOIN movement m ON m.lot_id = l.id
                    JOIN entry e ON e.id = m.entry_id
                JOIN place p ON p.id = m.from_place WHERE i.code = @item AND e.date <= @asOf AND p.kind = 'container'
                GROUP BY e.id, p.id)
            ORDER BY Date DESC, Id DESC LIMIT @atMost
            """,
            new { item, asOf = Dates.Text(asOf), atMost })
        .Select(row => new ItemMove(row.Number, Days.Read(row.Date), row.Summary, row.Container,
            new(row.Lot), row.Change, new(row.Value))),
    ];

    /// <summary>
    /// What went from the stock (any real place that is no bath) to where it does not come back from.
    /// </summary>
    public IReadOnlyList<StockLeft> LeftOf(string item, string? container, LocalDate since, LocalDate asOf) =>
    [
        .. snapshot.Connection.Query<LeftRow>(
            """
            SELECT e.date AS Date, sum(m.quantity) AS Quantity
            FROM item i CROSS JOIN lot l ON l.item_id = i.id CROSS JOIN movement m ON m.lot_id = l.id
                CROSS JOIN standing_entry e ON e.id = m.entry_id CROSS JOIN place f ON f.id = m.from_place
                CROSS JOIN place t ON t.id = m.to_place
            WHERE i.code = @item AND e.date BETWEEN @since AND @asOf
                AND iif(@container IS NULL, f.id >= 100 AND f.kind <> 'bath' AND (t.id < 100
                    OR t.kind = 'bath'), f.code = @container)
            GROUP BY e.date ORDER BY e.date DESC
            """,
            new { item, container, since = Dates.Text(since), asOf = Dates.Text(asOf) })
        .Select(row => new StockLeft(Days.Read(row.Date), row.Quantity)),
    ];

    internal sealed record LeftRow(string Date, long Quantity);

    internal sealed record MoveRow(long Number, string Date, string Summary, string Container,
        long Lot, long Change, long Value);
}
