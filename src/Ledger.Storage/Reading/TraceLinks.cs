using Ledger.Storage.Files;

namespace Ledger.Storage.Reading;

/// <summary>One sort of link: which rows say it, and which of their columns name its two ends.</summary>
/// <param name="From">What it comes from.</param>
/// <param name="To">What it comes to.</param>
/// <param name="FromId">The column of the number of what it comes from.</param>
/// <param name="ToId">The column of the number of what it comes to.</param>
/// <param name="Rows">The tables, joined.</param>
/// <param name="Entry">The column of the entry that says it.</param>
/// <param name="Where">What must hold beside.</param>
internal sealed record TraceLinkRows(TraceKind From, TraceKind To, string FromId, string ToId, string Rows,
    string Entry, string Where = "1")
{
    /// <summary>The column of the batch on the end that is one; 0 where neither is.</summary>
    public string Part { get; init; } = "0";

    /// <summary>Which rows link from the nodes of the list; the column's own values unless said.</summary>
    public string? OutOf { get; init; }

    private const string Listed = "(SELECT value FROM json_each($ids))";

    /// <summary>
    /// Everything that is said so, as SQL. The plus keeps SQLite from walking the whole journal by date.
    /// </summary>
    /// <param name="isInto">Whether the links into the nodes of the list are asked for, or those out of them.</param>
    /// <param name="isLimited">Whether at most $most rows are looked at; of links out of the nodes.</param>
    public string Sql(bool isInto, bool isLimited = false) =>
        $"""
        SELECT DISTINCT {FromId}, {ToId}, {Part}, e.date, e.ord
        FROM {(isLimited && OutOf is null ? Limited : Rows)} JOIN standing_entry e ON e.id = {Entry}
        WHERE {(isInto ? $"{ToId} IN {Listed}" : OutOf ?? $"{FromId} IN {Listed}")} AND {Where} AND +e.date <= $day
        """;

    /// <summary>The same of at most $most rows, after a row that tells how many were looked at.</summary>
    public string LimitedSql =>
        OutOf is not null ? $"SELECT 0, 0, 0, '', 0 UNION ALL SELECT * FROM ({Sql(isInto: false)})"
            : $"SELECT (SELECT count(*) FROM {Driver}), 0, 0, '', 0 UNION ALL SELECT * FROM ("
                + $"{Sql(isInto: false, isLimited: true)})";

    /// <summary>The first of the tables, whose rows are those of the nodes; no more than $most of them.</summary>
    private string Driver
    {
        get
        {
            var (table, column) = (Rows.Split(' ')[0], FromId.Split('.')[1]);
            var isPartial = table is "movement" or "sheet_move" && column != "sheet_id";
            return $"(SELECT * FROM {table} WHERE {column} IN {Listed}{(isPartial ? $" AND {column} >= 100" : "")} "
                + "LIMIT $most)";
        }
    }

    private string Limited => $"{Driver} {string.Join(' ', Rows.Split(' ')[1..])}";

    /// <summary>Every sort of link that a trace goes along.</summary>
    public static IReadOnlyList<TraceLinkRows> All { get; } =
    [
        new(TraceKind.Number, TraceKind.Delivery,
            "(SELECT min(n.id) FROM lot n WHERE n.item_id = l.item_id AND n.batch = l.batch COLLATE NOCASE AND "
            + "n.batch <> '')", "l.id",
            "lot l", "l.entry_id", "l.batch <> ''")
        {
            OutOf = "l.id IN (SELECT m.id FROM lot n JOIN lot m ON m.batch = n.batch COLLATE NOCASE AND m.batch <> '' "
                + $"AND m.item_id = n.item_id WHERE n.id IN {Listed})",
        },
        new(TraceKind.Delivery, TraceKind.Container, "c.lot_id", "c.place_id",
            "container c JOIN place p ON p.id = c.place_id JOIN lot l ON l.id = c.lot_id", "p.entry_id",
                "p.entry_id = l.entry_id"),
        new(TraceKind.Container, TraceKind.Container, "m.from_place", "m.to_place",
            "movement m JOIN container f ON f.place_id = m.from_place JOIN container t ON t.place_id = m.to_place",
                "m.entry_id",
            "m.from_place >= 100 AND m.to_place >= 100"),
        new(TraceKind.Container, TraceKind.Bath, "m.from_place", "m.to_place",
            "movement m JOIN container f ON f.place_id = m.from_place JOIN bath t ON t.place_id = m.to_place",
                "m.entry_id",
            "m.from_place >= 100 AND m.to_place >= 100"),
        new(TraceKind.Container, TraceKind.Delivery, "m.from_place", "l.id",
            "movement m JOIN lot l ON l.entry_id = m.entry_id JOIN lot_origin o ON o.lot_id = l.id "
            + "AND o.mixed_from IS NOT NULL", "m.entry_id",
            $"m.to_place = {InSql.Mixing} AND m.from_place >= 100"),
        new(TraceKind.Container, TraceKind.Session, "m.from_place", "s.entry_id",
            "movement m JOIN session s ON s.entry_id = m.entry_id JOIN container f ON f.place_id = m.from_place",
                "m.entry_id",
            $"m.to_place = {InSql.UsedUp} AND m.from_place >= 100"),
        new(TraceKind.Container, TraceKind.PrintSession, "m.from_place", "s.entry_id",
            "movement m JOIN print_session s ON s.entry_id = m.entry_id JOIN container f ON f.place_id = m.from_place",
                "m.entry_id",
            $"m.to_place IN ({InSql.UsedUp}, {InSql.Prints}) AND m.from_place >= 100"),
        new(TraceKind.Container, TraceKind.Sheet, "s.box_id", "s.id", "sheet s", "s.entry_id"),
        new(TraceKind.Side, TraceKind.Sheet, "s.side_id", "s.id", "sheet s", "s.entry_id", "s.side_id IS NOT NULL"),
        new(TraceKind.Exposure, TraceKind.Sheet, "x.entry_id", "x.sheet_id", "exposure x", "x.entry_id",
            "e.kind = 'exposure'"),
        new(TraceKind.ExposedBox, TraceKind.Sheet, "m.to_place", "m.sheet_id",
            "sheet_move m JOIN exposed_box b ON b.place_id = m.to_place", "m.entry_id", "m.to_place >= 100"),
        new(TraceKind.Plan, TraceKind.Session, "d.plan_id", "d.entry_id",
            "plan_end d JOIN session s ON s.entry_id = d.entry_id", "d.entry_id"),
        new(TraceKind.Bath, TraceKind.Session, "w.place_id", "w.entry_id",
            "bath_work w JOIN session s ON s.entry_id = w.entry_id", "w.entry_id"),
        new(TraceKind.Bath, TraceKind.PrintSession, "w.place_id", "w.entry_id",
            "bath_work w JOIN print_session s ON s.entry_id = w.entry_id", "w.entry_id"),
        new(TraceKind.Session, TraceKind.Batch, "f.entry_id", "f.entry_id", "sheet_fate f",
            "f.entry_id") { Part = "f.batch" },
        new(TraceKind.Batch, TraceKind.Sheet, "f.entry_id", "f.sheet_id", "sheet_fate f",
            "f.entry_id") { Part = "f.batch" },
        new(TraceKind.Sheet, TraceKind.Container, "m.sheet_id", "m.to_place",
            "sheet_move m JOIN container c ON c.place_id = m.to_place", "m.entry_id", "m.to_place >= 100"),
        new(TraceKind.Sheet, TraceKind.PrintSession, "n.sheet_id", "n.entry_id", "print_negative n", "n.entry_id"),
    ];
}

