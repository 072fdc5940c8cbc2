using NodaTime.Text;

namespace Ledger.Storage.Reading;

/// <summary>Reads entries, page by page, and what the posting rules need to know of the past.</summary>
internal sealed class JournalReader(Snapshot snapshot) : IPast
{
    /// <summary>A day after all others: the fate that holds now.</summary>
    private const string AnyDay = "9999-12-31";

    public IReadOnlyList<JournalEntry> Page(LocalDate asOf, long? before, int atMost) =>
    [
        .. snapshot.Connection.Query<EntryRow>(
            """
            SELECT e.id AS Number, e.key AS Key, e.kind AS Kind, e.date AS Date, e.recorded_at AS RecordedAt,
                e.summary AS Summary,
                e.note AS Note, e.undoes AS Undoes,
                iif(e.counts = 0, (SELECT max(c.id) FROM entry c WHERE c.undoes = e.id
                    AND c.counts = 1), NULL) AS UndoneBy, e.amends AS Amends,
                (SELECT max(c.id) FROM entry c WHERE c.amends = e.id AND c.counts = 1) AS AmendedBy,
                EXISTS (SELECT 1 FROM said s WHERE s.key = e.key) AS IsSaid
            FROM entry e WHERE e.id < @before AND e.date <= @asOf ORDER BY e.id DESC LIMIT @atMost
            """,
            new { before = before ?? long.MaxValue, asOf = Dates.Text(asOf), atMost }).Select(ToEntry),
    ];

    /// <summary>The entries of a day in the order in which they count.</summary>
    public IReadOnlyList<JournalEntry> OfDay(LocalDate day) =>
    [
        .. snapshot.Connection.Query<long>("SELECT id FROM standing_entry WHERE date = @day ORDER BY ord",
            new { day = Dates.Text(day) })
            .ToList().Select(number => Find(number)!),
    ];

    public JournalEntry? Find(long number)
    {
        var row = snapshot.Connection.QueryFirstOrDefault<EntryRow>(
            """
            SELECT e.id AS Number, e.key AS Key, e.kind AS Kind, e.date AS Date, e.recorded_at AS RecordedAt,
                e.summary AS Summary,
                e.note AS Note, e.undoes AS Undoes,
                iif(e.counts = 0, (SELECT max(c.id) FROM entry c WHERE c.undoes = e.id
                    AND c.counts = 1), NULL) AS UndoneBy, e.amends AS Amends,
                (SELECT max(c.id) FROM entry c WHERE c.amends = e.id AND c.counts = 1) AS AmendedBy,
                EXISTS (SELECT 1 FROM said s WHERE s.key = e.key) AS IsSaid
            FROM entry e WHERE e.id = @number
            """,
            new { number });
        return row is null ? null : ToEntry(row);
    }

    public JournalEntry? Find(string key) => NumberOf(key) is { } number ? Find(number) : null;

    /// <summary>When the first entry was recorded, in digits; 0 where there is none.</summary>
    public string Identity() => string.Concat(
        (snapshot.Connection.QueryFirstOrDefault<string?>("SELECT min(recorded_at) FROM entry")
            ?? "0").Where(char.IsAsciiDigit));

    public long? NumberOf(string key) =>
        snapshot.Connection.QueryFirstOrDefault<long?>("SELECT id FROM entry WHERE key = @key", new { key });

    public IReadOnlyList<Movement> MovementsOf(long number) =>
    [
        .. snapshot.Connection.Query<MovementRow>(
            """
            SELECT lot_id AS Lot, from_place AS FromPlace, to_place AS ToPlace, quantity AS Quantity, value AS Value
            FROM movement WHERE entry_id = @number ORDER BY id
            """,
            new { number })
        .Select(row => new Movement(new(row.Lot), new(row.FromPlace), new(row.ToPlace), row.Quantity, new(row.Value))),
    ];

    public bool HasSession(string session) => snapshot.Connection.ExecuteScalar<long>(
        "SELECT EXISTS (SELECT 1 FROM session s JOIN standing_entry e ON e.id = s.entry_id WHERE s.code = "
            + "@session)", new { session }) == 1;

    public bool HasBath(string bath) => snapshot.Connection.ExecuteScalar<long>(
        """
        SELECT EXISTS (SELECT 1 FROM place p JOIN bath b ON b.place_id = p.id JOIN standing_entry e ON e.id = b.entry_id
            WHERE p.code = @bath)
        """,
        new { bath }) == 1;

    public long? FirstUseOfBathMixedBy(long number) => snapshot.Connection.QueryFirstOrDefault<long?>(
        """
        SELECT min(e.id)
        FROM (
            SELECT w.entry_id FROM bath b JOIN bath_work w ON w.place_id = b.place_id WHERE b.entry_id = @number
            UNION ALL SELECT t.entry_id FROM bath b JOIN clearing_test t ON t.place_id = b.place_id
                WHERE b.entry_id = @number
            UNION ALL SELECT o.entry_id FROM bath b JOIN bath_observation o ON o.place_id = b.place_id
                WHERE b.entry_id = @number
            UNION ALL SELECT s.entry_id FROM bath b JOIN silver_test s ON s.place_id = b.place_id
                WHERE b.entry_id = @number
            UNION ALL SELECT r.entry_id FROM bath b JOIN residual_test r ON r.place_id = b.place_id
                WHERE b.entry_id = @number
            UNION ALL SELECT c.entry_id FROM bath b JOIN control_strip c ON c.place_id = b.place_id
                WHERE b.entry_id = @number
            UNION ALL SELECT s.entry_id FROM bath b JOIN bath_standing s ON s.place_id = b.place_id
                WHERE b.entry_id = @number
            UNION ALL SELECT t.entry_id FROM bath b JOIN bath_top_up t ON t.place_id = b.place_id
                WHERE b.entry_id = @number
            UNION ALL SELECT f.entry_id FROM jug j JOIN jug_fill f ON f.place_id = j.place_id WHERE j.entry_id = @number
            UNION ALL SELECT h.entry_id FROM jug j JOIN jug_handover h ON h.place_id = j.place_id
                WHERE j.entry_id = @number
            UNION ALL SELECT h.entry_id FROM jug_fill f JOIN jug_handover h ON h.place_id = f.place_id
                WHERE f.entry_id = @number) u
        JOIN standing_entry e ON e.id = u.entry_id WHERE e.id <> @number
        """,
        new { number });

