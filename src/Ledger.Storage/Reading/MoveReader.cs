namespace Ledger.Storage.Reading;

/// <summary>
/// Reads what an item's containers took in and gave. What moved is found through the item's lots or through the entries
/// of the days in question, whichever are fewer: neither a long history nor a full journal is gone through for the last
/// few moves.
/// </summary>
internal sealed class MoveReader(Snapshot snapshot)
{
    private const string ThroughLots =
        "lot l CROSS JOIN movement m ON m.lot_id = l.id CROSS JOIN entry e ON e.id = m.entry_id";

    private const string ThroughEntries =
        "entry e CROSS JOIN movement m ON m.entry_id = e.id CROSS JOIN lot l ON l.id = m.lot_id";

    /// <summary>As many as are counted to tell which are fewer.</summary>
    private const int Counted = 20_000;

    public IReadOnlyList<ItemMove> MovesOf(string item, LocalDate asOf, int atMost)
    {
        if (ItemOf(item) is not { } id)
            return [];
        var since = SinceUses(id, asOf, atMost);
        var moves = MovesOf(id, since, asOf, atMost);
        return moves.Count == atMost || since.Length == 0 ? moves : MovesOf(id, "", asOf, atMost);
    }

    private List<ItemMove> MovesOf(long id, string since, LocalDate asOf, int atMost)
    {
        var period = new { id, from = since, to = Dates.Text(asOf), atMost };
        var through = Through(id, period.from, period.to);
        return
        [
            .. snapshot.Connection.Query<MoveRow>(
                $"""
                SELECT Number, Date, Summary, Container, Lot, Change, Value
                FROM (
                    SELECT e.id AS Number, e.date AS Date, e.summary AS Summary, p.code AS Container, m.lot_id AS Lot,
                        sum(m.quantity) AS Change, sum(m.value) AS Value,
                        max(m.id) AS Id
                    FROM {through} CROSS JOIN place p ON p.id = m.to_place
                    WHERE l.item_id = @id AND e.date BETWEEN @from AND @to AND p.kind = 'container'
                    GROUP BY e.id, p.id
                    UNION ALL
                    SELECT e.id, e.date, e.summary, p.code, m.lot_id, -sum(m.quantity), -sum(m.value), max(m.id)
                    FROM {through} CROSS JOIN place p ON p.id = m.from_place
                    WHERE l.item_id = @id AND e.date BETWEEN @from AND @to AND p.kind = 'container'
                    GROUP BY e.id, p.id)
                ORDER BY Date DESC, Id DESC LIMIT @atMost
                """,
                period)
            .Select(row => new ItemMove(row.Number, Days.Read(row.Date), row.Summary, row.Container,
                new(row.Lot), row.Change, new(row.Value))),
        ];
    }

    /// <summary>
    /// What went from the stock (any real place that is no bath) to where it does not come back from.
    /// </summary>
    public IReadOnlyList<StockLeft> LeftOf(string item, string? container, LocalDate since, LocalDate asOf)
    {
        if (ItemOf(item) is not { } id)
            return [];
        var period = new { id, container, from = Dates.Text(since), to = Dates.Text(asOf) };
        return
        [
            .. snapshot.Connection.Query<LeftRow>(
                $"""
                SELECT e.date AS Date, sum(m.quantity) AS Quantity
                FROM {Through(id, period.from, period.to)} CROSS JOIN standing_entry s ON s.id = e.id
                    CROSS JOIN place f ON f.id = m.from_place CROSS JOIN place t ON t.id = m.to_place
                WHERE l.item_id = @id AND e.date BETWEEN @from AND @to
                    AND iif(@container IS NULL, f.id >= 100 AND f.kind <> 'bath' AND (t.id < 100
                        OR t.kind = 'bath'), f.code = @container)
                GROUP BY e.date ORDER BY e.date DESC
                """,
                period)
            .Select(row => new StockLeft(Days.Read(row.Date), row.Quantity)),
        ];
    }

    private long? ItemOf(string item) =>
        snapshot.Connection.QueryFirstOrDefault<long?>("SELECT id FROM item WHERE code = @item", new { item });

    /// <summary>
    /// The day since which the item was used on twice as many days as moves are wanted, so that they are likely to be
    /// there; empty where it was not used as often.
    /// </summary>
    private string SinceUses(long id, LocalDate asOf, int moves) => snapshot.Connection.QueryFirstOrDefault<string?>(
        "SELECT date FROM use_day WHERE item_id = @id AND date <= @to ORDER BY date DESC LIMIT 1 OFFSET @days",
        new { id, to = Dates.Text(asOf), days = 2L * moves }) ?? "";

    private string Through(long id, string from, string to) => snapshot.Connection.ExecuteScalar<long>(
        """
        SELECT (SELECT count(*) FROM (SELECT 1 FROM entry WHERE date BETWEEN @from AND @to LIMIT @Counted))
            < (SELECT count(*) FROM (SELECT 1 FROM lot l CROSS JOIN movement m ON m.lot_id = l.id WHERE l.item_id = @id
                LIMIT @Counted))
        """,
        new { id, from, to, Counted }) == 1 ? ThroughEntries : ThroughLots;

    internal sealed record LeftRow(string Date, long Quantity);

    internal sealed record MoveRow(long Number, string Date, string Summary, string Container,
        long Lot, long Change, long Value);
}
