namespace Ledger.Storage.Reading;

/// <summary>Reads holders with their sides as they were at the end of a day: those that are wanted.</summary>
/// <param name="snapshot">The state that is read.</param>
/// <param name="formats">The formats there are.</param>
/// <param name="asOf">The day.</param>
internal sealed class HolderReader(Snapshot snapshot, FormatTable formats, LocalDate asOf)
{
    /// <summary>The holder of that name, in any case; null when there is none.</summary>
    public Holder? Find(string code, ILookup<long, SideFault> faults) => Read(
        snapshot.Connection.Query<long>("SELECT id FROM holder WHERE code = @code", new { code }),
        faults).FirstOrDefault();

    /// <summary>The holder with the side of that name, in any case; null when there is none.</summary>
    public Holder? WithSide(string side, ILookup<long, SideFault> faults) => Read(
        snapshot.Connection.Query<long>(
            "SELECT s.holder_id FROM place p CROSS JOIN holder_side s ON s.place_id = p.id WHERE p.code = "
                + "@side", new { side }),
        faults).FirstOrDefault();

    /// <summary>The holder with the side at that place; null when there is none.</summary>
    public Holder? WithSide(long place, ILookup<long, SideFault> faults) => Read(
        snapshot.Connection.Query<long>("SELECT holder_id FROM holder_side WHERE place_id = @place", new { place }),
        faults)
        .FirstOrDefault();

    /// <summary>The holders with sides at those places.</summary>
    public IReadOnlyList<Holder> WithSides(IEnumerable<long> places, ILookup<long, SideFault> faults) => Read(
        snapshot.Connection.Query<long>(
            "SELECT DISTINCT s.holder_id FROM json_each(@places) p CROSS JOIN holder_side s ON s.place_id = p.value",
            new { places = Json.Array(places) }),
        faults);

    /// <summary>All holders.</summary>
    public IReadOnlyList<Holder> All(ILookup<long, SideFault> faults) =>
        Read(snapshot.Connection.Query<long>("SELECT id FROM holder ORDER BY id"), faults);

    /// <summary>The names of all holders that were there by the day.</summary>
    public IReadOnlyList<HolderName> Names() =>
    [
        .. snapshot.Connection.Query<HolderName>(
            """
            SELECT h.code AS Code, h.format AS Format FROM holder h
            WHERE EXISTS (SELECT 1 FROM holder_side s JOIN place p ON p.id = s.place_id
                JOIN entry came ON came.id = p.entry_id WHERE s.holder_id = h.id AND came.date <= @asOf)
            """,
            new { asOf = Dates.Text(asOf) }),
    ];

    /// <summary>The sheets that each side has spoiled, by cause.</summary>
    public ILookup<long, SideFault> Faults() => snapshot.Connection.Query<FaultRow>(
        """
        SELECT PlaceId, Cause, count(*) AS Sheets FROM (
            SELECT s.side_id AS PlaceId, f.cause AS Cause
            FROM sheet_fate f CROSS JOIN standing_entry e ON e.id = f.entry_id JOIN sheet s ON s.id = f.sheet_id
            WHERE f.cause IS NOT NULL AND s.side_id IS NOT NULL AND e.date <= @day
                AND NOT EXISTS (SELECT 1 FROM fate_change c CROSS JOIN standing_entry ce ON ce.id = c.entry_id
                    WHERE c.sheet_id = f.sheet_id AND ce.date <= @day)
            UNION ALL
            SELECT side, cause FROM (
                SELECT s.side_id AS side, c.cause AS cause,
                    row_number() OVER (PARTITION BY c.sheet_id ORDER BY e.date DESC, e.ord DESC) AS rank
                FROM fate_change c CROSS JOIN standing_entry e ON e.id = c.entry_id JOIN sheet s ON s.id = c.sheet_id
                WHERE s.side_id IS NOT NULL AND e.date <= @day)
            WHERE rank = 1 AND cause IS NOT NULL)
        GROUP BY PlaceId, Cause
        """,
        new { day = Dates.Text(asOf) }).ToLookup(row => row.PlaceId,
            row => new SideFault(Named.Cause(row.Cause), (int)row.Sheets));

