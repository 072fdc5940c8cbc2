namespace Ledger.Storage.Reading;

/// <summary>
/// Reads what the ledger holds at the end of a day: today's balances, less all that happened later. The work follows
/// what is on the shelf and what came after the day, not the length of the history: CROSS JOIN makes SQLite begin with
/// the few later entries.
/// </summary>
internal sealed class HoldingsReader(Snapshot snapshot)
{
    /// <summary>Reads them for those who ask as long as this state is held.</summary>
    /// <param name="asOf">The day.</param>
    public Holdings Read(LocalDate asOf) => Read(asOf, new(new InsideOf(snapshot), asOf));

    /// <summary>
    /// Reads what is there; the items and holders of which there is nothing are left to the catalogue.
    /// </summary>
    /// <param name="asOf">The day.</param>
    /// <param name="catalogue">Where they are looked up.</param>
    /// <param name="define">Puts into the holdings what was defined otherwise on that day; null where that is what is
    /// defined now.</param>
    public Holdings Read(LocalDate asOf, Catalogue catalogue, Action<Holdings>? define = null)
    {
        var holdings = new Holdings(asOf, catalogue, catalogue);
        new CatalogueReader(snapshot).ReadInto(holdings);
        define?.Invoke(holdings);
        var balances = Balances(asOf);
        foreach (var container in Containers(asOf, balances, holdings))
            holdings.Put(container);
        new HalfEmptyReader(snapshot).ReadInto(holdings);
        foreach (var bath in new BathTableReader(snapshot).InUse(asOf, balances, holdings))
            holdings.Put(bath);
        new PlanReader(snapshot).ReadInto(holdings);
        new FilmReader(snapshot).ReadInto(holdings, balances, catalogue);
        new SuspicionReader(snapshot).ReadInto(holdings);
        foreach (var jug in new JugReader(snapshot).All(asOf).Where(jug => jug.HandedOverOn is null))
            holdings.Put(jug);
        new OrderReader(snapshot).ReadInto(holdings);
        new SnoozeReader(snapshot).ReadInto(holdings);
        var last = snapshot.Connection.QuerySingle<LastRow>(
            "SELECT (SELECT max(id) FROM place) AS Place, (SELECT coalesce(max(id), 0) FROM lot) AS Lot");
        holdings.LastPlace = Math.Max(last.Place, Places.FirstFree - 1);
        holdings.LastLot = last.Lot;
        return holdings;
    }

    private ILookup<long, BalanceRow> Balances(LocalDate asOf) => snapshot.Connection.Query<BalanceRow>(
        """
        SELECT PlaceId, LotId, sum(Quantity) AS Quantity, sum(Value) AS Value
        FROM (
            SELECT place_id AS PlaceId, lot_id AS LotId, quantity AS Quantity, value AS Value FROM balance
                WHERE place_id >= 100
            UNION ALL
            SELECT m.from_place, m.lot_id, m.quantity, m.value
            FROM entry e CROSS JOIN movement m ON m.entry_id = e.id WHERE e.date > @asOf AND m.from_place >= 100
            UNION ALL
            SELECT m.to_place, m.lot_id, -m.quantity, -m.value
            FROM entry e CROSS JOIN movement m ON m.entry_id = e.id WHERE e.date > @asOf AND m.to_place >= 100)
        GROUP BY PlaceId, LotId HAVING sum(Quantity) > 0 ORDER BY PlaceId, LotId
        """,
        new { asOf = Dates.Text(asOf) }).ToLookup(row => row.PlaceId);

    private IEnumerable<Container> Containers(LocalDate asOf, ILookup<long, BalanceRow> balances, Holdings holdings)
    {
        var lots = new Dictionary<long, Lot>();
        var rows = snapshot.Connection.Query<ContainerRow>(
            """
            SELECT c.place_id AS PlaceId, p.code AS Code, c.lot_id AS LotId, i.code AS Item, e.date AS ReceivedOn,
                l.quantity AS Quantity,
                l.cost AS Cost, l.batch AS Batch, l.expires_on AS ExpiresOn, l.storage AS Storage, c.size AS Size,
                (SELECT min(oe.date) FROM opening o CROSS JOIN standing_entry oe ON oe.id = o.entry_id
                    WHERE o.place_id = c.place_id AND oe.date <= @asOf) AS OpenedOn, coalesce(lo.formula,
                        '') AS Formula,
                lo.mixed_from IS NOT NULL AS IsMixed, l.is_priced AS IsPriced
            FROM json_each(@places) held JOIN container c ON c.place_id = held.value JOIN place p ON p.id = c.place_id
            JOIN lot l ON l.id = c.lot_id JOIN item i ON i.id = l.item_id JOIN entry e ON e.id = l.entry_id
            LEFT JOIN lot_origin lo ON lo.lot_id = l.id
            """,
            new { asOf = Dates.Text(asOf), places = Json.Array(balances.Select(balance => balance.Key)) });
        foreach (var row in rows)
        {
            var item = holdings.ItemOf(row.Item);
            if (!lots.TryGetValue(row.LotId, out var lot))
                lots[row.LotId] = lot = new(
                    new(row.LotId), item.Code, Days.Read(row.ReceivedOn), item.Of(row.Quantity),
                    new(row.Cost), row.Batch, Days.ReadOptional(row.ExpiresOn), row.Storage) { Formula = row.Formula,
                        IsMixed = row.IsMixed == 1, IsPriced = row.IsPriced == 1 };
            var balance = balances[row.PlaceId].Single();
            yield return new(
                new(row.PlaceId), row.Code, lot, item.Of(row.Size), item.Of(balance.Quantity),
                new(balance.Value), Days.ReadOptional(row.OpenedOn));
        }
    }

    internal sealed record LastRow(long Place, long Lot);

    internal sealed record ContainerRow(
        long PlaceId, string Code, long LotId, string Item, string ReceivedOn, long Quantity,
        long Cost, string Batch, string? ExpiresOn, string Storage, long Size, string? OpenedOn,
        string Formula, long IsMixed, long IsPriced);
}

/// <summary>What a place holds of a lot.</summary>
internal sealed record BalanceRow(long PlaceId, long LotId, long Quantity, long Value);
