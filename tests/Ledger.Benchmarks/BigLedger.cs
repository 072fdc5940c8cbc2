using Ledger.Exchange.Import;
using Ledger.Storage;
using Ledger.Storage.Deriving;
using Microsoft.Data.Sqlite;

namespace Ledger.Benchmarks;

/// <summary>Ledgers far larger than a lifetime of film.</summary>
internal static class BigLedger
{
    private static readonly LocalDate FirstDay = new(2010, 1, 1);

    public static ZonedClock Clock { get; } = new(SystemClock.Instance, DateTimeZone.Utc, CalendarSystem.Iso);

    public static string NewPath() => Path.Combine(Path.GetTempPath(), $"trayledger-benchmark-{Guid.NewGuid():N}.db");

    /// <summary>
    /// The items and processes of the demo year, with stock that never runs out and one bath without end.
    /// </summary>
    public static LedgerFile WithStock(string path)
    {
        var ledger = LedgerFile.Open(path, Clock);
        var demo = DemoYear.Read(ledger.Today);
        Entry[] entries =
        [
            .. demo.Where(entry => entry is ItemDefinition or ProcessDefinition)
                .Select(entry => entry with { Date = FirstDay }),
            .. demo.OfType<ItemDefinition>().Select(definition => new Delivery
            {
                Key = $"stock-{definition.Item.Code}", Date = FirstDay, Currency = "EUR",
                Lines = [new() { Item = definition.Item.Code, Packs = 1, Price = Money.Of(10_000) }],
            }),
            .. demo.OfType<ItemDefinition>().Select(definition => new StockCount
            {
                Key = $"more-{definition.Item.Code}", Date = FirstDay, What = definition.Item.Code,
                Reason = "benchmark", Found = new(definition.Item.Pack.Base * 100_000, definition.Item.Unit),
            }),
            new BathMixing
            {
                Key = "bath", Date = FirstDay, Bath = "F1", Item = "tarnfix",
                WorkingVolume = Volume.FromMillilitres(1500),
            },
        ];
        var outcome = ledger.Import(entries, dryRun: false, null, default);
        return outcome.Refused.Count == 0
            ? ledger
            : throw new InvalidOperationException(outcome.Refused[0].Refusal.Sentence);
    }

    /// <summary>
    /// Items and holders of which nearly all are only defined; some of the items came earlier than they were written
    /// down.
    /// </summary>
    public static void WithCatalogue(string path, int items, int holders, int deliveries)
    {
        using var ledger = LedgerFile.Open(path, Clock);
        Import(Enumerable.Range(0, items).Select(i => new ItemDefinition
        {
            Key = $"item-{i}", Date = ledger.Today, Item = new()
            {
                Code = $"sup{i:00000}", Name = $"Supply {i}", Kind = ItemKind.Supply, Unit = Unit.Piece,
                Pack = new(10, Unit.Piece),
            },
        }));
        Import(Enumerable.Range(0, holders).Select(i => new HolderDefinition
        {
            Key = $"holder-{i}", Date = ledger.Today, Holder = $"H{i:00000}", Format = Format.Parse("8x10"),
        }));
        Import(Enumerable.Range(0, deliveries).Select(i => new Delivery
        {
            Key = $"delivery-{i}", Date = ledger.Today.PlusDays(-200 + (i * 28 / deliveries)), Currency = "EUR",
            Lines = [new() { Item = $"sup{i * (items / deliveries):00000}", Packs = 1, Price = Money.Of(10) }],
        }));

        void Import(IEnumerable<Entry> entries)
        {
            if (ledger.Import(entries, dryRun: false, null, default).Refused is [var refused, ..])
                throw new InvalidOperationException(refused.Refusal.Sentence);
        }
    }

    /// <summary>The lines of a sessions.csv: sessions of four lines each.</summary>
    /// <param name="lines">How many lines.</param>
    /// <param name="sessionsADay">How many sessions a day has.</param>
    public static MemoryStream SessionsCsv(int lines, decimal sessionsADay = 5)
    {
        var csv = new MemoryStream();
        using (var text = new StreamWriter(csv, leaveOpen: true))
        {
            text.WriteLine("session,date,process,item,sheets,group,developer_ml,bath,fate,note");
            for (var i = 0; i < lines; i++)
            {
                var date = Dates.Text(FirstDay.PlusDays((int)(i / 4 / sessionsADay)));
                text.WriteLine(string.Create(
                    CultureInfo.InvariantCulture,
                    $"B{i / 4},{date},film,fen80,1,N,{(i % 4 == 0 ? "25" : "")},F1,{(i % 4 == 3 ? "reject" : "negative")},line {i}"));
            }
        }

        csv.Position = 0;
        return csv;
    }

