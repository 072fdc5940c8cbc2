namespace Ledger.Storage.Reading;

/// <summary>
/// Reads the holders that hold a sheet or spoiled one, the boxes of exposed sheets, and the sheets in them, as they
/// were at the end of a day.
/// </summary>
internal sealed class FilmReader(Snapshot snapshot)
{
    public void ReadInto(Holdings holdings, ILookup<long, BalanceRow> balances, Catalogue catalogue)
    {
        var asOf = Dates.Text(holdings.AsOf);
        foreach (var holder in catalogue.HoldersInUse(balances.Select(balance => balance.Key)))
            holdings.Film.Put(holder);
        foreach (var box in snapshot.Connection.Query<BoxRow>(
            """
            SELECT b.place_id AS PlaceId, i.code AS Item, b."group" AS "Group" FROM exposed_box b
                JOIN item i ON i.id = b.item_id
            """))
            holdings.Film.Put(new ExposedBox(new(box.PlaceId), box.Item, box.Group));
        ReadSheets(holdings, balances, asOf);
        holdings.Film.LastSheet = snapshot.Connection.ExecuteScalar<long>("SELECT coalesce(max(id), 0) FROM sheet");
        foreach (var row in snapshot.Connection.Query<NumberRow>(
            "SELECT year AS Year, max(running) AS Running FROM sheet_fate WHERE year IS NOT NULL GROUP BY year"))
            holdings.Film.Give((int)row.Year, row.Running);
        ReadGivenNames(holdings);
        ReadStorage(holdings, asOf);
    }

    /// <summary>
    /// The last number of sheets and negatives that was ever given, also by what was taken back since: none is given
    /// again.
    /// </summary>
    private void ReadGivenNames(Holdings holdings)
    {
        holdings.Film.LastSheet = Math.Max(holdings.Film.LastSheet, snapshot.Connection.ExecuteScalar<long>(
            "SELECT coalesce(max(number), 0) FROM said_name WHERE series = "
                + "@sheets", new { sheets = GivenName.Sheets }));
        foreach (var last in snapshot.Connection.Query<SeriesRow>(
            """
            WITH RECURSIVE series (name) AS (
                SELECT min(series) FROM said_name WHERE series > 'negative '
                UNION ALL SELECT (SELECT min(n.series) FROM said_name n WHERE n.series > s.name) FROM series s
                    WHERE s.name LIKE 'negative %')
            SELECT name AS Series, (SELECT max(n.number) FROM said_name n WHERE n.series = name) AS Number FROM series
            WHERE name LIKE 'negative %'
            """))
            holdings.Film.Give(int.Parse(last.Series.Split(' ', 2)[1], CultureInfo.InvariantCulture), last.Number);
    }

    private void ReadSheets(Holdings holdings, ILookup<long, BalanceRow> balances, string asOf)
    {
        var places = Json.Array(balances.Select(balance => balance.Key)
            .Where(place => holdings.Film.IsKnown(new(place))));
        var rows = snapshot.Connection.Query<SheetRow>(
            """
            SELECT DISTINCT s.id AS Id, s.lot_id AS LotId, s.cost AS Cost, s.box_id AS BoxId, box.code AS Box,
                s.side_id AS SideId,
                side.code AS Side,
                loaded.date AS LoadedOn, m.to_place AS At,
                (SELECT e2.date FROM sheet_move m2 CROSS JOIN standing_entry e2 ON e2.id = m2.entry_id
                    WHERE m2.sheet_id = s.id AND e2.date <= @asOf ORDER BY e2.date DESC, e2.ord DESC LIMIT 1) AS Since
            FROM json_each(@places) held JOIN sheet_move m ON m.to_place = held.value AND m.to_place >= 100
            CROSS JOIN standing_entry e ON e.id = m.entry_id JOIN sheet s ON s.id = m.sheet_id
                JOIN entry loaded ON loaded.id = s.entry_id
            JOIN place box ON box.id = s.box_id JOIN place side ON side.id = s.side_id
            WHERE e.date <= @asOf AND m.to_place = (SELECT m2.to_place FROM sheet_move m2
                CROSS JOIN standing_entry e2 ON e2.id = m2.entry_id
                WHERE m2.sheet_id = s.id AND e2.date <= @asOf ORDER BY e2.date DESC, e2.ord DESC LIMIT 1)
            """,
            new { places, asOf }).ToList();
        var lots = Lots(rows.Select(row => row.LotId).Distinct(), holdings, asOf);
        var exposures = Exposures(rows.Select(row => row.Id), asOf);
        foreach (var row in rows)
            holdings.Film.Put(new Sheet(
                new(row.Id), lots[row.LotId], new(row.Cost), new(row.BoxId), row.Box, new(row.SideId),
                row.Side, Days.Read(row.LoadedOn), new(row.At), Days.Read(row.Since),
                exposures.GetValueOrDefault(row.Id)));
    }

