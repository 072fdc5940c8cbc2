using Ledger.Storage.Files;

namespace Ledger.Storage.Reading;

/// <summary>
/// Reads what the journal knows of a period's costs. An undo stands on the day of what it takes back: both cancel.
/// </summary>
internal sealed class CostReader(Snapshot snapshot)
{
    private const long Supplier = 1, LostOrGained = 5, Discarded = 6;
    private static readonly Dictionary<long, SheetName> _noNames = [];
    private HashSet<long> _unpricedBaths = [];

    /// <param name="from">The first day.</param>
    /// <param name="to">The last day.</param>
    /// <param name="fatesOn">The day whose fates count; null for the last one.</param>
    public CostFacts Read(LocalDate from, LocalDate to, LocalDate? fatesOn = null)
    {
        var period = (From: Dates.Text(from), To: Dates.Text(to));
        var (unpriced, baths) = (new UnpricedReader(snapshot), Baths(period.From, period.To));
        _unpricedBaths = unpriced.Baths;
        var added = Added(period, baths.Keys);
        var work = Work(period, baths, added);
        var outside = Outside(period);
        List<StockLoss> losses =
        [
            .. outside.Where(row => row.Place != Supplier && (row.Value != 0 || row.Quantity != 0))
                .Select(row => new StockLoss(Days.Read(row.Date), row.Item, Named.Kind(row.Kind),
                    row.Quantity, new(row.Value))
                {
                    Unpriced = row.Unpriced,
                }),
        ];
        return new(
            from,
            to,
            OnHandAfter(from.PlusDays(-1)),
            Money.Zero - Net(Supplier, outside),
            OnHandAfter(to),
            Net(Discarded, outside),
            FilmLoss.Of(losses),
            Net(LostOrGained, outside),
            [.. baths.Values.Select(row => ToUse(row, added))],
            Sessions(period, work, unpriced.Sessions, Dates.Text(fatesOn ?? to)))
        {
            Unpriced = unpriced.Stock(period),
            Prints = Prints(period, work),
            Losses = losses,
        };
    }

    /// <summary>
    /// What all containers, holders and boxes of exposed film were worth at the end of a day: by the months before, and
    /// the days since.
    /// </summary>
    private Money OnHandAfter(LocalDate day) => new(snapshot.Connection.ExecuteScalar<long>(
        """
        SELECT (SELECT coalesce(sum(change), 0) FROM stock_month WHERE month < substr(@first, 1, 7))
            + (SELECT coalesce(sum(
                iif(t.id >= 100 AND t.kind <> 'bath', m.value, 0) - iif(f.id >= 100
                    AND f.kind <> 'bath', m.value, 0)), 0)
                FROM entry e CROSS JOIN movement m ON m.entry_id = e.id CROSS JOIN place f ON f.id = m.from_place
                    CROSS JOIN place t ON t.id = m.to_place
                WHERE e.date BETWEEN @first AND @day)
        """,
        new { first = Dates.Text(day.With(DateAdjusters.StartOfMonth)), day = Dates.Text(day) }));

    /// <summary>
    /// What came day by day of each item to the supplier, the lost and the discarded, less what left them.
    /// </summary>
    private List<OutsideRow> Outside((string From, string To) period) =>
    [
        .. snapshot.Connection.Query<OutsideRow>(
            $"""
            SELECT e.date AS Date, i.code AS Item, i.kind AS Kind, iif(m.to_place IN ({InSql.OutsideUse}), m.to_place,
                m.from_place) AS Place,
                sum(iif(m.to_place IN ({InSql.OutsideUse}), m.quantity, -m.quantity)) AS Quantity,
                sum(iif(m.to_place IN ({InSql.OutsideUse}), m.value, -m.value)) AS Value,
                sum(iif(l.is_priced = 1, 0, iif(m.to_place IN ({InSql.OutsideUse}), m.quantity,
                -m.quantity))) AS Unpriced
            FROM entry e CROSS JOIN movement m ON m.entry_id = e.id CROSS JOIN lot l ON l.id = m.lot_id
                CROSS JOIN item i ON i.id = l.item_id
            WHERE e.date BETWEEN @From AND @To AND (m.to_place IN ({InSql.OutsideUse})
                OR m.from_place IN ({InSql.OutsideUse}))
            GROUP BY 1, i.id, 4 ORDER BY 1, 2
            """,
            new { period.From, period.To }),
    ];