    public long? NextAboutSheetsOf(long number) => snapshot.Connection.QueryFirstOrDefault<long?>(
        """
        SELECT min(e.id) FROM (
            SELECT sheet_id FROM sheet_move WHERE entry_id = @number
            UNION SELECT sheet_id FROM exposure WHERE entry_id = @number
            UNION SELECT sheet_id FROM sheet_fate WHERE entry_id = @number) mine
        JOIN (
            SELECT sheet_id, entry_id FROM sheet_move
            UNION ALL SELECT sheet_id, entry_id FROM exposure
            UNION ALL SELECT sheet_id, entry_id FROM sheet_fate
            UNION ALL SELECT sheet_id, entry_id FROM fate_change
            UNION ALL SELECT sheet_id, entry_id FROM sheet_note
            UNION ALL SELECT sheet_id, entry_id FROM filing
            UNION ALL SELECT sheet_id, entry_id FROM print_negative) other ON other.sheet_id = mine.sheet_id
        JOIN standing_entry e ON e.id = other.entry_id
        WHERE e.id > @number
        """,
        new { number });

    public DevelopedSheet? Developed(string sheet)
    {
        var row = snapshot.Connection.QueryFirstOrDefault<DevelopedRow>(
            $"""
            SELECT f.sheet_id AS Sheet, f.negative AS Negative, e.date AS Date, {FateSql.Fate} AS Fate,
                {FateSql.Cause} AS Cause,
                s.lot_id AS Lot, s.cost AS Cost, s.side_id AS Side
            FROM sheet_fate f JOIN standing_entry e ON e.id = f.entry_id JOIN sheet s ON s.id = f.sheet_id
            WHERE f.negative = @sheet OR f.sheet_id = @id
            """,
            new { sheet, id = SheetId.Parse(sheet)?.Value, day = AnyDay });
        return row is null ? null : new(new(row.Sheet), row.Negative, Days.Read(row.Date), Named.Fate(row.Fate))
        {
            Cause = row.Cause is null ? null : Named.Cause(row.Cause),
            Lot = new(row.Lot),
            Cost = new(row.Cost),
            Side = row.Side is { } side ? new(side) : null,
        };
    }

    public bool HasPrintSession(string session) => snapshot.Connection.ExecuteScalar<long>(
        "SELECT EXISTS (SELECT 1 FROM print_session s JOIN standing_entry e ON e.id = s.entry_id WHERE s.code = "
            + "@session)",
        new { session }) == 1;

    public int? FreshClearing(string film, Core.Stock.PlaceId bath) =>
        new BathLogReader(snapshot).FreshClearing(film, bath.Value);

    public bool HasOrder(string order) => snapshot.Connection.ExecuteScalar<long>(
        "SELECT EXISTS (SELECT 1 FROM purchase_order o JOIN standing_entry e ON e.id = o.entry_id WHERE o.code = "
            + "@order)",
        new { order }) == 1;

    public long? FirstUseOfOrderPlacedBy(long number) => snapshot.Connection.QueryFirstOrDefault<long?>(
        """
        SELECT min(e.id) FROM standing_entry e
        WHERE e.id IN (
            SELECT entry_id FROM order_delivery WHERE order_id = @number
            UNION ALL SELECT entry_id FROM order_line_change WHERE order_id = @number)
        """,
        new { number });

    private static JournalEntry ToEntry(EntryRow row) => new(
        row.Number, row.Key, row.Kind, Days.Read(row.Date), InstantPattern.ExtendedIso.Parse(row.RecordedAt).Value,
        row.Summary, row.Note, row.Undoes, row.UndoneBy) { Amends = row.Amends, AmendedBy = row.AmendedBy,
            IsSaid = row.IsSaid == 1 };

    public Core.Costing.LotPrice? LastPrice(string item, LocalDate by) => new PriceReader(snapshot).LastPrice(item, by);

    public Area? WorkedBy(PlaceId bath, LocalDate date) => Area.FromHundredths(snapshot.Connection.ExecuteScalar<long>(
        """
        SELECT coalesce(sum(w.weighted), 0) FROM bath_work w CROSS JOIN standing_entry e ON e.id = w.entry_id
        WHERE w.place_id = @bath AND w.is_first = 1 AND e.date <= @date
        """,
        new { bath = bath.Value, date = Dates.Text(date) }));

    internal sealed record EntryRow(
        long Number, string Key, string Kind, string Date, string RecordedAt, string Summary,
        string Note, long? Undoes, long? UndoneBy, long? Amends, long? AmendedBy, long IsSaid);

    internal sealed record DevelopedRow(
        long Sheet, string? Negative, string Date, string Fate, string? Cause, long Lot, long Cost, long? Side);

    internal sealed record MovementRow(long Lot, long FromPlace, long ToPlace, long Quantity, long Value);
}
