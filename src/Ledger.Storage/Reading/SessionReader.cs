using Ledger.Storage.Files;

namespace Ledger.Storage.Reading;

/// <summary>Reads sessions, page by page, the last one first.</summary>
internal sealed class SessionReader(Snapshot snapshot)
{
    public IReadOnlyList<SessionRecord> Page(LocalDate asOf, SessionRecord? before, int atMost)
    {
        var rows = snapshot.Connection.Query<SessionRow>(
            $"""
            SELECT s.entry_id AS Number, s.code AS Session, e.date AS Date, s.process AS Process, p.code AS Bath,
                s.developer AS Developer, e.note AS Note, s.process_version AS ProcessVersion
            FROM standing_entry e CROSS JOIN session s ON s.entry_id = e.id LEFT JOIN place p ON p.id = s.bath_id
            {PageAt.Sql}
            """,
            PageAt.Of(asOf, before is null ? null : (before.Date, before.Number), atMost)).ToList();
        return ToRecords(rows);
    }

    public SessionRecord? Find(string name, LocalDate asOf)
    {
        var rows = snapshot.Connection.Query<SessionRow>(
            """
            SELECT s.entry_id AS Number, s.code AS Session, e.date AS Date, s.process AS Process, p.code AS Bath,
                s.developer AS Developer, e.note AS Note, s.process_version AS ProcessVersion
            FROM session s CROSS JOIN standing_entry e ON e.id = s.entry_id LEFT JOIN place p ON p.id = s.bath_id
            WHERE s.code = @name AND e.date <= @asOf
            """,
            new { name, asOf = Dates.Text(asOf) }).ToList();
        return ToRecords(rows).SingleOrDefault();
    }

    private IReadOnlyList<SessionRecord> ToRecords(IReadOnlyList<SessionRow> rows)
    {
        var lines = Lines(rows.Select(row => row.Number));
        return [.. rows.Select(row => new SessionRecord(
            row.Number, row.Session, Days.Read(row.Date), row.Process, row.Bath,
            Volume.FromMicrolitres(row.Developer), row.Note,
            [.. lines[row.Number]]) { ProcessVersion = row.ProcessVersion })];
    }

    private ILookup<long, SessionSheets> Lines(IEnumerable<long> sessions) => snapshot.Connection.Query<SheetsRow>(
        $"""
        SELECT s.entry_id AS Number, i.code AS Item, s.sheets AS Sheets, s.area AS Area, s.cost AS Cost,
            s."group" AS "Group",
            s.fate AS Fate, s.note AS Note,
            s.number AS Position
        FROM json_each(@sessions) j JOIN session_sheets s ON s.entry_id = j.value JOIN lot l ON l.id = s.lot_id
            JOIN item i ON i.id = l.item_id
        UNION ALL
        SELECT d.entry_id, i.code, d.sheets, d.area, 0, d."group", {InSql.Dummy}, d.note, 1000000 + d.line
        FROM json_each(@sessions) j JOIN dummy d ON d.entry_id = j.value JOIN item i ON i.id = d.item_id
        ORDER BY Number, Position
        """,
        new { sessions = Json.Array(sessions) })
        .ToLookup(row => row.Number, row => new SessionSheets(
            row.Item, row.Sheets, Area.FromHundredths(row.Area), new(row.Cost), row.Group,
            Named.Fate(row.Fate), row.Note));

    internal sealed record SessionRow(long Number, string Session, string Date, string Process,
        string? Bath, long Developer, string Note, int ProcessVersion);

    internal sealed record SheetsRow(long Number, string Item, long Sheets, long Area, long Cost,
        string Group, string Fate, string Note, long Position);
}
