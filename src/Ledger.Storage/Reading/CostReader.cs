using Ledger.Storage.Files;

namespace Ledger.Storage.Reading;

/// <summary>
/// Reads what the journal knows of a period's costs. An undo stands on the day of what it takes back: both cancel.
/// </summary>
internal sealed class CostReader(Snapshot snapshot)
{
    private const long Supplier = 1, LostOrGained = 5, Discarded = 6;
    private const int EntriesAtATime = 200;

    private HashSet<long> _unpricedBaths = [];

    /// <param name="from">The first day.</param>
    /// <param name="to">The last day.</param>
    /// <param name="fatesOn">The day whose fates count; null for the last one.</param>
    /// <param name="recosted">What a session used by another cost formula; null for what was posted.</param>
    public CostFacts Read(LocalDate from, LocalDate to, LocalDate? fatesOn = null,
        Func<SessionUse, SessionUse>? recosted = null)
    {
        var period = (From: Dates.Text(from), To: Dates.Text(to));
        var (unpriced, baths) = (new UnpricedReader(snapshot), Baths(period.From, period.To));
        _unpricedBaths = unpriced.Baths();
        var added = Added(period, baths.Keys);
        List<BathUse> uses = [.. baths.Values.Select(row => ToUse(row, added))];
        var work = new BathWorkReader(snapshot, baths.Values.Zip(uses, (row, use) =>
            (row.PlaceId, use, row.Role == ItemRole.Developer.Name() ? $"{row.Item} in {row.Code}" : null)));
        var (sessions, used) = (new SessionCosts(), new SessionUseReader(snapshot, unpriced.Sessions(),
            Dates.Text(fatesOn ?? to), new(snapshot)));
        var prints = new List<PrintUse>();
        foreach (var part in Parts(period))
        {
            var worked = work.Next(part);
            foreach (var session in used.Read(part, worked))
                sessions.Add(recosted is null ? session : recosted(session));
            prints.AddRange(Prints(part, worked));
        }

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
            uses,
            sessions)
        {
            Unpriced = unpriced.Stock(period),
            Prints = prints,
            Losses = losses,
        };
    }

    /// <summary>
    /// The period by whole days, some two hundred entries at a time: what sessions used is held of these alone. Held
    /// longer it would outlive the collections of what is short-lived, and lie there until the end.
    /// </summary>
    private IEnumerable<(string From, string To)> Parts((string From, string To) period)
    {
        var (from, entries) = ((string?)null, 0L);
        var days = snapshot.Connection.Query<DayRow>(
            """
            SELECT date AS Date, count(*) AS Entries FROM entry WHERE date BETWEEN @From AND @To
            GROUP BY date ORDER BY date
            """,
            new { period.From, period.To }).ToList();
        foreach (var day in days)
        {
            (from, entries) = (from ?? day.Date, entries + day.Entries);
            if (entries < EntriesAtATime && day != days[^1])
                continue;
            yield return (from, day.Date);
            (from, entries) = (null, 0);
        }
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
        SELECT b.place_id AS PlaceId, p.code AS Code, b.role AS Role, i.code AS Item, b.working_volume AS WorkingVolume,
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
            CROSS JOIN item i ON i.id = b.item_id
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
        IsWeighted = row.Role == ItemRole.Fixer.Name(),
        TopUps =
        [
            .. added[row.PlaceId].Select(top => new AddedValue(new(top.Value), Area.FromHundredths(top.Worked))
            {
                Entry = top.Entry, IsNew = top.IsNew == 1,
            }),
        ],
    };

    /// <summary>What print sessions took from the shelf, and the baths that they went through.</summary>
    private IReadOnlyList<PrintUse> Prints((string From, string To) period, Dictionary<long, Worked> work) =>
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
            row.Number, row.Session, Days.Read(row.Date), new(row.Value),
            work.GetValueOrDefault(row.Number, Worked.Nowhere).Parts)),
    ];

    internal sealed record DayRow(string Date, long Entries);

    internal sealed record OutsideRow(string Date, string Item, string Kind, long Place, long Quantity,
        long Value, long Unpriced);

    internal sealed record BathRow(
        long PlaceId, string Code, string Role, string Item, long WorkingVolume, long CapacityPerLitre,
        long WasMixedBefore, string? EndedOn, long Value, long WorkedBefore, long WorkedAfter);

    internal sealed record AddedRow(long PlaceId, long Entry, long Value, long IsNew, long Worked);

    internal sealed record PrintRow(long Number, string Session, string Date, long Value);
}
