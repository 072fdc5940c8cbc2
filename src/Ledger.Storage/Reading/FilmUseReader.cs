namespace Ledger.Storage.Reading;

/// <summary>Reads the film that the sessions of a period developed, with what had become of it by a day.</summary>
/// <param name="snapshot">The state that is read.</param>
/// <param name="lots">The lots that the sheets came of.</param>
internal sealed class FilmUseReader(Snapshot snapshot, LotsUsed lots)
{
    /// <summary>The sheets of each session, by the number of its entry.</summary>
    /// <param name="period">The period.</param>
    /// <param name="fatesOn">The day whose fates count.</param>
    public Dictionary<long, FilmUse[]> Read((string From, string To) period, string fatesOn)
    {
        var changed = Changed(period, fatesOn);
        var (entry, sheets) = (0L, 0L);
        return Grouped.Adjacent(snapshot.Connection.Query<LineRow>(
            """
            SELECT s.entry_id AS Number, s.lot_id AS Lot, s.sheets AS Sheets, s.area AS Area, s.cost AS Cost,
                s.fate AS Fate
            FROM standing_entry e CROSS JOIN session_sheets s ON s.entry_id = e.id
            WHERE e.date BETWEEN @From AND @To ORDER BY s.entry_id, s.number
            """,
            new { period.From, period.To }, buffered: false),
            row => row.Number, FilmOf);

        IEnumerable<FilmUse> FilmOf(LineRow row)
        {
            var before = row.Number == entry ? sheets : 0;
            (entry, sheets) = (row.Number, before + row.Sheets);
            return Uses(row, before + 1, changed);
        }
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
    /// <param name="row">The line.</param>
    /// <param name="first">The position of its first sheet in the session.</param>
    /// <param name="changed">The sheets whose fate is another.</param>
    private IEnumerable<FilmUse> Uses(
        LineRow row, long first, Dictionary<(long Session, long Position), Fate> changed)
    {
        var lot = lots.Of(row.Lot);
        var fate = Named.Fate(row.Fate);
        if (changed.Count == 0 || !Enumerable.Range(0, (int)row.Sheets)
            .Any(i => changed.ContainsKey((row.Number, first + i))))
            return [Of(row.Sheets, row.Area, row.Cost, fate)];
        return Share.Split(row.Cost, new long[row.Sheets]).Select((cost, i) =>
            Of(1, row.Area / row.Sheets, cost, changed.GetValueOrDefault((row.Number, first + i), fate)));

        FilmUse Of(long sheets, long area, long cost, Fate became) =>
            new(lot.Item, sheets, Area.FromHundredths(area), new(cost), became)
            {
                Lot = new(row.Lot), Number = lot.Batch, FixerFactorThousandths = lot.FixerFactor,
                IsPriced = lot.IsPriced == 1,
            };
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

    internal sealed record LineRow(long Number, long Lot, long Sheets, long Area, long Cost, string Fate);

    internal sealed record NameRow(long Session, long Position, long Sheet, string? Negative);

    internal sealed record ChangeRow(long Session, long Position, string Fate);
}
