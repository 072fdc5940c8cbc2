namespace Ledger.Storage.Reading;

/// <summary>Reads baths with the work they have taken and what is in them.</summary>
internal sealed class BathTableReader(Snapshot snapshot)
{
    /// <summary>
    /// A bath's work as of a day is all of it less what came later, so that an old bath costs no more to read than a
    /// new one.
    /// </summary>
    private const string Baths =
        """
        WITH later AS MATERIALIZED (
            SELECT w.place_id, sum(w.area) AS area, sum(w.weighted) AS weighted
            FROM standing_entry e CROSS JOIN bath_work w ON w.entry_id = e.id AND w.is_first = 1 WHERE e.date > @asOf
                GROUP BY w.place_id)
        SELECT b.place_id AS PlaceId, p.code AS Code, i.code AS Item, b.role AS Role, b.material AS Material,
            b.working_volume AS WorkingVolume, b.dilution AS Dilution, mixed.date AS MixedOn,
            b.capacity_per_litre AS CapacityPerLitre,
            b.capacity_basis AS CapacityBasis, b.paired_with AS PairedWith, b.rotations AS Rotations,
            coalesce(t.area, 0) - coalesce(l.area, 0) AS Worked, coalesce(t.weighted, 0) - coalesce(l.weighted,
            0) AS WorkedWeighted
        FROM bath b JOIN place p ON p.id = b.place_id JOIN item i ON i.id = b.item_id
            JOIN standing_entry mixed ON mixed.id = b.entry_id
            LEFT JOIN bath_total t ON t.place_id = b.place_id LEFT JOIN later l ON l.place_id = b.place_id

        """;

    /// <summary>The baths that were mixed by the end of the day and not yet discarded.</summary>
    public IEnumerable<Bath> InUse(LocalDate asOf, ILookup<long, BalanceRow> balances, Holdings holdings) =>
        new BathLogReader(snapshot).With(
        [.. snapshot.Connection.Query<BathRow>(
            Baths + """
            WHERE mixed.date <= @asOf AND NOT EXISTS (SELECT 1 FROM bath_end d
                JOIN standing_entry e ON e.id = d.entry_id
                WHERE d.place_id = b.place_id AND e.date <= @asOf)
            ORDER BY b.place_id
            """,
            new { asOf = Dates.Text(asOf) })
        .Select(row => ToBath(row,
            balances[row.PlaceId].Select(balance => (balance.LotId, balance.Quantity, balance.Value)), holdings))],
        asOf);

    /// <summary>
    /// The last bath of that name, in use or discarded, with what was once put into it; null when there never was one.
    /// </summary>
    public Bath? Named(string code, LocalDate asOf, Holdings holdings)
    {
        var row = snapshot.Connection.QueryFirstOrDefault<BathRow>(
            Baths + """
            WHERE p.code = @code AND mixed.date <= @asOf ORDER BY b.place_id DESC
            """,
            new { code = code.Trim(), asOf = Dates.Text(asOf) });
        if (row is null)
            return null;
        var contents = snapshot.Connection.Query<ContentRow>(
            """
            SELECT m.lot_id AS LotId, sum(m.quantity) AS Quantity, sum(m.value) AS Value
            FROM movement m CROSS JOIN standing_entry e ON e.id = m.entry_id
            WHERE m.to_place = @PlaceId AND m.to_place >= 100 AND e.date <= @asOf GROUP BY m.lot_id
            """,
            new { row.PlaceId, asOf = Dates.Text(asOf) });
        var bath = ToBath(row, contents.Select(content => (content.LotId, content.Quantity, content.Value)),
            holdings) with
        {
            Discarded = Discarded(row.PlaceId, asOf),
            Suspicion = new SuspicionReader(snapshot).Of(row.PlaceId, Dates.Text(asOf)),
        };
        return holdings.WithSettings(new BathLogReader(snapshot).With([bath], asOf)[0]);
    }

    private BathDiscard? Discarded(long place, LocalDate asOf)
    {
        var row = snapshot.Connection.QueryFirstOrDefault<EndRow>(
            """
            SELECT e.date AS Date, d.reason AS Reason FROM bath_end d CROSS JOIN standing_entry e ON e.id = d.entry_id
            WHERE d.place_id = @place AND e.date <= @asOf
            """,
            new { place, asOf = Dates.Text(asOf) });
        return row is null ? null : new(Days.Read(row.Date), row.Reason);
    }

    public IReadOnlyList<BathWorkRecord> WorkOf(string code, LocalDate asOf, int atMost) =>
    [
        .. snapshot.Connection.Query<WorkRow>(
            """
            SELECT e.id AS Number, e.date AS Date, e.summary AS Summary, w.is_first AS IsFirst, w.area AS Area,
                w.weighted AS Weighted
            FROM place p JOIN bath_work w ON w.place_id = p.id JOIN standing_entry e ON e.id = w.entry_id
            WHERE p.code = @code AND e.date <= @asOf ORDER BY e.date DESC, e.ord DESC LIMIT @atMost
            """,
            new { code = code.Trim(), asOf = Dates.Text(asOf), atMost })
        .Select(row => new BathWorkRecord(
            row.Number, Days.Read(row.Date), row.Summary, row.IsFirst == 1, Area.FromHundredths(row.Area),
            Area.FromHundredths(row.Weighted))),
    ];

    private static Bath ToBath(BathRow row, IEnumerable<(long Lot, long Quantity, long Value)> contents,
        Holdings holdings)
    {
        var item = holdings.ItemOf(row.Item);
        var list = contents.Select(content => new BathContent(new(content.Lot), item.Of(content.Quantity),
            new(content.Value))).ToList();
        return new()
        {
            Place = new(row.PlaceId),
            Code = row.Code,
            Item = row.Item,
            Role = Reading.Named.Role(row.Role),
            Material = Reading.Named.Material(row.Material),
            WorkingVolume = Volume.FromMicrolitres(row.WorkingVolume),
            Dilution = Dilution.Parse(row.Dilution),
            MixedOn = Days.Read(row.MixedOn),
            Capacity = CatalogueReader.ToCapacity(row.CapacityPerLitre, row.CapacityBasis),
            Keeping = item.Keeping,
            PairedWith = row.PairedWith,
            Rotations = row.Rotations,
            Worked = Area.FromHundredths(row.Worked),
            WorkedWeighted = Area.FromHundredths(row.WorkedWeighted),
            Contents = list,
            Value = new(list.Sum(content => content.Value.Millionths)),
        };
    }

    internal sealed record BathRow(
        long PlaceId, string Code, string Item, string Role, string Material, long WorkingVolume,
        string Dilution, string MixedOn, long? CapacityPerLitre, string? CapacityBasis, string? PairedWith,
        int Rotations, long Worked, long WorkedWeighted);

    internal sealed record EndRow(string Date, string Reason);

    internal sealed record ContentRow(long LotId, long Quantity, long Value);

    internal sealed record WorkRow(long Number, string Date, string Summary, long IsFirst, long Area, long Weighted);
}