    /// <summary>
    /// A ledger with so many movements of sessions long past; filled by plain SQL, since only reading is measured on
    /// it.
    /// </summary>
    public static LedgerFile WithMovements(int movements)
    {
        var path = NewPath();
        WithStock(path).Dispose();
        return Filled(path, $"""
            CREATE TEMP TABLE series AS WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n
                WHERE i < {movements / 4}) SELECT i FROM n;
            CREATE TEMP TABLE first AS SELECT coalesce(max(id), 0) AS id FROM entry;
            {Boxes}
            INSERT INTO entry (key, kind, date, recorded_at, summary, note)
                SELECT 'bulk-' || i, 'session', date('2010-01-02', (i * 5000 / {movements / 4}) || ' days'),
                    '2025-01-01T00:00:00.000Z', 'session B' || i, '' FROM series;
            INSERT INTO session (entry_id, code, process, bath_id, developer)
                SELECT first.id + i, 'B' || i, 'film', (SELECT place_id FROM bath), 25000 FROM series, first;
            INSERT INTO bath_work (entry_id, place_id, is_first, area, weighted)
                SELECT first.id + i, (SELECT place_id FROM bath), 1, 100, 100 FROM series, first;
            {UsedBySessions(film: 0, other: 0)}
            """);
    }

    /// <summary>
    /// A ledger of so many years with so many movements of sessions, spread evenly, and a new bath each month; filled
    /// by plain SQL, since only reading is measured on it. The first year is 2010.
    /// </summary>
    public static LedgerFile OfYears(int years, int movements)
    {
        var path = NewPath();
        WithStock(path).Dispose();
        return Filled(path, $"""
            CREATE TEMP TABLE month AS
                WITH RECURSIVE n(i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM n WHERE i < {years * 12 - 1}) SELECT i
                    FROM n;
            {Boxes}
            CREATE TEMP TABLE first_bath AS SELECT * FROM bath LIMIT 1;
            INSERT INTO entry (key, kind, date, recorded_at, summary, note)
                SELECT 'bulk-bath-' || i, 'bath', date('2010-01-01', i || ' months'), '2025-01-01T00:00:00.000Z',
                    'bath', '' FROM month;
            INSERT INTO entry (key, kind, date, recorded_at, summary, note)
                SELECT 'bulk-end-' || i, 'discard', date('2010-02-01', i || ' months', '-1 day'),
                    '2025-01-01T00:00:00.000Z', 'end', '' FROM month;
            INSERT INTO place (id, kind, code, entry_id)
                SELECT 100000 + i, 'bath', 'M' || i, e.id FROM month JOIN entry e ON e.key = 'bulk-bath-' || i;
            INSERT INTO bath (place_id, entry_id, item_id, role, material, working_volume, dilution, capacity_per_litre,
                capacity_basis, rotations)
                SELECT 100000 + i, e.id, b.item_id, b.role, b.material, b.working_volume, b.dilution,
                    b.capacity_per_litre, b.capacity_basis, 0
                FROM month JOIN entry e ON e.key = 'bulk-bath-' || i, first_bath b;
            INSERT INTO movement (entry_id, lot_id, from_place, to_place, quantity, value)
                SELECT e.id, box.lot_id, box.place_id, 100000 + i, 300000, 4770000
                FROM month JOIN entry e ON e.key = 'bulk-bath-' || i, box WHERE box.code = 'tarnfix';
            INSERT INTO bath_end (place_id, entry_id, reason)
                SELECT 100000 + i, e.id, 'spent' FROM month JOIN entry e ON e.key = 'bulk-end-' || i;
            CREATE TEMP TABLE first AS SELECT max(id) AS id FROM entry;
            CREATE TEMP TABLE series AS
                WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < {movements / 4})
                SELECT i, date('2010-01-01', (i * {years * 365 - 1} / {movements / 4}) || ' days') AS day FROM n;
            INSERT INTO entry (key, kind, date, recorded_at, summary, note)
                SELECT 'bulk-' || i, 'session', day, '2025-01-01T00:00:00.000Z', 'session B' || i, '' FROM series
                    ORDER BY i;
            INSERT INTO session (entry_id, code, process, bath_id, developer)
                SELECT first.id + i, 'B' || i, 'film', 100000 + (substr(day, 1, 4) - 2010) * 12 + substr(day, 6, 2) - 1,
                    25000 FROM series, first;
            INSERT INTO bath_work (entry_id, place_id, is_first, area, weighted)
                SELECT entry_id, bath_id, 1, 100, 100 FROM session, first WHERE entry_id > first.id;
            {UsedBySessions(film: 7_000_000, other: 1000)}
            """);
    }