    private static Money Net(long place, List<OutsideRow> outside) =>
        new(outside.Where(row => row.Place == place).Sum(row => row.Value));

    private Dictionary<long, BathRow> Baths(string from, string to) => snapshot.Connection.Query<BathRow>(
        """
        SELECT b.place_id AS PlaceId, p.code AS Code, b.role = 'fixer' AS IsWeighted, b.working_volume AS WorkingVolume,
            coalesce(b.capacity_per_litre, 0) AS CapacityPerLitre,
            mixed.date < @from AS WasMixedBefore,
            (SELECT min(e.date) FROM bath_end d CROSS JOIN standing_entry e ON e.id = d.entry_id
                WHERE d.place_id = b.place_id AND e.date <= @to) AS EndedOn,
            (SELECT coalesce(sum(m.value), 0) FROM movement m
                WHERE m.entry_id = b.entry_id AND m.to_place = b.place_id AND m.to_place >= 100) AS Value,
            (SELECT coalesce(sum(w.weighted), 0) FROM bath_work w CROSS JOIN standing_entry e ON e.id = w.entry_id
                WHERE w.place_id = b.place_id AND w.is_first = 1 AND e.date < @from) AS WorkedBefore,
            (SELECT coalesce(sum(w.weighted), 0) FROM bath_work w CROSS JOIN standing_entry e ON e.id = w.entry_id
                WHERE w.place_id = b.place_id AND w.is_first = 1 AND e.date <= @to) AS WorkedAfter
        FROM bath b CROSS JOIN standing_entry mixed ON mixed.id = b.entry_id CROSS JOIN place p ON p.id = b.place_id
        WHERE mixed.date <= @to AND NOT EXISTS (SELECT 1 FROM bath_end d
            CROSS JOIN standing_entry e ON e.id = d.entry_id
            WHERE d.place_id = b.place_id AND e.date < @from)
        ORDER BY b.place_id
        """,
        new { from, to }).ToDictionary(row => row.PlaceId);

    /// <summary>What top-ups brought to each bath, up to the end of the period.</summary>
    private ILookup<long, AddedRow> Added((string From, string To) period, IEnumerable<long> baths) =>
        snapshot.Connection.Query<AddedRow>(
            """
            SELECT t.place_id AS PlaceId, e.id AS Entry, sum(m.value) AS Value, e.date >= @From AS IsNew,
                coalesce((SELECT sum(w.weighted) FROM bath_work w CROSS JOIN standing_entry we ON we.id = w.entry_id
                    WHERE w.place_id = t.place_id AND w.is_first = 1 AND (we.date, we.id) < (e.date, e.ord)),
                        0) AS Worked
            FROM json_each(@baths) j CROSS JOIN bath_top_up t ON t.place_id = j.value
                CROSS JOIN standing_entry e ON e.id = t.entry_id
                CROSS JOIN movement m ON m.entry_id = e.id AND m.to_place = t.place_id AND m.to_place >= 100
            WHERE e.date <= @To GROUP BY t.entry_id ORDER BY e.date, e.ord
            """,
            new { baths = Json.Array(baths), period.From, period.To }).ToLookup(row => row.PlaceId);

    private BathUse ToUse(BathRow row, ILookup<long, AddedRow> added) => new(
        ToShare(row, added), Area.FromHundredths(row.WorkedBefore), Area.FromHundredths(row.WorkedAfter),
        row.WasMixedBefore == 1, row.EndedOn is not null)
    {
        EndedOn = Days.ReadOptional(row.EndedOn),
    };

