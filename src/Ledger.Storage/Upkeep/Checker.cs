using Ledger.Storage.Deriving;
using Ledger.Storage.Files;
using Ledger.Storage.Reading;

namespace Ledger.Storage.Upkeep;

/// <summary>
/// Proves the file: the database itself, its tables and guards, references, what is derived, days, and that every
/// millionth of cost is accounted for. Where what is derived is wrong, what reads it is checked only after it was
/// derived again.
/// </summary>
internal sealed class Checker(Snapshot snapshot)
{
    private const int MostProblems = 50;
    private static readonly Problem Stumbled = new(
        "something in the file cannot be read, so that not all of it could be checked");
    private static readonly LocalDate FirstOfAll = new(1900, 1, 1);

    public CheckReport Run(LocalDate today, IProgress<double>? progress, CancellationToken cancel)
    {
        Func<IEnumerable<Problem>>[] derived =
        [
            Database, () => SchemaCheck.Problems(snapshot.Connection), () => ReadMeCheck.Problems(snapshot.Connection),
            Balances, BathTotals, StockMonths, UseDays,
        ];
        Func<IEnumerable<Problem>>[] said =
        [
            () => DerivationCheck.Digests(snapshot.Connection), () => DerivationCheck.Heads(snapshot.Connection),
            () => DerivationCheck.Acts(snapshot), () => DerivationCheck.Rows(snapshot, today),
        ];
        Func<IEnumerable<string>>[] recorded =
        [
            References, NeverBelowNothing, NothingBeforeItCame, LotCosts, LotPrices, Containers,
            SessionSheets, SheetMovements, ProcessVersions,
        ];
        Func<IEnumerable<string>>[] following = [() => Holdings(today), FilmPlaces, OneSheetASide,
            KnownSheets, () => Costs(today)];
        var problems = new List<Problem>();
        var (done, all) = (0, derived.Length + recorded.Length + following.Length + said.Length);
        Check(derived);
        Check(recorded.Select(Recorded));
        if (!problems.Exists(problem => problem.IsMendable))
            Check(following.Select(Recorded));
        foreach (var check in said)
            if (problems.TrueForAll(problem => problem.IsOfWords))
                Check([check]);
        progress?.Report(1);
        var words = problems.Where(problem => problem.IsOfWords).Select(problem => problem.Sentence).ToList();
        problems.RemoveAll(problem => problem.IsOfWords);
        return new(
            Count("SELECT count(*) FROM entry"), Count("SELECT count(*) FROM movement"),
            [.. problems.Select(problem => problem.Sentence)])
        {
            Mendable = [.. problems.Where(problem => problem.IsMendable).Select(problem => problem.Sentence)],
            Words = words, Remarks = problems.Count == 0 ? [.. words, .. PossiblyUnpriced()] : [],
        };

        static Func<IEnumerable<Problem>> Recorded(Func<IEnumerable<string>> check) =>
            () => check().Select(sentence => new Problem(sentence));

        // One that stumbles over a damaged page or value does not keep the others from saying what they find.
        void AddAll(Func<IEnumerable<Problem>> check)
        {
            try
            {
                problems.AddRange(check().Take(MostProblems));
            }
            catch (LedgerFileException unreadable)
            {
                problems.Add(new(unreadable.Message));
            }
            catch (Exception trouble) when (Trouble.IsOfAValue(trouble)
                || trouble is SqliteException sqlite && Trouble.IsDamage(sqlite))
            {
                if (!problems.Contains(Stumbled))
                    problems.Add(Stumbled);
            }
        }

        void Check(IEnumerable<Func<IEnumerable<Problem>>> checks)
        {
            foreach (var check in checks)
            {
                cancel.ThrowIfCancellationRequested();
                AddAll(check);
                progress?.Report(++done / (double)all);
            }
        }
    }

    /// <summary>
    /// Earlier versions kept a price that nobody had said as 0.00; that it was a gift is as possible.
    /// </summary>
    private IEnumerable<string> PossiblyUnpriced() => snapshot.Connection.Query<string>(
        """
        SELECT format('entry %d of %s: %s came for 0.00; if that was no gift, what it cost is unknown: '
            || 'undo the entry and record the delivery again, '
            || 'with its price or without one', e.id, e.date, i.code)
        FROM lot l JOIN standing_entry e ON e.id = l.entry_id JOIN item i ON i.id = l.item_id
            LEFT JOIN lot_origin o ON o.lot_id = l.id
        WHERE l.price = 0 AND l.is_priced = 1 AND o.mixed_from IS NULL AND NOT EXISTS (SELECT 1 FROM said s
            WHERE s.key = e.key)
        ORDER BY e.date, e.ord, l.id
        """);

