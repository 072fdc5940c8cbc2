namespace Ledger.Storage.Reading;

/// <summary>Reads a sheet's whole story: box, holder, exposure, session, tray mates, cost, number.</summary>
internal sealed class StoryReader(Snapshot snapshot)
{
    public SheetStory? Read(string name, LocalDate asOf, Holdings holdings)
    {
        var day = Dates.Text(asOf);
        if (Find(name.Trim(), day, holdings.Film) is not { } id)
            return null;
        var row = snapshot.Connection.QueryFirstOrDefault<SheetRow>(
            """
            SELECT s.id AS Id, i.code AS Item, l.batch AS Batch, box.code AS Box, side.code AS Side, s.cost AS Cost,
                came.date AS CameOn,
                l.is_priced AS IsPriced,
                (SELECT p.code FROM sheet_move m JOIN standing_entry e ON e.id = m.entry_id
                    JOIN place p ON p.id = m.to_place
                    WHERE m.sheet_id = s.id AND e.date <= @day ORDER BY e.date DESC, e.ord DESC LIMIT 1) AS Place
            FROM sheet s JOIN standing_entry came ON came.id = s.entry_id JOIN lot l ON l.id = s.lot_id
                JOIN item i ON i.id = l.item_id
            JOIN place box ON box.id = s.box_id LEFT JOIN place side ON side.id = s.side_id
            WHERE s.id = @id AND came.date <= @day
            """,
            new { id, day });
        if (row is null)
            return null;
        return new()
        {
            Id = new(row.Id),
            Item = row.Item,
            Batch = row.Batch,
            Box = row.Box,
            Place = row.Place ?? row.Box,
            Film = new(row.Cost),
            IsPriced = row.IsPriced == 1,
            LoadedOn = row.Side is null ? null : Days.Read(row.CameOn),
            Side = row.Side,
            Exposure = Exposure(id, day),
            Development = Development(id, day),
            Steps = Steps(id, day),
            Findings = Findings(id, day),
            FiledIn = FiledIn(id, day),
        };
    }

    /// <summary>The sheets of a session in the order of the trays.</summary>
    public IReadOnlyList<SheetFate> SheetsOf(string session, LocalDate asOf) =>
    [
        .. snapshot.Connection.Query<DevelopedRow>(
            $"""
            SELECT f.sheet_id AS Sheet, f.position AS Position, i.code AS Item, f.batch AS Batch,
                {FateSql.Cause} AS Cause, f.negative AS Negative,
                side.code AS Side, {FateSql.Fate} AS Fate,
                (SELECT x.subject FROM exposure x JOIN standing_entry xe ON xe.id = x.entry_id
                    WHERE x.sheet_id = f.sheet_id AND xe.date <= @day ORDER BY xe.date DESC,
                        xe.id DESC LIMIT 1) AS Subject
            FROM session n CROSS JOIN standing_entry e ON e.id = n.entry_id
                CROSS JOIN sheet_fate f ON f.entry_id = n.entry_id
            CROSS JOIN sheet s ON s.id = f.sheet_id CROSS JOIN lot l ON l.id = s.lot_id
                CROSS JOIN item i ON i.id = l.item_id
            LEFT JOIN place side ON side.id = s.side_id
            WHERE n.code = @session AND e.date <= @day ORDER BY f.position
            """,
            new { session, day = Dates.Text(asOf) }).Select(row => new SheetFate(
                new(row.Sheet), row.Position, row.Item, (int)row.Batch, Named.Fate(row.Fate),
                row.Cause is null ? null : Named.Cause(row.Cause), row.Negative, row.Side, row.Subject ?? "")),
    ];

    /// <summary>
    /// By #number, by the negative's number, or by the side: the sheet in it, or the one that was last in it.
    /// </summary>
    private long? Find(string name, string day, FilmRegister film)
    {
        if (SheetId.Parse(name) is { } number)
            return number.Value;
        if (film.Side(name) is { } side)
            return snapshot.Connection.QueryFirstOrDefault<long?>(
                """
                SELECT s.id FROM sheet s JOIN standing_entry e ON e.id = s.entry_id
                WHERE s.side_id = @side AND e.date <= @day ORDER BY s.id DESC LIMIT 1
                """,
                new { side = side.Place.Value, day });
        return snapshot.Connection.QueryFirstOrDefault<long?>(
            "SELECT f.sheet_id FROM sheet_fate f JOIN standing_entry e ON e.id = f.entry_id WHERE f.negative = @name "
                + "AND e.date <= @day",
            new { name, day });
    }

    /// <summary>What became of a number that no negative has.</summary>
    public FormerNegative? Former(string negative, NegativePattern pattern)
    {
        var digits = negative.Length - negative.AsSpan().TrimEnd("0123456789").Length;
        if (digits is 0 or > 15)
            return null;
        var number = long.Parse(negative.AsSpan(negative.Length - digits), NumberStyles.None,
            CultureInfo.InvariantCulture);
        return snapshot.Connection.Query<FormerRow>(
            """
            SELECT n.slot AS Slot, n.series AS Series, e.id AS Entry, e.counts AS Counts FROM said_name n
                JOIN entry e ON e.key = n.key
            WHERE n.series GLOB 'negative *' AND n.number = @number ORDER BY e.id DESC
            """,
            new { number })
            .Where(row => int.TryParse(row.Series.AsSpan("negative ".Length), out var year)
                && pattern.Number(year, number) == negative)
            .Select(row => new FormerNegative(SheetId.Parse(row.Slot.Split(' ')[1]), row.Entry, row.Counts == 0))
            .FirstOrDefault();
    }

    internal sealed record FormerRow(string Slot, string Series, long Entry, long Counts);

