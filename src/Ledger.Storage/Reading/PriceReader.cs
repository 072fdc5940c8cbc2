using Ledger.Storage.Files;

namespace Ledger.Storage.Reading;

/// <summary>Reads what deliveries cost, and the whole life of the stock for the cost formulas that need it.</summary>
internal sealed class PriceReader(Snapshot snapshot)
{
    /// <summary>The deliveries of one item, or of all of them when none is named.</summary>
    public IReadOnlyList<LotPrice> Prices(string? item, LocalDate asOf) =>
    [
        .. snapshot.Connection.Query<PriceRow>(
            $"""
            SELECT i.code AS Item, e.date AS Date, l.id AS Lot, l.quantity AS Quantity, i.unit AS Unit, l.cost AS Cost,
                l.currency AS Currency, l.is_priced AS IsPriced
            FROM item i CROSS JOIN lot l ON l.item_id = i.id CROSS JOIN standing_entry e ON e.id = l.entry_id
            WHERE (@item IS NULL OR i.code = @item) AND e.date <= @asOf
                AND EXISTS (SELECT 1 FROM movement m WHERE m.lot_id = l.id AND m.entry_id = l.entry_id
                    AND m.from_place = {InSql.Supplier})
            ORDER BY e.date, l.id
            """,
            new { item, asOf = Dates.Text(asOf) })
        .Select(ToPrice),
    ];

    /// <summary>The last delivery that cost something.</summary>
    public LotPrice? LastPrice(string item, LocalDate by) => snapshot.Connection.Query<PriceRow>(
        $"""
        SELECT i.code AS Item, e.date AS Date, l.id AS Lot, l.quantity AS Quantity, i.unit AS Unit, l.cost AS Cost,
            l.currency AS Currency,
            l.is_priced AS IsPriced
        FROM item i CROSS JOIN lot l ON l.item_id = i.id CROSS JOIN standing_entry e ON e.id = l.entry_id
        WHERE i.code = @item AND e.date <= @by AND l.cost > 0 AND l.is_priced = 1
            AND EXISTS (SELECT 1 FROM movement m WHERE m.lot_id = l.id AND m.entry_id = l.entry_id
                AND m.from_place = {InSql.Supplier})
        ORDER BY l.id DESC LIMIT 1
        """,
        new { item, by = Dates.Text(by) }).Select(ToPrice).FirstOrDefault();

    private static LotPrice ToPrice(PriceRow row) => new(
        row.Item, Days.Read(row.Date), new(row.Lot), new(row.Quantity, Units.Named(row.Unit)!.Value),
        new(row.Cost), row.Currency)
    {
        IsPriced = row.IsPriced == 1,
    };

    public IReadOnlyList<StockMove> StockMoves(LocalDate asOf) =>
    [
        .. snapshot.Connection.Query<MoveRow>(
            """
            SELECT Entry, Date, Item, Kind, Lot, iif(IntoStock, Quantity, -Quantity) AS Change, Value,
                iif(IntoStock, FromPlace, ToPlace) AS Other, IsDeveloper
            FROM (
                SELECT e.id AS Entry, e.date AS Date, i.code AS Item, i.kind AS Kind, m.lot_id AS Lot,
                    m.quantity AS Quantity,
                    m.value AS Value, i.role IS 'developer' AS IsDeveloper,
                    m.from_place AS FromPlace, m.to_place AS ToPlace, m.id AS Number,
                    f.id >= 100 AND f.kind <> 'bath' AS FromStock, t.id >= 100 AND t.kind <> 'bath' AS IntoStock
                FROM standing_entry e CROSS JOIN movement m ON m.entry_id = e.id
                    CROSS JOIN place f ON f.id = m.from_place
                CROSS JOIN place t ON t.id = m.to_place CROSS JOIN lot l ON l.id = m.lot_id
                    CROSS JOIN item i ON i.id = l.item_id
                WHERE e.date <= @asOf)
            WHERE FromStock <> IntoStock ORDER BY Date, Entry, Number
            """,
            new { asOf = Dates.Text(asOf) })
        .Select(row => new StockMove(
            row.Entry, Days.Read(row.Date), row.Item, Named.Kind(row.Kind), new(row.Lot), row.Change,
            new(row.Value), new(row.Other))
        {
            IsDeveloper = row.IsDeveloper == 1,
        }),
    ];

    internal sealed record PriceRow(string Item, string Date, long Lot, long Quantity, string Unit,
        long Cost, string? Currency, long IsPriced);

    internal sealed record MoveRow(long Entry, string Date, string Item, string Kind, long Lot,
        long Change, long Value, long Other, long IsDeveloper);
}
