namespace Ledger.Storage.Reading;

/// <summary>Reads the film that the sessions of a period developed, with what had become of it by a day.</summary>
internal sealed class FilmUseReader(Snapshot snapshot)
{
    /// <summary>The sheets of each session, by the number of its entry.</summary>
    /// <param name="period">The period.</param>
    /// <param name="fatesOn">The day whose fates count.</param>
    public Dictionary<long, FilmUse[]> Read((string From, string To) period, string fatesOn)
    {
        var changed = Changed(period, fatesOn);
        var texts = new SharedTexts();
        return Grouped.Adjacent(snapshot.Connection.Query<LineRow>(
            """
            SELECT s.entry_id AS Number, i.code AS Item, s.lot_id AS Lot, s.sheets AS Sheets, s.area AS Area,
                s.cost AS Cost, s.fate AS Fate,
                l.batch AS Batch,
                i.fixer_factor AS Factor, l.is_priced AS IsPriced,
                sum(s.sheets) OVER (PARTITION BY s.entry_id ORDER BY s.number) AS Last
            FROM standing_entry e CROSS JOIN session_sheets s ON s.entry_id = e.id CROSS JOIN lot l ON l.id = s.lot_id
                CROSS JOIN item i ON i.id = l.item_id
            WHERE e.date BETWEEN @From AND @To ORDER BY s.entry_id, s.number
            """,
            new { period.From, period.To }, buffered: false),
            row => row.Number, row => FilmOf(row, changed, texts));
    }

    /// <summary>What the sheets of each session are called, by the number of its entry.</summary>
    public Dictionary<long, Dictionary<long, SheetName>> Names((string From, string To) period)
    {
        var names = new Dictionary<long, Dictionary<long, SheetName>>();
        foreach (var row in snapshot.Connection.Query<NameRow>(
            """
            SELECT f.entry_id AS Session, f.position AS Position, f.sheet_id AS Sheet, f.negative AS Negative
            FROM standing_entry e CROSS JOIN sheet_fate f ON f.entry_id = e.id WHERE e.date BETWEEN @From AND @To
            """,
            new { period.From, period.To }, buffered: false))
        {
            if (!names.TryGetValue(row.Session, out var session))
                names[row.Session] = session = [];
            session.Add(row.Position, new(new(row.Sheet), row.Negative));
        }

        return names;
    }

    /// <summary>A line, or its sheets one by one when some of them met another fate later.</summary>
    private static IEnumerable<FilmUse> FilmOf(
        LineRow row, Dictionary<(long Session, long Position), Fate> changed, SharedTexts texts)
    {
        var (item, batch) = (texts.Of(row.Item), texts.Of(row.Batch));
        var fate = Named.Fate(row.Fate);
        var first = row.Last - row.Sheets + 1;
        if (changed.Count == 0 || !Enumerable.Range(0, (int)row.Sheets)
            .Any(i => changed.ContainsKey((row.Number, first + i))))
            return [new FilmUse(item, row.Sheets, Area.FromHundredths(row.Area), new(row.Cost), fate)
                { Lot = new(row.Lot), Number = batch, FixerFactorThousandths = row.Factor,
                    IsPriced = row.IsPriced == 1 }];
        return Share.Split(row.Cost, new long[row.Sheets]).Select((cost, i) => new FilmUse(
            item, 1, Area.FromHundredths(row.Area / row.Sheets), new(cost),
            changed.GetValueOrDefault((row.Number, first + i), fate))
        {
            Lot = new(row.Lot), Number = batch, FixerFactorThousandths = row.Factor, IsPriced = row.IsPriced == 1,
        });
    }

    /// <summary>The sheets, by their position in a session, that had another fate by a day than at their
    /// session.</summary>
    private Dictionary<(long Session, long Position), Fate> Changed((string From, string To) period, string fatesOn) =>
        snapshot.Connection.Query<ChangeRow>(
        """
        SELECT f.entry_id AS Session, f.position AS Position, c.fate AS Fate
        FROM standing_entry e CROSS JOIN sheet_fate f ON f.entry_id = e.id
            CROSS JOIN fate_change c ON c.sheet_id = f.sheet_id
        CROSS JOIN standing_entry changed ON changed.id = c.entry_id
        WHERE changed.date <= @fatesOn AND e.date BETWEEN @From AND @To ORDER BY changed.date, changed.ord
        """,
        new { period.From, period.To, fatesOn })
        .GroupBy(row => (row.Session, row.Position)).ToDictionary(group => group.Key,
            group => Named.Fate(group.Last().Fate));

    internal sealed record LineRow(
        long Number, string Item, long Lot, long Sheets, long Area, long Cost, string Fate, string Batch, int Factor,
        long IsPriced, long Last);

    internal sealed record NameRow(long Session, long Position, long Sheet, string? Negative);

    internal sealed record ChangeRow(long Session, long Position, string Fate);
}