    private Exposure? Exposure(long id, string day)
    {
        var row = snapshot.Connection.QueryFirstOrDefault<FilmReader.ExposureRow>(
            """
            SELECT x.sheet_id AS SheetId, x.date AS Date, x."group" AS "Group", x.subject AS Subject
            FROM exposure x JOIN standing_entry e ON e.id = x.entry_id
            WHERE x.sheet_id = @id AND e.date <= @day ORDER BY e.date DESC, e.ord DESC LIMIT 1
            """,
            new { id, day });
        return row is null ? null : new(Days.Read(row.Date), row.Group, row.Subject);
    }

    private IReadOnlyList<SheetStep> Steps(long id, string day) =>
    [
        .. snapshot.Connection.Query<StepRow>(
            """
            SELECT e.id AS Entry, e.date AS Date, e.summary AS Summary
            FROM standing_entry e WHERE e.date <= @day AND e.id IN (
                SELECT entry_id FROM sheet_move WHERE sheet_id = @id
                UNION SELECT entry_id FROM exposure WHERE sheet_id = @id
                UNION SELECT entry_id FROM sheet_fate WHERE sheet_id = @id
                UNION SELECT entry_id FROM fate_change WHERE sheet_id = @id
                UNION SELECT entry_id FROM sheet_note WHERE sheet_id = @id
                UNION SELECT entry_id FROM filing WHERE sheet_id = @id
                UNION SELECT entry_id FROM print_negative WHERE sheet_id = @id)
            ORDER BY e.date, e.ord
            """,
            new { id, day }).Select(row => new SheetStep(row.Entry, Days.Read(row.Date), row.Summary)),
    ];

    private IReadOnlyList<SheetFinding> Findings(long id, string day) =>
    [
        .. snapshot.Connection.Query<FindingRow>(
            """
            SELECT e.id AS Entry, e.date AS Date, n.what AS What, n.result AS Result, n.has_passed AS HasPassed
            FROM sheet_note n CROSS JOIN standing_entry e ON e.id = n.entry_id WHERE n.sheet_id = @id AND e.date <= @day
                ORDER BY e.date, e.ord
            """,
            new { id, day }).Select(row => new SheetFinding(
                row.Entry, Days.Read(row.Date), Named.Work(row.What), row.Result, row.HasPassed is { } passed
                    ? passed == 1 : null)),
    ];

    private string? FiledIn(long id, string day) => snapshot.Connection.QueryFirstOrDefault<string?>(
        """
        SELECT g.place FROM filing g CROSS JOIN standing_entry e ON e.id = g.entry_id
        WHERE g.sheet_id = @id AND e.date <= @day ORDER BY e.date DESC, e.ord DESC LIMIT 1
        """,
        new { id, day });

    private SheetDevelopment? Development(long id, string day)
    {
        var row = snapshot.Connection.QueryFirstOrDefault<FateRow>(
            $"""
            SELECT f.entry_id AS Entry, s.code AS Session, e.date AS Date, f.position AS Position, f.batch AS Batch,
                {FateSql.Cause} AS Cause,
                f.negative AS Negative, {FateSql.Fate} AS Fate
            FROM sheet_fate f JOIN standing_entry e ON e.id = f.entry_id JOIN session s ON s.entry_id = f.entry_id
            WHERE f.sheet_id = @id AND e.date <= @day
            """,
            new { id, day });
        if (row is null)
            return null;
        var date = Days.Read(row.Date);
        var name = $"{row.Session}-{row.Position:00}";
        return new(
            row.Session, date, name, Group(row), Named.Fate(row.Fate),
            row.Cause is null ? null : Named.Cause(row.Cause), row.Negative, [.. Mates(id, row)],
            new CostReading(new CostReader(snapshot).Read(date, date)).Sheets.FirstOrDefault(sheet =>
                sheet.Entry == row.Entry && sheet.Sheet == (row.Negative ?? new SheetId(id).ToString())));
    }

    /// <summary>The group of the line that the sheet's position falls into.</summary>
    private string Group(FateRow fate)
    {
        var last = 0L;
        foreach (var line in snapshot.Connection.Query<LineRow>(
            """
            SELECT sheets AS Sheets, "group" AS "Group" FROM session_sheets WHERE entry_id = @Entry ORDER BY number
            """,
            new { fate.Entry }))
            if ((last += line.Sheets) >= fate.Position)
                return line.Group;
        return "";
    }

    private IEnumerable<string> Mates(long id, FateRow fate) => snapshot.Connection.Query<MateRow>(
        """
        SELECT f.sheet_id AS Sheet, f.negative AS Negative, f.fate AS Fate FROM sheet_fate f
        WHERE f.entry_id = @Entry AND f.batch = @Batch AND f.sheet_id <> @id ORDER BY f.position
        """,
        new { id, fate.Entry, fate.Batch }).Select(row => row.Negative ?? $"{new SheetId(row.Sheet)} ({row.Fate})");

    internal sealed record SheetRow(
        long Id, string Item, string Batch, string Box, string? Side, long Cost, string CameOn, long IsPriced,
        string? Place);

    internal sealed record StepRow(long Entry, string Date, string Summary);

    internal sealed record FateRow(
        long Entry, string Session, string Date, long Position, long Batch, string? Cause,
        string? Negative, string Fate);

    internal sealed record DevelopedRow(
        long Sheet, long Position, string Item, long Batch, string? Cause, string? Negative,
        string? Side, string Fate, string? Subject);

    internal sealed record LineRow(long Sheets, string Group);

    internal sealed record FindingRow(long Entry, string Date, string What, string Result, long? HasPassed);

    internal sealed record MateRow(long Sheet, string? Negative, string Fate);
}
