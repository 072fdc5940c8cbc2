namespace Ledger.Storage.Reading;

/// <summary>Reads the cards of sheets as they were at the end of a day: each table is asked once for all of
/// them.</summary>
internal sealed class SheetCardReader(Snapshot snapshot, LocalDate asOf)
{
    private readonly string _day = Dates.Text(asOf);

    /// <summary>The cards of the sheets that a search may find.</summary>
    public IReadOnlyList<SheetCard> Read(SheetSearch search) => Read(snapshot.Connection.Query<long>(
        """
        SELECT s.id FROM sheet s JOIN standing_entry e ON e.id = s.entry_id JOIN lot l ON l.id = s.lot_id
            JOIN item i ON i.id = l.item_id
        WHERE +e.date <= @day AND (@Film IS NULL OR i.code = @Film) AND (@Number IS NULL
            OR l.batch = @Number COLLATE NOCASE)
            AND (@Session IS NULL OR s.id IN (SELECT f.sheet_id FROM session n
                JOIN sheet_fate f ON f.entry_id = n.entry_id WHERE n.code = @Session))
        ORDER BY s.id
        """,
        new { day = _day, Film = search.Film?.Trim(), Number = search.Number?.Trim(),
            Session = search.Session?.Trim() }));

    /// <summary>The cards of sheets, in the order of their numbers.</summary>
    public IReadOnlyList<SheetCard> Read(IEnumerable<long> sheets)
    {
        var ids = Json.Array(sheets.Distinct());
        var exposures = Exposures(ids);
        var developed = Developed(ids);
        var baths = Baths(Json.Array(developed.Values.Select(row => row.Entry).Distinct()));
        var filed = Filed(ids);
        var findings = Findings(ids);
        return
        [
            .. snapshot.Connection.Query<CardRow>(
                """
                SELECT s.id AS Id, i.code AS Item, coalesce(i.format, '') AS Format, l.batch AS Batch, box.code AS Box,
                    side.code AS Side, came.date AS CameOn,
                    (SELECT p.code FROM sheet_move m CROSS JOIN standing_entry e ON e.id = m.entry_id
                        JOIN place p ON p.id = m.to_place
                        WHERE m.sheet_id = s.id AND e.date <= @day ORDER BY e.date DESC, e.ord DESC LIMIT 1) AS Place,
                    (SELECT p.kind IN ('holder side', 'exposed box') FROM sheet_move m
                        CROSS JOIN standing_entry e ON e.id = m.entry_id
                        JOIN place p ON p.id = m.to_place
                        WHERE m.sheet_id = s.id AND e.date <= @day ORDER BY e.date DESC,
                            e.ord DESC LIMIT 1) AS IsUndeveloped
                FROM json_each(@ids) j CROSS JOIN sheet s ON s.id = j.value
                    JOIN standing_entry came ON came.id = s.entry_id
                JOIN lot l ON l.id = s.lot_id JOIN item i ON i.id = l.item_id JOIN place box ON box.id = s.box_id
                LEFT JOIN place side ON side.id = s.side_id
                WHERE +came.date <= @day ORDER BY s.id
                """,
                new { ids, day = _day }).Select(row =>
                {
                    var exposure = exposures.GetValueOrDefault(row.Id);
                    var session = developed.GetValueOrDefault(row.Id);
                    return new SheetCard
                    {
                        Id = new(row.Id), Item = row.Item, Format = row.Format, Emulsion = row.Batch, Box = row.Box,
                            Side = row.Side,
                        LoadedOn = row.Side is null ? null : Days.Read(row.CameOn), Place = row.Place ?? row.Box,
                            IsUndeveloped = row.IsUndeveloped == 1,
                        ExposedOn = Days.ReadOptional(exposure?.Date), Group = exposure?.Group ?? session?.Group ?? "",
                            Subject = exposure?.Subject ?? "",
                        Negative = session?.Negative, Session = session?.Session, SessionEntry = session?.Entry,
                            DevelopedOn = Days.ReadOptional(session?.Date),
                        Batch = (int?)session?.Batch, Process = session?.Process, Fate = session is null ? null
                            : Named.Fate(session.Fate),
                        Cause = session?.Cause is { } cause ? Named.Cause(cause) : null,
                        Baths = session is null ? [] : [.. baths[session.Entry]],
                        FiledIn = filed.GetValueOrDefault(row.Id), LastFinding = findings.GetValueOrDefault(row.Id),
                    };
                }),
        ];
    }

