using Dapper;
using Ledger.Core.Costing;
using Ledger.Core.Measures;
using Microsoft.Data.Sqlite;
using NodaTime;

namespace Ledger.Storage.Reading;

/// <summary>Reads what the journal knows of the costs of a period. A correction stands on the day of what it reverses, so both cancel.</summary>
internal sealed class CostReader(SqliteConnection connection)
{
    private const long Supplier = 1, LostOrGained = 5, ThrownAway = 6;

    public CostFacts Read(LocalDate from, LocalDate to)
    {
        var period = (From: Dates.Text(from), To: Dates.Text(to));
        var baths = Baths(period.From, period.To);
        return new(
            from,
            to,
            OnHandAfter(Dates.Text(from.PlusDays(-1))),
            Money.Zero - Net(Supplier, period),
            OnHandAfter(period.To),
            Net(ThrownAway, period),
            FilmLost(period),
            Net(LostOrGained, period),
            [.. baths.Values.Select(ToUse)],
            Sessions(period, baths));
    }

    /// <summary>What all containers were worth at the end of a day: what they are worth now, less all that happened later.</summary>
    private Money OnHandAfter(string day) => new(connection.ExecuteScalar<long>(
        """
        SELECT (SELECT coalesce(sum(b.value), 0) FROM balance b JOIN container c ON c.place_id = b.place_id WHERE b.place_id >= 100)
            + (SELECT coalesce(sum(iif(f.place_id IS NULL, 0, m.value) - iif(t.place_id IS NULL, 0, m.value)), 0)
                FROM entry e CROSS JOIN movement m ON m.entry_id = e.id
                LEFT JOIN container f ON f.place_id = m.from_place LEFT JOIN container t ON t.place_id = m.to_place
                WHERE e.date > @day)
        """,
        new { day }));

    /// <summary>What came to a single place in the period, less what left it.</summary>
    private Money Net(long place, (string From, string To) period) => new(connection.ExecuteScalar<long>(
        """
        SELECT coalesce(sum(iif(m.to_place = @place, m.value, -m.value)), 0)
        FROM entry e CROSS JOIN movement m ON m.entry_id = e.id
        WHERE e.date BETWEEN @From AND @To AND (m.to_place = @place OR m.from_place = @place)
        """,
        new { place, period.From, period.To }));

    private IReadOnlyList<FilmLoss> FilmLost((string From, string To) period) =>
    [
        .. connection.Query<LossRow>(
            """
            SELECT i.code AS Item, sum(iif(m.to_place IN (5, 6), m.quantity, -m.quantity)) AS Sheets,
                sum(iif(m.to_place IN (5, 6), m.value, -m.value)) AS Cost
            FROM entry e CROSS JOIN movement m ON m.entry_id = e.id JOIN lot l ON l.id = m.lot_id JOIN item i ON i.id = l.item_id
            WHERE e.date BETWEEN @From AND @To AND i.kind = 'film' AND (m.to_place IN (5, 6) OR m.from_place IN (5, 6))
            GROUP BY i.id HAVING Sheets <> 0 ORDER BY i.code
            """,
            new { period.From, period.To })
        .Select(row => new FilmLoss(row.Item, row.Sheets, new(row.Cost))),
    ];

    private Dictionary<long, BathRow> Baths(string from, string to) => connection.Query<BathRow>(
        """
        SELECT b.place_id AS PlaceId, p.code AS Code, b.working_volume AS WorkingVolume, coalesce(b.capacity_per_litre, 0) AS CapacityPerLitre,
            mixed.date < @from AS WasMixedBefore,
            EXISTS (SELECT 1 FROM bath_end d JOIN standing_entry e ON e.id = d.entry_id WHERE d.place_id = b.place_id AND e.date <= @to) AS HasEnded,
            (SELECT coalesce(sum(m.value), 0) FROM movement m JOIN standing_entry e ON e.id = m.entry_id
                WHERE m.to_place = b.place_id AND m.to_place >= 100) AS Value,
            (SELECT coalesce(sum(w.weighted), 0) FROM bath_work w JOIN standing_entry e ON e.id = w.entry_id
                WHERE w.place_id = b.place_id AND w.is_first = 1 AND e.date < @from) AS WorkedBefore,
            (SELECT coalesce(sum(w.weighted), 0) FROM bath_work w JOIN standing_entry e ON e.id = w.entry_id
                WHERE w.place_id = b.place_id AND w.is_first = 1 AND e.date <= @to) AS WorkedAfter
        FROM bath b JOIN place p ON p.id = b.place_id JOIN standing_entry mixed ON mixed.id = b.entry_id
        WHERE mixed.date <= @to AND NOT EXISTS (SELECT 1 FROM bath_end d JOIN standing_entry e ON e.id = d.entry_id
            WHERE d.place_id = b.place_id AND e.date < @from)
        ORDER BY b.place_id
        """,
        new { from, to }).ToDictionary(row => row.PlaceId);

