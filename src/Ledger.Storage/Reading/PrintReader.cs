namespace Ledger.Storage.Reading;

/// <summary>Reads print sessions, page by page, the last one first.</summary>
internal sealed class PrintReader(Snapshot snapshot)
{
    /// <remarks>
    /// Unlike sessions, print sessions may be few in a long journal: the small table comes first, so that who prints
    /// now and then does not wait for a walk through all that happened since.
    /// </remarks>
    public IReadOnlyList<PrintRecord> Page(LocalDate asOf, PrintRecord? before, int atMost)
    {
        var rows = snapshot.Connection.Query<PrintRow>(
            $"""
            SELECT s.entry_id AS Number, s.code AS Session, e.date AS Date, p.code AS Bath, e.note AS Note
            FROM print_session s CROSS JOIN standing_entry e ON e.id = s.entry_id LEFT JOIN place p ON p.id = s.bath_id
            {PageAt.Sql}
            """,
            PageAt.Of(asOf, before is null ? null : (before.Date, before.Number), atMost)).ToList();
        var lines = Lines(rows.Select(row => row.Number));
        var negatives = Negatives(rows.Select(row => row.Number));
        return [.. rows.Select(row => new PrintRecord(
            row.Number, row.Session, Days.Read(row.Date), row.Bath, row.Note, [.. lines[row.Number]])
            { Negatives = [.. negatives[row.Number]] })];
    }

    private ILookup<long, string> Negatives(IEnumerable<long> sessions) => snapshot.Connection.Query<NegativeRow>(
        """
        SELECT n.entry_id AS Number, coalesce(f.negative, '#' || n.sheet_id) AS Negative
        FROM json_each(@sessions) j CROSS JOIN print_negative n ON n.entry_id = j.value
        CROSS JOIN sheet_fate f ON f.sheet_id = n.sheet_id CROSS JOIN standing_entry e ON e.id = f.entry_id
        ORDER BY n.entry_id, n.position
        """,
        new { sessions = Json.Array(sessions) }).ToLookup(row => row.Number, row => row.Negative);

    private ILookup<long, PrintedPaper> Lines(IEnumerable<long> sessions) => snapshot.Connection.Query<PaperRow>(
        """
        SELECT s.entry_id AS Number, i.code AS Item, s.sheets AS Sheets, s.strips AS Strips, s.area AS Area,
            s.cost AS Cost,
            s.purpose AS Purpose, s.note AS Note
        FROM json_each(@sessions) j JOIN print_sheets s ON s.entry_id = j.value JOIN item i ON i.id = s.item_id
        ORDER BY s.entry_id, s.number
        """,
        new { sessions = Json.Array(sessions) })
        .ToLookup(row => row.Number, row => new PrintedPaper(
            row.Item, row.Sheets, row.Strips, Area.FromHundredths(row.Area), new(row.Cost),
            Named.Purpose(row.Purpose), row.Note));

    internal sealed record PrintRow(long Number, string Session, string Date, string? Bath, string Note);

    internal sealed record NegativeRow(long Number, string Negative);

    internal sealed record PaperRow(long Number, string Item, long Sheets, int Strips, long Area,
        long Cost, string Purpose, string Note);
}