    private Dictionary<long, FilmReader.ExposureRow> Exposures(string ids) =>
        snapshot.Connection.Query<FilmReader.ExposureRow>(
        """
        SELECT x.sheet_id AS SheetId, x.date AS Date, x."group" AS "Group", x.subject AS Subject
        FROM json_each(@ids) j CROSS JOIN exposure x ON x.sheet_id = j.value
            CROSS JOIN standing_entry e ON e.id = x.entry_id
        WHERE e.date <= @day ORDER BY e.date, e.ord
        """,
        new { ids, day = _day }).GroupBy(row => row.SheetId).ToDictionary(group => group.Key, group => group.Last());

    private Dictionary<long, DevelopedRow> Developed(string ids) => snapshot.Connection.Query<DevelopedRow>(
        $"""
        SELECT f.sheet_id AS Sheet, f.entry_id AS Entry, e.date AS Date, n.code AS Session, n.process AS Process,
            f.batch AS Batch,
            f.negative AS Negative, {FateSql.Fate} AS Fate, {FateSql.Cause} AS Cause,
            (SELECT t."group" FROM session_sheets t WHERE t.entry_id = f.entry_id
                AND (SELECT sum(u.sheets) FROM session_sheets u WHERE u.entry_id = f.entry_id
                    AND u.number <= t.number) >= f.position
                ORDER BY t.number LIMIT 1) AS "Group"
        FROM json_each(@ids) j CROSS JOIN sheet_fate f ON f.sheet_id = j.value
            CROSS JOIN standing_entry e ON e.id = f.entry_id
        CROSS JOIN session n ON n.entry_id = f.entry_id WHERE e.date <= @day
        """,
        new { ids, day = _day }).GroupBy(row => row.Sheet).ToDictionary(group => group.Key, group => group.Last());

    private ILookup<long, string> Baths(string entries) => snapshot.Connection.Query<BathRow>(
        """
        SELECT w.entry_id AS Entry, p.code AS Bath FROM json_each(@entries) j
            CROSS JOIN bath_work w ON w.entry_id = j.value
        JOIN place p ON p.id = w.place_id JOIN session s ON s.entry_id = w.entry_id
        ORDER BY w.entry_id, w.place_id IS NOT s.bath_id, w.is_first DESC, w.place_id
        """,
        new { entries }).ToLookup(row => row.Entry, row => row.Bath);

    private Dictionary<long, string> Filed(string ids) => snapshot.Connection.Query<FiledRow>(
        """
        SELECT g.sheet_id AS Sheet, g.place AS Place FROM json_each(@ids) j CROSS JOIN filing g ON g.sheet_id = j.value
        CROSS JOIN standing_entry e ON e.id = g.entry_id WHERE e.date <= @day ORDER BY e.date, e.ord
        """,
        new { ids, day = _day }).GroupBy(row => row.Sheet).ToDictionary(group => group.Key,
            group => group.Last().Place);

    private Dictionary<long, SheetFinding> Findings(string ids) => snapshot.Connection.Query<FindingRow>(
        """
        SELECT n.sheet_id AS Sheet, e.id AS Entry, e.date AS Date, n.what AS What, n.result AS Result,
            n.has_passed AS HasPassed
        FROM json_each(@ids) j CROSS JOIN sheet_note n ON n.sheet_id = j.value
            CROSS JOIN standing_entry e ON e.id = n.entry_id
        WHERE e.date <= @day ORDER BY e.date, e.ord
        """,
        new { ids, day = _day }).GroupBy(row => row.Sheet).ToDictionary(group => group.Key,
            group => group.Last().ToFinding());

    internal sealed record CardRow(
        long Id, string Item, string Format, string Batch, string Box, string? Side, string CameOn, string? Place,
            long? IsUndeveloped);

    internal sealed record DevelopedRow(
        long Sheet, long Entry, string Date, string Session, string Process, long Batch, string? Negative, string Fate,
            string? Cause, string? Group);

    internal sealed record BathRow(long Entry, string Bath);

    internal sealed record FiledRow(long Sheet, string Place);

    internal sealed record FindingRow(long Sheet, long Entry, string Date, string What, string Result, long? HasPassed)
    {
        public SheetFinding ToFinding() => new(
            Entry, Days.Read(Date), Named.Work(What), Result, HasPassed is { } passed ? passed == 1 : null);
    }
}
