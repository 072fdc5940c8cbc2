namespace Ledger.Storage.Reading;

/// <summary>Finds what a trace begins at by its name, and says what the things are called that it comes
/// through.</summary>
internal sealed class TraceReader(Snapshot snapshot, LocalDate asOf)
{
    private readonly string _day = Dates.Text(asOf);

    /// <summary>What a name may mean.</summary>
    public IReadOnlyList<TraceNode> Named(string name)
    {
        var found = snapshot.Connection.Query<NamedRow>(
            """
            SELECT 10 AS Kind, f.sheet_id AS Id FROM sheet_fate f CROSS JOIN standing_entry e ON e.id = f.entry_id
                WHERE f.negative = @name AND e.date <= @day
            UNION ALL SELECT 10, s.id FROM sheet s CROSS JOIN standing_entry e ON e.id = s.entry_id
                WHERE s.id = @sheet AND e.date <= @day
            UNION ALL SELECT CASE p.kind WHEN 'container' THEN 2 WHEN 'holder side' THEN 3 WHEN 'exposed box' THEN 5
                WHEN 'bath' THEN 7 END, p.id
                FROM place p CROSS JOIN standing_entry e ON e.id = p.entry_id
                WHERE p.code = @name AND p.kind IN ('container', 'holder side', 'exposed box', 'bath')
                    AND e.date <= @day
            UNION ALL SELECT 3, s.place_id FROM holder h JOIN holder_side s ON s.holder_id = h.id WHERE h.code = @name
            UNION ALL SELECT 0, (SELECT min(n.id) FROM lot n WHERE n.item_id = l.item_id
                AND n.batch = l.batch COLLATE NOCASE AND n.batch <> '')
                FROM lot l CROSS JOIN standing_entry e ON e.id = l.entry_id
                WHERE l.batch = @name COLLATE NOCASE AND l.batch <> '' AND e.date <= @day
            UNION ALL SELECT 8, s.entry_id FROM session s CROSS JOIN standing_entry e ON e.id = s.entry_id
                WHERE s.code = @name AND e.date <= @day
            UNION ALL SELECT 11, s.entry_id FROM print_session s CROSS JOIN standing_entry e ON e.id = s.entry_id
                WHERE s.code = @name AND e.date <= @day
            UNION ALL SELECT 6, p.entry_id FROM plan p CROSS JOIN standing_entry e ON e.id = p.entry_id
                WHERE p.name = @name AND e.date <= @day
            """,
            new { name, sheet = SheetId.Parse(name)?.Value, day = _day });
        return [.. found.Select(row => new TraceNode((TraceKind)row.Kind, row.Id)).Distinct()];
    }

    /// <summary>What the nodes are called.</summary>
    public IReadOnlyDictionary<TraceNode, TraceLabel> Labels(IReadOnlyCollection<TraceNode> nodes)
    {
        var labels = new Dictionary<TraceNode, TraceLabel>();
        foreach (var kind in nodes.GroupBy(node => node.Kind))
            foreach (var (node, label) in Labels(kind.Key, kind))
                labels[node] = label;
        return labels;
    }

    /// <summary>What went through a bath, in order.</summary>
    public IReadOnlyList<BathPassing> Passings(string bath) =>
    [
        .. snapshot.Connection.Query<PassingRow>(
            """
            SELECT w.entry_id AS Entry, e.date AS Date, e.ord AS Ord, w.is_first AS IsFirst, w.weighted AS Weighted,
                sum(iif(w.is_first = 1, w.weighted, 0)) OVER (ORDER BY e.date, e.ord) AS After,
                EXISTS (SELECT 1 FROM session s WHERE s.entry_id = w.entry_id) AS IsSession
            FROM place p JOIN bath_work w ON w.place_id = p.id CROSS JOIN standing_entry e ON e.id = w.entry_id
            WHERE p.code = @bath AND e.date <= @day ORDER BY e.date, e.ord
            """,
            new { bath, day = _day })
        .Select(row => new BathPassing(
            new(row.IsSession == 1 ? TraceKind.Session : TraceKind.PrintSession, row.Entry),
                new(Days.Read(row.Date), row.Ord),
            Area.FromHundredths(row.After - (row.IsFirst == 1 ? row.Weighted : 0)), Area.FromHundredths(row.After),
                row.IsFirst == 1)),
    ];