    private BathShare ToShare(BathRow row, ILookup<long, AddedRow> added) => new(
        row.Code, new(row.Value), Area.FromHundredths(Share.Of(row.CapacityPerLitre, row.WorkingVolume, 1_000_000)))
    {
        Place = new(row.PlaceId),
        IsPriced = !_unpricedBaths.Contains(row.PlaceId),
        IsWeighted = row.IsWeighted == 1,
        TopUps =
        [
            .. added[row.PlaceId].Select(top => new AddedValue(new(top.Value), Area.FromHundredths(top.Worked))
            {
                Entry = top.Entry, IsNew = top.IsNew == 1,
            }),
        ],
    };

    private IReadOnlyList<SessionUse> Sessions(
        (string From, string To) period, Dictionary<long, BathPart[]> work, HashSet<long> unpriced, string fatesOn)
    {
        var used = Used(period);
        var films = new FilmUseReader(snapshot);
        var (lines, names) = (films.Read(period, fatesOn), films.Names(period));
        var texts = new SharedTexts();
        return
        [
            .. snapshot.Connection.Query<SessionRow>(
                $"""
                SELECT s.entry_id AS Number, s.code AS Session, e.date AS Date, s.process AS Process,
                    (SELECT p.code FROM place p WHERE p.id = s.bath_id) AS Bath,
                    coalesce(
                        (SELECT i.code FROM movement m JOIN lot l ON l.id = m.lot_id JOIN item i ON i.id = l.item_id
                            WHERE m.entry_id = s.entry_id AND m.to_place = {InSql.UsedUp} AND i.role = 'developer'
                                ORDER BY m.id LIMIT 1),
                        (SELECT i.code || ' in ' || p.code FROM bath_work w JOIN bath b ON b.place_id = w.place_id
                            JOIN item i ON i.id = b.item_id
                            JOIN place p ON p.id = w.place_id WHERE w.entry_id = s.entry_id
                                AND b.role = 'developer' LIMIT 1)) AS Developing
                FROM standing_entry e CROSS JOIN session s ON s.entry_id = e.id WHERE e.date BETWEEN @From AND @To
                    ORDER BY e.date, e.ord
                """,
                new { period.From, period.To }, buffered: false)
            .Select(row => ToSession(row, used.GetValueOrDefault(row.Number), texts) with
            {
                Baths = work.GetValueOrDefault(row.Number, []),
                Lines = lines.GetValueOrDefault(row.Number, []),
                IsPriced = !unpriced.Contains(row.Number),
                Sheets = names.GetValueOrDefault(row.Number, _noNames),
            }),
        ];
    }

    private static SessionUse ToSession(
        SessionRow row, (Money Developer, Money Chemistry, Money Supplies) used, SharedTexts texts) => new(
        row.Session, Days.Read(row.Date), used.Developer, used.Chemistry, used.Supplies, [], [])
    {
        Entry = row.Number,
        Process = texts.Of(row.Process),
        Bath = texts.Of(row.Bath ?? ""),
        Developing = texts.Of(row.Developing ?? ""),
    };

    /// <summary>What print sessions took from the shelf, and the baths that they went through.</summary>
    private IReadOnlyList<PrintUse> Prints((string From, string To) period, Dictionary<long, BathPart[]> work) =>
    [
        .. snapshot.Connection.Query<PrintRow>(
            $"""
            SELECT e.id AS Number, p.code AS Session, e.date AS Date,
                (SELECT coalesce(sum(m.value), 0) FROM movement m WHERE m.entry_id = e.id
                    AND m.to_place IN ({InSql.UsedUp}, {InSql.Prints})) AS Value
            FROM standing_entry e CROSS JOIN print_session p ON p.entry_id = e.id
            WHERE e.date BETWEEN @From AND @To ORDER BY e.date, e.ord
            """,
            new { period.From, period.To })
        .Select(row => new PrintUse(
            row.Number, row.Session, Days.Read(row.Date), new(row.Value), work.GetValueOrDefault(row.Number, []))),
    ];

