using System.Globalization;
using Dapper;
using Ledger.Core.Costing;
using Ledger.Core.Measures;
using Ledger.Storage.Reading;
using Microsoft.Data.Sqlite;
using NodaTime;

namespace Ledger.Storage.Upkeep;

/// <summary>Proves the file: the database itself, references, balances, days, and that every millionth of cost is accounted for.</summary>
internal sealed class Checker(SqliteConnection connection)
{
    private const int MostProblems = 50;
    private static readonly LocalDate FirstOfAll = new(1900, 1, 1);

    public CheckReport Run(LocalDate today, IProgress<double>? progress, CancellationToken cancel)
    {
        Func<IEnumerable<string>>[] checks =
        [
            Database, References, Balances, BathTotals, NeverBelowNothing, NothingBeforeItCame, LotCosts, SessionSheets,
            FilmPlaces, OneSheetASide, KnownSheets, StockMonths, () => Costs(today),
        ];
        var problems = new List<string>();
        for (var i = 0; i < checks.Length; i++)
        {
            cancel.ThrowIfCancellationRequested();
            problems.AddRange(checks[i]().Take(MostProblems));
            progress?.Report((i + 1.0) / checks.Length);
        }

        return new(Count("SELECT count(*) FROM entry"), Count("SELECT count(*) FROM movement"), problems);
    }

    private long Count(string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return (long)command.ExecuteScalar()!;
    }

    private IEnumerable<string> Database() =>
        connection.Query<string>("SELECT integrity_check FROM pragma_integrity_check WHERE integrity_check <> 'ok'")
            .Select(found => $"the database is damaged: {found}");

    private IEnumerable<string> References() =>
        connection.Query<ReferenceRow>("""SELECT "table" AS Child, parent AS Parent, count(*) AS Rows FROM pragma_foreign_key_check GROUP BY 1, 2""")
            .Select(row => $"{row.Rows} rows of {row.Child} refer to a {row.Parent} that is not there");

    private IEnumerable<string> Balances() => connection.Query<BalanceProblem>(
        """
        SELECT p.code AS Place, t.lot_id AS Lot, sum(t.quantity) AS Quantity, sum(t.value) AS Value
        FROM (
            SELECT to_place AS place_id, lot_id, quantity, value FROM movement
            UNION ALL SELECT from_place, lot_id, -quantity, -value FROM movement
            UNION ALL SELECT place_id, lot_id, -quantity, -value FROM balance) t
        JOIN place p ON p.id = t.place_id
        GROUP BY t.place_id, t.lot_id HAVING sum(t.quantity) <> 0 OR sum(t.value) <> 0
        """)
        .Select(row => $"the balance of {row.Place}, lot {row.Lot}, is off its movements by {row.Quantity} units and {new Money(row.Value)}");

    private IEnumerable<string> BathTotals() => connection.Query<BathProblem>(
        """
        SELECT p.code AS Bath
        FROM bath b JOIN place p ON p.id = b.place_id LEFT JOIN bath_total t ON t.place_id = b.place_id
        WHERE coalesce(t.weighted, 0) <> (SELECT coalesce(sum(w.weighted), 0) FROM bath_work w JOIN standing_entry e ON e.id = w.entry_id
            WHERE w.place_id = b.place_id AND w.is_first = 1)
        """)
        .Select(row => $"the work of bath {row.Bath} is not the sum of its sessions");

    /// <summary>Balances are kept for now; this looks at every day, in case an entry was dated before what it used had come.</summary>
    private IEnumerable<string> NeverBelowNothing() => connection.Query<DayProblem>(
        """
        SELECT p.code AS Place, min(Date) AS Date
        FROM (
            SELECT place_id, Date, sum(change) OVER (PARTITION BY place_id, lot_id ORDER BY Date) AS held
            FROM (
                SELECT m.to_place AS place_id, m.lot_id, e.date AS Date, m.quantity AS change
                FROM movement m JOIN entry e ON e.id = m.entry_id WHERE m.to_place >= 100
                UNION ALL
                SELECT m.from_place, m.lot_id, e.date, -m.quantity
                FROM movement m JOIN entry e ON e.id = m.entry_id WHERE m.from_place >= 100)) t
        JOIN place p ON p.id = t.place_id WHERE held < 0 GROUP BY p.id
        """)
        .Select(row => $"{row.Place} held less than nothing on {row.Date}; an entry is dated too early");

    private IEnumerable<string> NothingBeforeItCame() => connection.Query<DayProblem>(
        """
        SELECT p.code AS Place, min(e.date) AS Date
        FROM movement m JOIN entry e ON e.id = m.entry_id JOIN lot l ON l.id = m.lot_id JOIN entry came ON came.id = l.entry_id
        JOIN place p ON p.id = m.from_place WHERE e.date < came.date GROUP BY p.id
        """)
        .Select(row => $"something left {row.Place} on {row.Date}, before it was delivered");

    private IEnumerable<string> LotCosts() => connection.Query<LotProblem>(
        """
        SELECT l.id AS Lot, i.code AS Item, l.quantity - sum(m.quantity) AS Quantity, l.cost - sum(m.value) AS Value
        FROM lot l JOIN item i ON i.id = l.item_id LEFT JOIN lot_origin o ON o.lot_id = l.id
        LEFT JOIN movement m ON m.lot_id = l.id AND m.from_place = iif(o.mixed_from IS NULL, 1, 7)
        GROUP BY l.id HAVING l.quantity IS NOT sum(m.quantity) OR l.cost IS NOT sum(m.value)
        """)
        .Select(row => $"lot {row.Lot} of {row.Item} does not bring in what it cost");