    /// <summary>
    /// What a bath had taken when one session went through it: all that it has taken, less what came later, so that a
    /// long life costs nothing.
    /// </summary>
    public BathPassing? Passing(TraceNode bath, TraceNode by)
    {
        var row = snapshot.Connection.QueryFirstOrDefault<OnePassingRow>(
            """
            SELECT e.date AS Date, e.ord AS Ord, w.is_first AS IsFirst, w.weighted AS Weighted,
                coalesce((SELECT t.weighted FROM bath_total t WHERE t.place_id = w.place_id), 0) - coalesce((
                    SELECT sum(l.weighted) FROM standing_entry le CROSS JOIN bath_work l ON l.entry_id = le.id
                        AND l.place_id = w.place_id AND l.is_first = 1
                    WHERE le.date >= e.date AND (le.date, le.ord) > (e.date, e.ord)), 0) AS After
            FROM bath_work w CROSS JOIN standing_entry e ON e.id = w.entry_id
            WHERE w.place_id = @place AND w.entry_id = @entry AND +e.date <= @day
            """,
            new { place = bath.Id, entry = by.Id, day = _day });
        return row is null ? null : new(
            by, new(Days.Read(row.Date), row.Ord),
            Area.FromHundredths(row.After - (row.IsFirst == 1 ? row.Weighted : 0)), Area.FromHundredths(row.After),
            row.IsFirst == 1);
    }

    /// <summary>The sheets of the sessions that went through a bath after a moment.</summary>
    public IReadOnlyList<SheetId> ThroughSince(TraceNode bath, Moment after, int atMost) =>
    [
        .. snapshot.Connection.Query<long>(
            """
            SELECT f.sheet_id FROM standing_entry e CROSS JOIN bath_work w ON w.entry_id = e.id AND w.place_id = @place
                CROSS JOIN sheet_fate f ON f.entry_id = e.id
            WHERE e.date BETWEEN @since AND @day AND (e.date, e.ord) > (@since, @order)
            ORDER BY e.date, e.ord, f.position LIMIT @atMost
            """,
            new { place = bath.Id, since = Dates.Text(after.Date), order = after.Order, day = _day, atMost })
        .Select(sheet => new SheetId(sheet)),
    ];

    private IEnumerable<(TraceNode Node, TraceLabel Label)> Labels(TraceKind kind, IEnumerable<TraceNode> nodes)
    {
        var asked = nodes.ToList();
        var ids = Json.Array(asked.Select(node => node.Id).Distinct());
        return kind switch
        {
            TraceKind.Number or TraceKind.Delivery => Lots(kind, ids),
            TraceKind.Batch => Batches(asked, ids),
            TraceKind.Sheet => new SheetCardReader(snapshot, asOf).Read(asked.Select(node => node.Id))
                .Select(card => (new TraceNode(kind, card.Id.Value),
                    new TraceLabel(card.Name, card.Subject, card.Date))),
            _ => Others(kind, ids),
        };
    }

    private IEnumerable<(TraceNode, TraceLabel)> Lots(TraceKind kind, string ids) => snapshot.Connection.Query<LotRow>(
        """
        SELECT l.id AS Id, i.code AS Item, i.kind AS Kind, i.unit AS Unit, l.batch AS Batch, l.quantity AS Quantity,
            e.date AS Date, o.mixed_from AS MixedFrom
        FROM json_each(@ids) j CROSS JOIN lot l ON l.id = j.value JOIN item i ON i.id = l.item_id
            JOIN entry e ON e.id = l.entry_id
        LEFT JOIN lot_origin o ON o.lot_id = l.id
        """,
        new { ids }).Select(row =>
        {
            var number =
                $"{(Reading.Named.Kind(row.Kind) == ItemKind.Film ? "emulsion" : "batch")} number of {row.Item}";
            return kind == TraceKind.Number
                ? (new TraceNode(kind, row.Id), new TraceLabel(row.Batch, number, null))
                : (new TraceNode(kind, row.Id), new TraceLabel(
                    row.Item,
                    $"{new Quantity(row.Quantity, Units.Named(row.Unit)!.Value)} "
                        + $"{(row.MixedFrom is { } from ? $"mixed from {from}" : "delivered")}"
                        + (row.Batch.Length > 0 ? $", {row.Batch}" : ""),
                    Days.Read(row.Date)));
        });