    private long Count(string sql) => snapshot.Connection.Number(sql);

    private IEnumerable<Problem> Database() =>
        snapshot.Connection.Query<string>(
            "SELECT integrity_check FROM pragma_integrity_check WHERE integrity_check <> 'ok'")
            .Select(found => new Problem($"the database is damaged: {found}"));

    private IEnumerable<string> References() =>
        snapshot.Connection.Query<ReferenceRow>(
            """
            SELECT "table" AS Child, parent AS Parent, count(*) AS Rows FROM pragma_foreign_key_check GROUP BY 1, 2
            """)
            .Select(row => $"{row.Rows} rows of {row.Child} refer to a {row.Parent} that is not there");

    private IEnumerable<Problem> Balances() => snapshot.Connection.Query<BalanceProblem>(
        $"""
        SELECT p.id AS Id, p.kind AS Kind, p.code AS Place, i.code AS Item, i.unit AS Unit, sum(t.q) AS Held,
            sum(t.mq) AS Given,
            sum(t.v) AS HeldValue, sum(t.mv) AS GivenValue
        FROM (
            SELECT place_id, lot_id, quantity AS q, value AS v, 0 AS mq, 0 AS mv FROM balance
            UNION ALL SELECT place_id, lot_id, 0, 0, quantity, value FROM ({Totals.Balances})) t
        JOIN place p ON p.id = t.place_id JOIN lot l ON l.id = t.lot_id JOIN item i ON i.id = l.item_id
        GROUP BY t.place_id, t.lot_id HAVING sum(t.q) <> sum(t.mq) OR sum(t.v) <> sum(t.mv)
        """)
        .Select(row => new Problem(row.Sentence, IsMendable: true));

    private IEnumerable<Problem> BathTotals() => snapshot.Connection.Query<BathProblem>(
        $"""
        SELECT p.code AS Bath, coalesce(t.area, 0) AS Area, coalesce(t.weighted, 0) AS Weighted,
            coalesce(d.area, 0) AS GivenArea,
            coalesce(d.weighted, 0) AS GivenWeighted
        FROM bath b JOIN place p ON p.id = b.place_id LEFT JOIN bath_total t ON t.place_id = b.place_id
        LEFT JOIN ({Totals.BathTotals}) d ON d.place_id = b.place_id
        WHERE coalesce(t.area, 0) <> coalesce(d.area, 0) OR coalesce(t.weighted, 0) <> coalesce(d.weighted, 0)
        """)
        .Select(row => new Problem(row.Sentence, IsMendable: true));

    private IEnumerable<Problem> StockMonths() => snapshot.Connection.Query<MonthProblem>(
        $"""
        SELECT t.month AS Month, sum(t.kept) AS Held, sum(t.moved) AS Given
        FROM (
            SELECT month, change AS kept, 0 AS moved FROM stock_month
            UNION ALL SELECT month, 0, change FROM ({Totals.StockMonths})) t
        GROUP BY t.month HAVING sum(t.kept) <> sum(t.moved) ORDER BY t.month
        """)
        .Select(row => new Problem(
            $"the stock's value is kept as changed by {new Money(row.Held)} in {row.Month}, its movements give "
                + $"{new Money(row.Given)}",
            IsMendable: true));

    private IEnumerable<Problem> UseDays() => snapshot.Connection.Query<UseProblem>(
        $"""
        SELECT i.code AS Item, i.unit AS Unit, t.date AS Date, sum(t.kept) AS Held, sum(t.moved) AS Given
        FROM (
            SELECT item_id, date, quantity AS kept, 0 AS moved FROM use_day
            UNION ALL SELECT item_id, date, 0, quantity FROM ({Totals.UseDays})) t
        JOIN item i ON i.id = t.item_id
        GROUP BY t.item_id, t.date HAVING sum(t.kept) <> sum(t.moved) ORDER BY t.date, i.code
        """)
        .Select(row => new Problem(row.Sentence, IsMendable: true));