    private List<Holder> Read(IEnumerable<long> wanted, ILookup<long, SideFault> faults)
    {
        var holders = Json.Array(wanted);
        if (holders == Json.Array([]))
            return [];
        var day = Dates.Text(asOf);
        var sides = snapshot.Connection.Query<SideRow>(
            """
            SELECT s.place_id AS PlaceId, s.holder_id AS HolderId, s.name AS Name,
                (SELECT e.date FROM sheet_move m CROSS JOIN standing_entry e ON e.id = m.entry_id
                    WHERE m.to_place = s.place_id AND m.to_place >= 100 AND e.date <= @day
                        ORDER BY m.sheet_id DESC LIMIT 1) AS FilledOn,
                (SELECT e.date FROM sheet_move m CROSS JOIN standing_entry e ON e.id = m.entry_id
                    WHERE m.from_place = s.place_id AND m.from_place >= 100 AND e.date <= @day
                        ORDER BY m.sheet_id DESC LIMIT 1) AS EmptiedOn,
                (SELECT iif(v.in_service, NULL, v.reason) FROM side_service v
                    CROSS JOIN standing_entry e ON e.id = v.entry_id
                    WHERE v.place_id = s.place_id AND e.date <= @day ORDER BY e.date DESC,
                        e.ord DESC LIMIT 1) AS OutOfService
            FROM json_each(@holders) w CROSS JOIN holder_side s ON s.holder_id = w.value
            CROSS JOIN place p ON p.id = s.place_id CROSS JOIN entry came ON came.id = p.entry_id
            WHERE came.date <= @day ORDER BY s.holder_id, s.number
            """,
            new { holders, day }).ToLookup(row => row.HolderId);
        return
        [
            .. snapshot.Connection.Query<HolderRow>(
                """
                SELECT h.id AS Id, h.code AS Code, h.format AS Format, h.notch AS Notch, h.bought_on AS BoughtOn,
                    e.date AS CleanedOn,
                    c.bagged AS Bagged
                FROM json_each(@holders) w CROSS JOIN holder h ON h.id = w.value
                    LEFT JOIN cleaning c ON c.holder_id = h.id
                    AND c.entry_id = (SELECT o.entry_id FROM cleaning o
                        CROSS JOIN standing_entry oe ON oe.id = o.entry_id
                        WHERE o.holder_id = h.id AND oe.date <= @day ORDER BY oe.date DESC, oe.ord DESC LIMIT 1)
                    LEFT JOIN entry e ON e.id = c.entry_id
                """,
                new { holders, day }).Where(row => sides.Contains(row.Id)).Select(row => new Holder
                {
                    Id = row.Id,
                    Code = row.Code,
                    Format = formats.Find(row.Format),
                    Notch = row.Notch,
                    BoughtOn = Days.ReadOptional(row.BoughtOn),
                    CleanedOn = Days.ReadOptional(row.CleanedOn),
                    IsBagged = row.Bagged == 1,
                    Sides = [.. sides[row.Id].Select(side => ToSide(side, row.Code, faults[side.PlaceId]))],
                }),
        ];
    }

    private static HolderSide ToSide(SideRow row, string holder, IEnumerable<SideFault> faults)
    {
        var (filled, emptied) = (Days.ReadOptional(row.FilledOn), Days.ReadOptional(row.EmptiedOn));
        return new(new(row.PlaceId), holder, row.Name)
        {
            OutOfService = row.OutOfService,
            LastUsedOn = emptied is null || filled > emptied ? filled : emptied,
            LastEmptiedOn = emptied,
            Faults = [.. faults],
        };
    }

    internal sealed record SideRow(long PlaceId, long HolderId, string Name, string? FilledOn,
        string? EmptiedOn, string? OutOfService);

    internal sealed record HolderRow(long Id, string Code, string Format, string Notch, string? BoughtOn,
        string? CleanedOn, long? Bagged);

    internal sealed record FaultRow(long PlaceId, string Cause, long Sheets);
}