    private IEnumerable<(TraceNode, TraceLabel)> Batches(List<TraceNode> asked, string ids)
    {
        var rows = snapshot.Connection.Query<BatchRow>(
            """
            SELECT f.entry_id AS Entry, f.batch AS Batch, s.code AS Session, e.date AS Date, count(*) AS Sheets
            FROM json_each(@ids) j CROSS JOIN sheet_fate f ON f.entry_id = j.value
                JOIN session s ON s.entry_id = f.entry_id
            JOIN entry e ON e.id = f.entry_id GROUP BY f.entry_id, f.batch
            """,
            new { ids }).ToDictionary(row => (row.Entry, (int)row.Batch));
        return asked.Where(node => rows.ContainsKey((node.Id, node.Part))).Select(node =>
        {
            var row = rows[(node.Id, node.Part)];
            return (node, new TraceLabel($"{row.Session} batch {row.Batch}", row.Sheets == 1 ? "1 sheet alone"
                : $"{row.Sheets} sheets together", Days.Read(row.Date)));
        });
    }

    private IEnumerable<(TraceNode, TraceLabel)> Others(TraceKind kind, string ids) => (kind switch
    {
        TraceKind.Container => snapshot.Connection.Query<LabelRow>(
            """
            SELECT p.id AS Id, p.code AS Name, iif(i.kind = 'film', 'box of ', iif(i.unit = 'ml', 'bottle of ',
                'pack of ')) || i.code AS Text, e.date AS Date
            FROM json_each(@ids) j CROSS JOIN place p ON p.id = j.value JOIN container c ON c.place_id = p.id
                JOIN item i ON i.id = c.item_id
            JOIN entry e ON e.id = p.entry_id
            """,
            new { ids }),
        TraceKind.Bath => snapshot.Connection.Query<LabelRow>(
            """
            SELECT p.id AS Id, p.code AS Name, b.role || ' of ' || i.code || ' ' || b.dilution AS Text, e.date AS Date
            FROM json_each(@ids) j CROSS JOIN place p ON p.id = j.value JOIN bath b ON b.place_id = p.id
                JOIN item i ON i.id = b.item_id
            JOIN entry e ON e.id = b.entry_id
            """,
            new { ids }),
        TraceKind.Session => snapshot.Connection.Query<LabelRow>(
            """
            SELECT s.entry_id AS Id, s.code AS Name, 'session, ' || s.process AS Text, e.date AS Date
            FROM json_each(@ids) j CROSS JOIN session s ON s.entry_id = j.value JOIN entry e ON e.id = s.entry_id
            """,
            new { ids }),
        TraceKind.PrintSession => snapshot.Connection.Query<LabelRow>(
            """
            SELECT s.entry_id AS Id, s.code AS Name, 'print session' AS Text, e.date AS Date
            FROM json_each(@ids) j CROSS JOIN print_session s ON s.entry_id = j.value JOIN entry e ON e.id = s.entry_id
            """,
            new { ids }),
        TraceKind.Plan => snapshot.Connection.Query<LabelRow>(
            """
            SELECT s.entry_id AS Id, s.name AS Name, 'plan for ' || s.date AS Text, e.date AS Date
            FROM json_each(@ids) j CROSS JOIN plan s ON s.entry_id = j.value JOIN entry e ON e.id = s.entry_id
            """,
            new { ids }),
        TraceKind.Exposure => snapshot.Connection.Query<LabelRow>(
            """
            SELECT e.id AS Id, 'entry ' || e.id AS Name, e.summary AS Text, e.date AS Date FROM json_each(@ids) j
                CROSS JOIN entry e ON e.id = j.value
            """,
            new { ids }),
        _ => snapshot.Connection.Query<LabelRow>(
            """
            SELECT p.id AS Id, p.code AS Name, iif(p.kind = 'holder side', 'holder side',
                'box of exposed sheets') AS Text, NULL AS Date
            FROM json_each(@ids) j CROSS JOIN place p ON p.id = j.value
            """,
            new { ids }),
    }).Select(row => (new TraceNode(kind, row.Id), new TraceLabel(row.Name, row.Text, Days.ReadOptional(row.Date))));

    internal sealed record NamedRow(long Kind, long Id);

    internal sealed record LotRow(long Id, string Item, string Kind, string Unit, string Batch, long Quantity,
        string Date, string? MixedFrom);

    internal sealed record BatchRow(long Entry, long Batch, string Session, string Date, long Sheets);

    internal sealed record LabelRow(long Id, string Name, string Text, string? Date);

    internal sealed record OnePassingRow(string Date, long Ord, long IsFirst, long Weighted, long After);

    internal sealed record PassingRow(long Entry, string Date, long Ord, long IsFirst, long Weighted, long After,
        long IsSession);
}
