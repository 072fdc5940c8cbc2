using Ledger.Storage.Files;

namespace Ledger.Storage.Reading;

/// <summary>Reads what came without a price, and where it went.</summary>
internal sealed class UnpricedReader(Snapshot snapshot)
{
    /// <summary>The baths that something without a price was poured into.</summary>
    public HashSet<long> Baths() =>
    [
        .. snapshot.Connection.Query<long>(
            """
            SELECT DISTINCT b.place_id FROM lot l CROSS JOIN movement m ON m.lot_id = l.id
                CROSS JOIN bath b ON b.place_id = m.to_place
            WHERE l.is_priced = 0
            """),
    ];

    /// <summary>The entries that used up chemistry or supplies without a price.</summary>
    public HashSet<long> Sessions() =>
    [
        .. snapshot.Connection.Query<long>(
            "SELECT DISTINCT m.entry_id FROM lot l CROSS JOIN movement m ON m.lot_id = l.id WHERE l.is_priced = 0 AND "
                + $"m.to_place = {InSql.UsedUp}"),
    ];

    /// <summary>
    /// What of it was used in a period or is on hand at its end. What became a stock solution is told with the
    /// solution, whose cost is then not known either.
    /// </summary>
    public IReadOnlyList<UnpricedStock> Stock((string From, string To) period) =>
    [
        .. snapshot.Connection.Query<StockRow>(
            """
            SELECT l.entry_id AS Entry, i.code AS Item, i.kind AS Kind, i.unit AS Unit,
                sum(CASE WHEN e.date < @From OR f.id IN (1, 7) OR t.id IN (1, 7) THEN 0
                    WHEN f.id >= 100 AND f.kind <> 'bath' AND (t.id < 100 OR t.kind = 'bath') THEN m.quantity
                    WHEN t.id >= 100 AND t.kind <> 'bath' AND (f.id < 100 OR f.kind = 'bath') THEN -m.quantity
                        ELSE 0 END) AS Used,
                sum(iif(t.id >= 100 AND t.kind <> 'bath', m.quantity, 0) - iif(f.id >= 100
                    AND f.kind <> 'bath', m.quantity, 0)) AS OnHand
            FROM lot l CROSS JOIN standing_entry came ON came.id = l.entry_id CROSS JOIN item i ON i.id = l.item_id
                CROSS JOIN movement m ON m.lot_id = l.id CROSS JOIN entry e ON e.id = m.entry_id
                CROSS JOIN place f ON f.id = m.from_place CROSS JOIN place t ON t.id = m.to_place
            WHERE l.is_priced = 0 AND e.date <= @To
            GROUP BY l.id HAVING Used <> 0 OR OnHand <> 0 ORDER BY i.kind, i.code, l.id
            """,
            new { period.From, period.To })
        .Select(row => new UnpricedStock(
            row.Entry, row.Item, Named.Kind(row.Kind), new(row.Used, Units.Named(row.Unit)!.Value),
            new(row.OnHand, Units.Named(row.Unit)!.Value))),
    ];

    internal sealed record StockRow(long Entry, string Item, string Kind, string Unit, long Used, long OnHand);
}