    private static BathUse ToUse(BathRow row) => new(
        ToShare(row), Area.FromHundredths(row.WorkedBefore), Area.FromHundredths(row.WorkedAfter), row.WasMixedBefore == 1, row.HasEnded == 1);

    private static BathShare ToShare(BathRow row) => new(
        row.Code, new(row.Value), Area.FromHundredths(Share.Of(row.CapacityPerLitre, row.WorkingVolume, 1_000_000)));

    private IReadOnlyList<SessionUse> Sessions((string From, string To) period, Dictionary<long, BathRow> baths)
    {
        var used = Used(period);
        var lines = Lines(period);
        var work = Work(period, baths.Keys);
        return
        [
            .. connection.Query<SessionRow>(
                """
                SELECT s.entry_id AS Number, s.code AS Session, e.date AS Date, s.bath_id AS Bath
                FROM standing_entry e CROSS JOIN session s ON s.entry_id = e.id WHERE e.date BETWEEN @From AND @To ORDER BY e.date, e.id
                """,
                new { period.From, period.To })
            .Select(row => ToSession(row, used, lines, work, baths)),
        ];
    }

    private static SessionUse ToSession(
        SessionRow row, ILookup<long, UsedRow> used, ILookup<long, FilmUse> lines, Dictionary<long, WorkRow> work, Dictionary<long, BathRow> baths)
    {
        Money Sum(string use) => new(used[row.Number].Where(part => part.Purpose == use).Sum(part => part.Value));
        var done = work.GetValueOrDefault(row.Number);
        return new(
            row.Session,
            Days.Read(row.Date),
            Sum("developer"),
            Sum("chemistry"),
            Sum("supplies"),
            done is null ? null : ToShare(baths[done.PlaceId]),
            Area.FromHundredths(done is null ? 0 : done.After - done.Weighted),
            Area.FromHundredths(done?.After ?? 0),
            [.. lines[row.Number]]);
    }

    private ILookup<long, UsedRow> Used((string From, string To) period) => connection.Query<UsedRow>(
        """
        SELECT e.id AS Number, sum(m.value) AS Value,
            CASE WHEN i.kind <> 'chemical' THEN 'supplies' WHEN i.role = 'developer' THEN 'developer' ELSE 'chemistry' END AS Purpose
        FROM standing_entry e CROSS JOIN session s ON s.entry_id = e.id JOIN movement m ON m.entry_id = e.id AND m.to_place = 4
        JOIN lot l ON l.id = m.lot_id JOIN item i ON i.id = l.item_id
        WHERE e.date BETWEEN @From AND @To GROUP BY e.id, Purpose
        """,
        new { period.From, period.To }).ToLookup(row => row.Number);

    private ILookup<long, FilmUse> Lines((string From, string To) period) => connection.Query<LineRow>(
        """
        SELECT s.entry_id AS Number, i.code AS Item, s.sheets AS Sheets, s.area AS Area, s.cost AS Cost, s.fate AS Fate
        FROM standing_entry e JOIN session_sheets s ON s.entry_id = e.id JOIN lot l ON l.id = s.lot_id JOIN item i ON i.id = l.item_id
        WHERE e.date BETWEEN @From AND @To ORDER BY s.entry_id, s.number
        """,
        new { period.From, period.To })
        .ToLookup(row => row.Number, row => new FilmUse(row.Item, row.Sheets, Area.FromHundredths(row.Area), new(row.Cost), Named.Fate(row.Fate)));

    /// <summary>The work of each session on its bath, with all that the bath had taken by then.</summary>
    private Dictionary<long, WorkRow> Work((string From, string To) period, IEnumerable<long> baths) => connection.Query<WorkRow>(
        """
        SELECT Number, PlaceId, Weighted, After
        FROM (
            SELECT e.id AS Number, w.place_id AS PlaceId, w.weighted AS Weighted, e.date AS Date,
                sum(w.weighted) OVER (PARTITION BY w.place_id ORDER BY e.date, e.id) AS After
            FROM json_each(@baths) j JOIN bath_work w ON w.place_id = j.value AND w.is_first = 1 JOIN standing_entry e ON e.id = w.entry_id
            WHERE e.date <= @To)
        WHERE Date >= @From
        """,
        new { baths = Json.Array(baths), period.From, period.To }).ToDictionary(row => row.Number);

    internal sealed record LossRow(string Item, long Sheets, long Cost);

    internal sealed record BathRow(
        long PlaceId, string Code, long WorkingVolume, long CapacityPerLitre, long WasMixedBefore, long HasEnded, long Value,
        long WorkedBefore, long WorkedAfter);

    internal sealed record SessionRow(long Number, string Session, string Date, long? Bath);

    internal sealed record UsedRow(long Number, long Value, string Purpose);

    internal sealed record LineRow(long Number, string Item, long Sheets, long Area, long Cost, string Fate);

    internal sealed record WorkRow(long Number, long PlaceId, long Weighted, long After);
}