    /// <summary>
    /// Supplies of which every week uses some, in amounts that differ; filled by plain SQL, since only reading is
    /// measured on it.
    /// </summary>
    public static LedgerFile WithWeeklyUse(int items, int weeks)
    {
        var path = NewPath();
        using (var ledger = LedgerFile.Open(path, Clock))
        {
            var first = ledger.Today.PlusWeeks(-weeks);
            var entries = Enumerable.Range(0, items).SelectMany(i => new Entry[]
            {
                new ItemDefinition
                {
                    Key = $"item-{i}", Date = first, Item = new()
                    {
                        Code = $"item{i}", Name = $"Supply {i}", Kind = ItemKind.Supply, Unit = Unit.Piece,
                        Pack = new(1_000_000, Unit.Piece), LeadTimeDays = 7 + i % 40, ServiceLevel = 0.95m,
                    },
                },
                new Delivery
                {
                    Key = $"delivery-{i}", Date = first, Currency = "EUR",
                    Lines = [new() { Item = $"item{i}", Packs = 1, Price = Money.Of(1000) }],
                },
            });
            if (ledger.Import(entries, dryRun: false, null, default).Refused is [var refused, ..])
                throw new InvalidOperationException(refused.Refusal.Sentence);
        }

        return Filled(path, $"""
            CREATE TEMP TABLE week AS WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n
                WHERE i < {weeks}) SELECT i FROM n;
            CREATE TEMP TABLE first AS SELECT max(id) AS id, min(date) AS day FROM entry;
            INSERT INTO entry (key, kind, date, recorded_at, summary, note)
                SELECT 'week-' || i, 'session', date(first.day, (i * 7) || ' days'), '2025-01-01T00:00:00.000Z',
                    'week ' || i, '' FROM week, first;
            INSERT INTO movement (entry_id, lot_id, from_place, to_place, quantity, value)
                SELECT first.id + i, c.lot_id, c.place_id, 4, 1 + (i * 7919 + c.item_id * 104729) % 17, 0
                FROM week, first, container c WHERE (i * 31 + c.item_id * 17) % 5 < 3;
            """);
    }

    /// <summary>
    /// What the tables of the file hold is written past all rules, in one transaction; what is added up from them is
    /// added up.
    /// </summary>
    private static LedgerFile Filled(string path, string sql)
    {
        using (var connection = new SqliteConnection($"Data Source={path};Pooling=False"))
        {
            connection.Open();
            connection.CreateFunction("only_trayledger_writes_here", () => 1L); // the guards of the tables ask for it
            using var command = connection.CreateCommand();
            command.CommandText = $"BEGIN IMMEDIATE; {sql} COMMIT;";
            command.CommandTimeout = 0;
            command.ExecuteNonQuery();
            Totals.AddUp(connection);
        }

        return LedgerFile.Open(path, Clock);
    }

    private const string Boxes =
        "CREATE TEMP TABLE box AS SELECT i.code, c.place_id, c.lot_id FROM container c JOIN item i ON i.id = "
            + "c.item_id;";

    /// <summary>A sheet and some of all else for each session of the series.</summary>
    private static string UsedBySessions(long film, long other) => $"""
        INSERT INTO movement (entry_id, lot_id, from_place, to_place, quantity, value)
            SELECT first.id + i, box.lot_id, box.place_id, iif(box.code = 'fen80', 2, 4), 1,
                iif(box.code = 'fen80', {film}, {other})
            FROM series, first, box WHERE box.code IN ('fen80', 'syrup', 'citric-stop', 'gloves');
        INSERT INTO session_sheets (entry_id, number, line, lot_id, sheets, area, cost, "group", fate, note)
            SELECT first.id + i, 1, 1, box.lot_id, 1, 100, {film}, 'N', 'negative', '' FROM series, first, box
                WHERE box.code = 'fen80';
        """;
}