    private Dictionary<long, Lot> Lots(IEnumerable<long> lots, Holdings holdings, string asOf) =>
        snapshot.Connection.Query<LotRow>(
            """
            SELECT l.id AS Id, i.code AS Item, e.date AS ReceivedOn, l.quantity AS Quantity, l.cost AS Cost,
                l.batch AS Batch,
                l.expires_on AS ExpiresOn, l.storage AS Storage, l.is_priced AS IsPriced,
                (SELECT s.exposure_index FROM lot_exposure_index s CROSS JOIN standing_entry se ON se.id = s.entry_id
                    WHERE s.lot_id = l.id AND se.date <= @asOf ORDER BY se.date DESC,
                        se.ord DESC LIMIT 1) AS ExposureIndex
            FROM json_each(@lots) wanted JOIN lot l ON l.id = wanted.value JOIN item i ON i.id = l.item_id
                JOIN entry e ON e.id = l.entry_id
            """,
            new { lots = Json.Array(lots), asOf })
            .ToDictionary(row => row.Id, row => new Lot(
                new(row.Id), row.Item, Days.Read(row.ReceivedOn), holdings.ItemOf(row.Item).Of(row.Quantity),
                new(row.Cost), row.Batch, Days.ReadOptional(row.ExpiresOn),
                row.Storage) { ExposureIndex = (int?)row.ExposureIndex, IsPriced = row.IsPriced == 1 });

    /// <summary>The note that holds for each sheet: the last one.</summary>
    private Dictionary<long, Exposure> Exposures(IEnumerable<long> sheets, string asOf) =>
        snapshot.Connection.Query<ExposureRow>(
            """
            SELECT x.sheet_id AS SheetId, x.date AS Date, x."group" AS "Group", x.subject AS Subject
            FROM json_each(@sheets) wanted JOIN exposure x ON x.sheet_id = wanted.value
                CROSS JOIN standing_entry e ON e.id = x.entry_id
            WHERE e.date <= @asOf ORDER BY e.date, e.ord
            """,
            new { sheets = Json.Array(sheets), asOf })
            .GroupBy(row => row.SheetId)
            .ToDictionary(group => group.Key,
                group => new Exposure(Days.Read(group.Last().Date), group.Last().Group, group.Last().Subject));

    private void ReadStorage(Holdings holdings, string asOf)
    {
        var indexes = snapshot.Connection.Query<ExposureIndexRow>(
            """
            SELECT s.lot_id AS LotId, s.exposure_index AS ExposureIndex FROM lot_exposure_index s
                CROSS JOIN standing_entry e ON e.id = s.entry_id
            WHERE e.date <= @asOf ORDER BY e.date, e.ord
            """,
            new { asOf }).GroupBy(row => row.LotId).ToDictionary(group => group.Key,
                group => (int)group.Last().ExposureIndex);
        var stored = snapshot.Connection.Query<StoredRow>(
            """
            SELECT m.place_id AS PlaceId, e.date AS Date, m.storage AS Storage, m.opens_from AS OpensFrom
            FROM json_each(@places) held JOIN storage_move m ON m.place_id = held.value
                CROSS JOIN standing_entry e ON e.id = m.entry_id
            WHERE e.date <= @asOf ORDER BY e.date, e.ord
            """,
            new { asOf, places = Json.Array(holdings.Containers.Select(container => container.Place.Value)) })
            .ToLookup(row => row.PlaceId);
        foreach (var container in holdings.Containers.ToList())
        {
            var moves = stored[container.Place.Value].ToList();
            int? index = indexes.TryGetValue(container.Lot.Id.Value, out var known) ? known : null;
            if (moves.Count > 0 || index is not null)
                holdings.Put(container with
                {
                    Moves = [.. moves.Select(move => new StoragePlace(Days.Read(move.Date), move.Storage))],
                    OpensFrom = Days.ReadOptional(moves.LastOrDefault()?.OpensFrom),
                    Lot = container.Lot with { ExposureIndex = index },
                });
        }
    }

    internal sealed record BoxRow(long PlaceId, string Item, string Group);

    internal sealed record SeriesRow(string Series, long Number);

    internal sealed record NumberRow(long Year, long Running);

    internal sealed record SheetRow(
        long Id, long LotId, long Cost, long BoxId, string Box, long SideId, string Side, string LoadedOn,
        long At, string Since);

    internal sealed record LotRow(
        long Id, string Item, string ReceivedOn, long Quantity, long Cost, string Batch, string? ExpiresOn,
        string Storage, long IsPriced, long? ExposureIndex);

    internal sealed record ExposureRow(long SheetId, string Date, string Group, string Subject);

    internal sealed record ExposureIndexRow(long LotId, long ExposureIndex);

    internal sealed record StoredRow(long PlaceId, string Date, string Storage, string? OpensFrom);
}