    /// <summary>
    /// What each session took from the shelf: developer, other chemistry, supplies. The plus keeps SQLite from walking
    /// the whole journal in the order of the numbers.
    /// </summary>
    private Dictionary<long, (Money Developer, Money Chemistry, Money Supplies)> Used(
        (string From, string To) period) =>
        snapshot.Connection.Query<UsedRow>(
            $"""
            SELECT e.id AS Number, sum(iif(i.kind = 'chemical' AND i.role IS 'developer', m.value, 0)) AS Developer,
                sum(iif(i.kind = 'chemical' AND i.role IS NOT 'developer', m.value, 0)) AS Chemistry,
                sum(iif(i.kind <> 'chemical', m.value, 0)) AS Supplies
            FROM standing_entry e CROSS JOIN session s ON s.entry_id = e.id
            CROSS JOIN movement m ON m.entry_id = e.id AND m.to_place = {InSql.UsedUp}
            CROSS JOIN lot l ON l.id = m.lot_id CROSS JOIN item i ON i.id = l.item_id
            WHERE e.date BETWEEN @From AND @To GROUP BY +e.id
            """,
            new { period.From, period.To }, buffered: false)
        .ToDictionary(
            row => row.Number,
            row => (new Money(row.Developer), new Money(row.Chemistry), new Money(row.Supplies)));

    /// <summary>
    /// The work of each session and print session on its baths, from what a bath had taken by then to what it had
    /// after.
    /// </summary>
    private Dictionary<long, BathPart[]> Work(
        (string From, string To) period, Dictionary<long, BathRow> baths, ILookup<long, AddedRow> added)
    {
        var shares = baths.ToDictionary(bath => bath.Key, bath => ToShare(bath.Value, added));
        return Grouped.Adjacent<WorkRow, BathPart>(
            snapshot.Connection.Query<WorkRow>(
                """
                SELECT Number, PlaceId, Weighted, After
                FROM (
                    SELECT e.id AS Number, w.place_id AS PlaceId, w.weighted AS Weighted, e.date AS Date,
                        sum(w.weighted) OVER (PARTITION BY w.place_id ORDER BY e.date, e.ord) AS After
                    FROM json_each(@baths) j CROSS JOIN bath_work w ON w.place_id = j.value AND w.is_first = 1
                        CROSS JOIN standing_entry e ON e.id = w.entry_id
                    WHERE e.date <= @To)
                WHERE Date >= @From ORDER BY Number, PlaceId
                """,
                new { baths = Json.Array(baths.Keys), period.From, period.To }, buffered: false),
            row => row.Number,
            row => [new BathPart(
                shares[row.PlaceId], Area.FromHundredths(row.After - row.Weighted), Area.FromHundredths(row.After))]);
    }

    internal sealed record OutsideRow(string Date, string Item, string Kind, long Place, long Quantity,
        long Value, long Unpriced);

    internal sealed record BathRow(
        long PlaceId, string Code, long IsWeighted, long WorkingVolume, long CapacityPerLitre,
        long WasMixedBefore, string? EndedOn, long Value, long WorkedBefore, long WorkedAfter);

    internal sealed record AddedRow(long PlaceId, long Entry, long Value, long IsNew, long Worked);

    internal sealed record SessionRow(long Number, string Session, string Date, string Process, string? Bath,
        string? Developing);

    internal sealed record PrintRow(long Number, string Session, string Date, long Value);

    internal sealed record UsedRow(long Number, long Developer, long Chemistry, long Supplies);

    internal sealed record WorkRow(long Number, long PlaceId, long Weighted, long After);
}