/// <summary>Reads the links of nodes, all of a kind at once.</summary>
internal sealed class TraceLinks(Snapshot snapshot, LocalDate asOf)
{
    /// <summary>
    /// The links that lead from the nodes, of at most so many rows of each sort; and whether there are more, with which
    /// it ends.
    /// </summary>
    public (IReadOnlyList<TraceLink> Links, bool AreMore) OutOf(IReadOnlyCollection<TraceNode> nodes, int atMost)
    {
        var byKind = nodes.ToLookup(node => node.Kind);
        var (asked, links, areMore) = (nodes.ToHashSet(), new List<TraceLink>(), false);
        foreach (var rows in TraceLinkRows.All.Where(rows => byKind.Contains(rows.From)))
        {
            if (areMore)
                break;
            using var command = Command(rows.LimitedSql, byKind[rows.From]);
            command.Parameters.AddWithValue("$most", atMost);
            using var reader = command.ExecuteReader();
            areMore |= reader.Read() && reader.GetInt64(0) >= atMost;
            while (reader.Read())
                if (Link(rows, reader) is var link && asked.Contains(link.From))
                    links.Add(link);
        }

        return (links, areMore);
    }

    /// <summary>The links that lead to the nodes, or those that lead from them.</summary>
    public IReadOnlyList<TraceLink> Of(IReadOnlyCollection<TraceNode> nodes, bool isInto)
    {
        var asked = nodes.ToHashSet();
        var byKind = nodes.ToLookup(node => node.Kind);
        return
        [
            .. TraceLinkRows.All.Where(rows => byKind.Contains(isInto ? rows.To : rows.From))
                .SelectMany(rows => Read(rows, byKind[isInto ? rows.To : rows.From], isInto))
                .Where(link => asked.Contains(isInto ? link.To : link.From)),
        ];
    }

    private IEnumerable<TraceLink> Read(TraceLinkRows rows, IEnumerable<TraceNode> nodes, bool isInto)
    {
        using var command = Command(rows.Sql(isInto), nodes);
        using var reader = command.ExecuteReader();
        while (reader.Read())
            yield return Link(rows, reader);
    }

    private SqliteCommand Command(string sql, IEnumerable<TraceNode> nodes)
    {
        var command = snapshot.Connection.CreateCommand();
        command.CommandText = sql;
        command.Parameters.AddWithValue("$ids", Json.Array(nodes.Select(node => node.Id).Distinct()));
        command.Parameters.AddWithValue("$day", Core.Measures.Dates.Text(asOf));
        return command;
    }

    private static TraceLink Link(TraceLinkRows rows, SqliteDataReader reader) => new(
        Node(rows.From, reader.GetInt64(0), reader.GetInt32(2)), Node(rows.To, reader.GetInt64(1), reader.GetInt32(2)),
        new(Days.Read(reader.GetString(3)), reader.GetInt64(4)));

    private static TraceNode Node(TraceKind kind, long id, int part) =>
        new(kind, id, kind == TraceKind.Batch ? part : 0);
}