    /// <summary>
    /// Balances are kept for now; this looks at every day, in case an entry was dated before what it used had come.
    /// </summary>
    private IEnumerable<string> NeverBelowNothing() => snapshot.Connection.Query<DayProblem>(
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

    private IEnumerable<string> NothingBeforeItCame() => snapshot.Connection.Query<DayProblem>(
        """
        SELECT p.code AS Place, min(e.date) AS Date
        FROM movement m JOIN entry e ON e.id = m.entry_id JOIN lot l ON l.id = m.lot_id
            JOIN entry came ON came.id = l.entry_id
        JOIN place p ON p.id = m.from_place WHERE e.date < came.date GROUP BY p.id
        """)
        .Select(row => $"something left {row.Place} on {row.Date}, before it was delivered");

    private IEnumerable<string> LotCosts() => snapshot.Connection.Query<LotProblem>(
        """
        SELECT l.entry_id AS Entry, l.id AS Lot, i.code AS Item, l.quantity - sum(m.quantity) AS Quantity,
            l.cost - sum(m.value) AS Value
        FROM lot l JOIN item i ON i.id = l.item_id LEFT JOIN lot_origin o ON o.lot_id = l.id
        LEFT JOIN movement m ON m.lot_id = l.id AND m.from_place = iif(o.mixed_from IS NULL, 1, 7)
        GROUP BY l.id HAVING l.quantity IS NOT sum(m.quantity) OR l.cost IS NOT sum(m.value)
        """)
        .Select(row => $"lot {row.Lot} of {row.Item} does not bring in what it cost");

    /// <summary>
    /// What the lots of a delivery cost are their prices, less discount, with shipping and duty, in the ledger's
    /// currency.
    /// </summary>
    private IEnumerable<string> LotPrices() => snapshot.Connection.Query<PriceRow>(
        """
        SELECT l.entry_id AS Entry, l.id AS Lot, i.code AS Item, l.packs AS Packs, l.price AS Price,
            l.discount AS Discount,
            l.shipping AS Shipping, l.duty AS Duty, l.rate AS Rate, l.cost AS Cost
        FROM lot l JOIN item i ON i.id = l.item_id LEFT JOIN lot_origin o ON o.lot_id = l.id WHERE o.mixed_from IS NULL
            ORDER BY l.id
        """)
        .GroupBy(row => row.Entry).SelectMany(delivery => Differing([.. delivery]));

    private static IEnumerable<string> Differing(IReadOnlyList<PriceRow> delivery)
    {
        var landed = delivery.Select(row => row.Landed).ToList();
        var costs = landed.Exists(line => line is null or { Paid.Millionths: < 0 })
            ? null
            : SharedCost.OnShelf([.. landed.OfType<LandedCost>()]);
        for (var i = 0; i < delivery.Count; i++)
            if (costs?[i] != new Money(delivery[i].Cost))
                yield return $"lot {delivery[i].Lot} of {delivery[i].Item} cost {new Money(delivery[i].Cost)}, its "
                    + "price, discount, shipping and "
                    + $"duty give {costs?[i].ToString() ?? "no cost"}";
    }

    /// <summary>A container holds its lot's item.</summary>
    private IEnumerable<string> Containers() => snapshot.Connection.Query<string>(
        """
        SELECT format('container %s is kept as %s, its lot is of %s', p.code, ci.code, li.code)
        FROM container c JOIN place p ON p.id = c.place_id JOIN lot l ON l.id = c.lot_id
            JOIN item ci ON ci.id = c.item_id
        JOIN item li ON li.id = l.item_id WHERE c.item_id <> l.item_id
        """);

    /// <summary>
    /// What sheets were moved is what the movements of the same entry moved: as many, and from and to the same places.
    /// </summary>
    private IEnumerable<string> SheetMovements() => snapshot.Connection.Query<string>(
        """
        SELECT format('entry %d moves %d sheets from %s to %s, %d are known to have moved', t.entry_id, sum(t.moved),
            f.code, g.code, sum(t.known))
        FROM (
            SELECT entry_id, from_place, to_place, 0 AS moved, 1 AS known FROM sheet_move
            UNION ALL
            SELECT m.entry_id, m.from_place, m.to_place, m.quantity, 0 FROM movement m
            WHERE EXISTS (SELECT 1 FROM sheet_move s WHERE s.entry_id = m.entry_id AND s.from_place = m.from_place
                AND s.to_place = m.to_place)) t
        JOIN place f ON f.id = t.from_place JOIN place g ON g.id = t.to_place
        GROUP BY t.entry_id, t.from_place, t.to_place HAVING sum(t.moved) <> sum(t.known)
        """);

    /// <summary>The steps of a process are those of its last version.</summary>
    private IEnumerable<string> ProcessVersions() => snapshot.Connection.Query<string>(
        """
        SELECT DISTINCT format('the steps of process %s are not those of its version %d', p.name, p.version)
        FROM process p JOIN (
            SELECT * FROM (
                SELECT s.process_id, p.version, s.number, s.role, s.item_id, s.dilution, s.working_volume, s.amount,
                    s.use, s.per, s.minutes,
                    s.note, s.volumes_by_format, s.celsius
                FROM process_step s JOIN process p ON p.id = s.process_id
                EXCEPT
                SELECT v.process_id, v.version, v.number, v.role, v.item_id, v.dilution, v.working_volume, v.amount,
                    v.use, v.per, v.minutes,
                    v.note, v.volumes_by_format, v.celsius
                FROM process_version_step v)
            UNION ALL
            SELECT * FROM (
                SELECT v.process_id, v.version, v.number, v.role, v.item_id, v.dilution, v.working_volume, v.amount,
                    v.use, v.per, v.minutes,
                    v.note, v.volumes_by_format, v.celsius
                FROM process_version_step v JOIN process p ON p.id = v.process_id AND p.version = v.version
                EXCEPT
                SELECT s.process_id, p.version, s.number, s.role, s.item_id, s.dilution, s.working_volume, s.amount,
                    s.use, s.per, s.minutes,
                    s.note, s.volumes_by_format, s.celsius
                FROM process_step s JOIN process p ON p.id = s.process_id)) d ON d.process_id = p.id
        """);

    private IEnumerable<string> SessionSheets() => snapshot.Connection.Query<SessionProblem>(
        $"""
        SELECT s.code AS Session
        FROM session s
        WHERE (SELECT coalesce(sum(sheets), 0) FROM session_sheets t WHERE t.entry_id = s.entry_id)
            <> (SELECT coalesce(sum(quantity), 0) FROM movement m WHERE m.entry_id = s.entry_id
                AND m.to_place IN ({InSql.FiledNegatives}, {InSql.Rejects}))
        OR (SELECT coalesce(sum(cost), 0) FROM session_sheets t WHERE t.entry_id = s.entry_id)
            <> (SELECT coalesce(sum(value), 0) FROM movement m WHERE m.entry_id = s.entry_id
                AND m.to_place IN ({InSql.FiledNegatives}, {InSql.Rejects}))
        """)
        .Select(row => $"session {row.Session} does not list the sheets that it moved");

    /// <summary>
    /// The places of each film, the lost and discarded sheets among them, add up to what was received.
    /// </summary>
    private IEnumerable<string> FilmPlaces() => snapshot.Connection.Query<FilmProblem>(
        $"""
        SELECT i.code AS Item, sum(iif(b.place_id = {InSql.Supplier}, -b.quantity, 0)) AS Received,
            sum(iif(b.place_id = {InSql.Supplier}, 0, b.quantity)) AS Found
        FROM item i JOIN lot l ON l.item_id = i.id JOIN balance b ON b.lot_id = l.id
        WHERE i.kind = 'film' GROUP BY i.id HAVING sum(b.quantity) <> 0
        """)
        .Select(row => $"{row.Received} of {row.Item} were received, and its places add up to {row.Found}");

    private IEnumerable<string> OneSheetASide() => snapshot.Connection.Query<string>(
        """
        SELECT p.code FROM holder_side s JOIN place p ON p.id = s.place_id JOIN balance b ON b.place_id = s.place_id
        GROUP BY s.place_id HAVING sum(b.quantity) > 1
        """)
        .Select(side => $"{side} holds more than one sheet");

    /// <summary>What holders and boxes of exposed film hold is as many sheets as are known to be there.</summary>
    private IEnumerable<string> KnownSheets() => snapshot.Connection.Query<SheetProblem>(
        """
        SELECT p.code AS Place, coalesce((SELECT sum(b.quantity) FROM balance b
            WHERE b.place_id = p.id), 0) AS Held, coalesce((
            SELECT sum(way.change) FROM (
                SELECT m.entry_id, 1 AS change FROM sheet_move m WHERE m.to_place = p.id AND m.to_place >= 100
                UNION ALL SELECT m.entry_id, -1 FROM sheet_move m WHERE m.from_place = p.id AND m.from_place >= 100) way
            JOIN standing_entry e ON e.id = way.entry_id), 0) AS Known
        FROM place p WHERE p.kind IN ('holder side', 'exposed box') AND Held <> Known
        """)
        .Select(row => $"{row.Place} holds {row.Held} sheets, and {row.Known} are known to be there");

    /// <summary>
    /// What every command begins with: that each value of the shelf, the baths, the holders and the settings can be
    /// read.
    /// </summary>
    private IEnumerable<string> Holdings(LocalDate today)
    {
        var holdings = new HoldingsReader(snapshot).Read(today);
        _ = (holdings.Items, holdings.Film.Holders);
        return [];
    }

    /// <summary>
    /// Every year for itself and all of them together, by every cost formula: opening + bought = used + waste + on
    /// hand, and no year opens with anything else than the one before it left.
    /// </summary>
    private IEnumerable<string> Costs(LocalDate today)
    {
        var first = snapshot.Connection.QueryFirstOrDefault<string?>("SELECT min(date) FROM entry") is { } text
            ? Days.Read(text)
            : today;
        var reader = new CostReader(snapshot);
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

        var moves = new PriceReader(snapshot).StockMoves(today);
        foreach (var formula in Enum.GetValues<CostFormula>())
        {
            var recosting = new Recosting(new(moves, formula, FirstOfAll));
            var costs = new CostReading(formula == CostFormula.SpecificLot
                ? reader.Read(FirstOfAll, today)
                : recosting.Of(reader.Read(FirstOfAll, today, recosted: recosting.Of)));
            if (!costs.Reconciles)
                yield return Unequal($"all years by {formula.Name()}", costs);
        }
    }

    private static string Unequal(string period, CostReading costs) =>
        $"the costs of {period} do not reconcile: spent {costs.Spent}, used {costs.Used}, on hand {costs.OnHand}, "
        + $"still in baths {costs.StillInBaths}";

    internal sealed record ReferenceRow(string Child, string Parent, long Rows);

    internal sealed record BalanceProblem(
        long Id, string Kind, string Place, string Item, string Unit, long Held, long Given,
        long HeldValue, long GivenValue)
    {
        /// <summary>The single places (below 100) hold nothing: they have a total of what came and went.</summary>
        public string Sentence => (Id < Core.Stock.Places.FirstFree ? $"the total of \"{Place}\" for {Item}" : Holder)
            + (Held == Given
                ? $" is worth {new Money(HeldValue)}, its movements give {new Money(GivenValue)}"
                : $" {(Id < Core.Stock.Places.FirstFree ? "is" : "holds")} {Amount(Held)}, its movements give "
                    + $"{Amount(Given)}");

        private string Holder => Kind == "container" ? $"container {Place}" : $"{Kind} {Place}, of {Item},";

        private Quantity Amount(long units) => new(units, Units.Named(Unit)!.Value);
    }

    internal sealed record BathProblem(string Bath, long Area, long Weighted, long GivenArea, long GivenWeighted)
    {
        public string Sentence => Area == GivenArea
            ? $"bath {Bath} counts {Text(Weighted)} weighted by film, its sessions give {Text(GivenWeighted)}"
            : $"bath {Bath} counts {Text(Area)} of work, its sessions give {Text(GivenArea)}";

        private static Area Text(long hundredths) => Core.Measures.Area.FromHundredths(hundredths);
    }

    internal sealed record UseProblem(string Item, string Unit, string Date, long Held, long Given)
    {
        public string Sentence =>
            $"the use of {Item} on {Date} is kept as {Amount(Held)}, its movements give {Amount(Given)}";

        private Quantity Amount(long units) => new(units, Units.Named(Unit)!.Value);
    }

    internal sealed record MonthProblem(string Month, long Held, long Given);

    internal sealed record PriceRow(
        long Entry, long Lot, string Item, string Packs, long Price, long Discount, long Shipping,
        long Duty, string? Rate, long Cost)
    {
        /// <summary>What was paid for it; null when packs or rate are no numbers.</summary>
        public LandedCost? Landed =>
            decimal.TryParse(Packs, NumberStyles.Number, CultureInfo.InvariantCulture, out var packs)
            && decimal.TryParse(Rate ?? "1", NumberStyles.Number, CultureInfo.InvariantCulture, out var rate)
                ? new LandedCost(new(Price), packs, new(Discount), new(Shipping), new(Duty), rate) : null;
    }

    internal sealed record DayProblem(string Place, string Date);

    internal sealed record LotProblem(long Lot, string Item, long? Quantity, long? Value);

    internal sealed record SessionProblem(string Session);

    internal sealed record FilmProblem(string Item, long Received, long Found);

    internal sealed record SheetProblem(string Place, long Held, long Known);
}