    private IEnumerable<string> SessionSheets() => connection.Query<SessionProblem>(
        """
        SELECT s.code AS Session
        FROM session s
        WHERE (SELECT coalesce(sum(sheets), 0) FROM session_sheets t WHERE t.entry_id = s.entry_id)
            <> (SELECT coalesce(sum(quantity), 0) FROM movement m WHERE m.entry_id = s.entry_id AND m.to_place IN (2, 3))
        OR (SELECT coalesce(sum(cost), 0) FROM session_sheets t WHERE t.entry_id = s.entry_id)
            <> (SELECT coalesce(sum(value), 0) FROM movement m WHERE m.entry_id = s.entry_id AND m.to_place IN (2, 3))
        """)
        .Select(row => $"session {row.Session} does not list the sheets that it moved");

    /// <summary>The places of each film, the lost and thrown away sheets among them, add up to what was received.</summary>
    private IEnumerable<string> FilmPlaces() => connection.Query<FilmProblem>(
        """
        SELECT i.code AS Item, sum(iif(b.place_id = 1, -b.quantity, 0)) AS Received, sum(iif(b.place_id = 1, 0, b.quantity)) AS Found
        FROM item i JOIN lot l ON l.item_id = i.id JOIN balance b ON b.lot_id = l.id
        WHERE i.kind = 'film' GROUP BY i.id HAVING sum(b.quantity) <> 0
        """)
        .Select(row => $"{row.Received} of {row.Item} were received, and its places add up to {row.Found}");

    private IEnumerable<string> OneSheetASide() => connection.Query<string>(
        """
        SELECT p.code FROM holder_side s JOIN place p ON p.id = s.place_id JOIN balance b ON b.place_id = s.place_id
        GROUP BY s.place_id HAVING sum(b.quantity) > 1
        """)
        .Select(side => $"{side} holds more than one sheet");

    /// <summary>What holders and boxes of exposed film hold is as many sheets as are known to be there.</summary>
    private IEnumerable<string> KnownSheets() => connection.Query<SheetProblem>(
        """
        SELECT p.code AS Place, coalesce((SELECT sum(b.quantity) FROM balance b WHERE b.place_id = p.id), 0) AS Held, coalesce((
            SELECT sum(way.change) FROM (
                SELECT m.entry_id, 1 AS change FROM sheet_move m WHERE m.to_place = p.id AND m.to_place >= 100
                UNION ALL SELECT m.entry_id, -1 FROM sheet_move m WHERE m.from_place = p.id AND m.from_place >= 100) way
            JOIN standing_entry e ON e.id = way.entry_id), 0) AS Known
        FROM place p WHERE p.kind IN ('holder side', 'exposed box') AND Held <> Known
        """)
        .Select(row => $"{row.Place} holds {row.Held} sheets, and {row.Known} are known to be there");

    private IEnumerable<string> StockMonths() => connection.Query<MonthProblem>(
        """
        SELECT Month, sum(Change) AS Change
        FROM (
            SELECT substr(e.date, 1, 7) AS Month,
                iif(t.id >= 100 AND t.kind <> 'bath', m.value, 0) - iif(f.id >= 100 AND f.kind <> 'bath', m.value, 0) AS Change
            FROM movement m JOIN entry e ON e.id = m.entry_id JOIN place f ON f.id = m.from_place JOIN place t ON t.id = m.to_place
            UNION ALL SELECT month, -change FROM stock_month)
        GROUP BY Month HAVING sum(Change) <> 0 ORDER BY Month
        """)
        .Select(row => $"the stock's value in {row.Month} is off its movements by {new Money(row.Change)}");

    /// <summary>
    /// Every year for itself and all of them together, by every cost formula: opening + bought = used + waste + on hand, and no year opens
    /// with anything else than the one before it left.
    /// </summary>
    private IEnumerable<string> Costs(LocalDate today)
    {
        var first = connection.QueryFirstOrDefault<string?>("SELECT min(date) FROM entry") is { } text ? Days.Read(text) : today;
        var reader = new CostReader(connection);
        var left = Money.Zero;
        for (var year = first.Year; year <= today.Year; year++)
        {
            var costs = new CostReading(reader.Read(new(year, 1, 1), year == today.Year ? today : new(year, 12, 31)));
            if (!costs.Reconciles)
                yield return Unequal(year.ToString(CultureInfo.InvariantCulture), costs);
            if (costs.Opening != left)
                yield return $"{year} opens with {costs.Opening}, and the year before left {left}";
            left = costs.Closing;
        }

        var all = reader.Read(FirstOfAll, today);
        var moves = new PriceReader(connection).StockMoves(today);
        foreach (var formula in Enum.GetValues<CostFormula>())
        {
            var costs = new CostReading(formula == CostFormula.SpecificLot ? all : Recosting.Of(all, new(moves, formula, FirstOfAll)));
            if (!costs.Reconciles)
                yield return Unequal($"all years by {formula.Name()}", costs);
        }
    }

    private static string Unequal(string period, CostReading costs) =>
        $"the costs of {period} do not reconcile: spent {costs.Spent}, used {costs.Used}, on hand {costs.OnHand}, "
        + $"still in baths {costs.StillInBaths}";

    internal sealed record ReferenceRow(string Child, string Parent, long Rows);

    internal sealed record BalanceProblem(string Place, long Lot, long Quantity, long Value);

    internal sealed record BathProblem(string Bath);

    internal sealed record MonthProblem(string Month, long Change);

    internal sealed record DayProblem(string Place, string Date);

    internal sealed record LotProblem(long Lot, string Item, long? Quantity, long? Value);

    internal sealed record SessionProblem(string Session);

    internal sealed record FilmProblem(string Item, long Received, long Found);

    internal sealed record SheetProblem(string Place, long Held, long Known);
}
