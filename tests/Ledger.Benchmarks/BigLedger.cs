using System.Globalization;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Exchange.Import;
using Ledger.Storage;
using Microsoft.Data.Sqlite;
using NodaTime;

namespace Ledger.Benchmarks;

/// <summary>Ledgers far larger than a lifetime of film.</summary>
internal static class BigLedger
{
    private static readonly LocalDate FirstDay = new(2010, 1, 1);

    public static ZonedClock Clock { get; } = new(SystemClock.Instance, DateTimeZone.Utc, CalendarSystem.Iso);

    public static string NewPath() => Path.Combine(Path.GetTempPath(), $"trayledger-benchmark-{Guid.NewGuid():N}.db");

    /// <summary>The items and processes of the demo year, with stock that never runs out and one bath without end.</summary>
    public static LedgerFile WithStock(string path)
    {
        var ledger = LedgerFile.Open(path, Clock);
        var demo = DemoYear.Read(ledger.Today);
        Entry[] entries =
        [
            .. demo.Where(entry => entry is ItemDefinition or ProcessDefinition).Select(entry => entry with { Date = FirstDay }),
            .. demo.OfType<ItemDefinition>().Select(definition => new Receipt
            {
                Key = $"stock-{definition.Item.Code}", Date = FirstDay, Item = definition.Item.Code, Packs = 1, Price = Money.Of(10_000),
                Currency = "EUR",
            }),
            .. demo.OfType<ItemDefinition>().Select(definition => new StockCount
            {
                Key = $"more-{definition.Item.Code}", Date = FirstDay, What = definition.Item.Code, Reason = "benchmark",
                Found = new(definition.Item.Pack.Base * 1_000_000, definition.Item.Unit),
            }),
            new BathMixing
            {
                Key = "bath", Date = FirstDay, Bath = "F1", Item = "rapidfix", WorkingVolume = Volume.FromMillilitres(1500),
            },
        ];
        var outcome = ledger.Import(entries, dryRun: false, null, default);
        return outcome.Refused.Count == 0 ? ledger : throw new InvalidOperationException(outcome.Refused[0].Refusal.Sentence);
    }

    /// <summary>The lines of a sessions.csv: sessions of four lines each.</summary>
    public static MemoryStream SessionsCsv(int lines)
    {
        var csv = new MemoryStream();
        using (var text = new StreamWriter(csv, leaveOpen: true))
        {
            text.WriteLine("session,date,process,item,sheets,group,developer_ml,bath,fate,note");
            for (var i = 0; i < lines; i++)
            {
                var date = Dates.Text(FirstDay.PlusDays(i / 20));
                text.WriteLine(string.Create(
                    CultureInfo.InvariantCulture,
                    $"B{i / 4},{date},film,pan100,1,N,{(i % 4 == 0 ? "25" : "")},F1,{(i % 4 == 3 ? "reject" : "negative")},line {i}"));
            }
        }

        csv.Position = 0;
        return csv;
    }

    /// <summary>A ledger with so many movements of sessions long past; filled by plain SQL, since only reading is measured on it.</summary>
    public static LedgerFile WithMovements(int movements)
    {
        var path = NewPath();
        WithStock(path).Dispose();
        using (var connection = new SqliteConnection($"Data Source={path};Pooling=False"))
        {
            connection.Open();
            using var command = connection.CreateCommand();
            command.CommandText = $"""
                BEGIN IMMEDIATE;
                CREATE TEMP TABLE series AS WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < {movements / 4}) SELECT i FROM n;
                CREATE TEMP TABLE first AS SELECT coalesce(max(id), 0) AS id FROM entry;
                CREATE TEMP TABLE box AS SELECT i.code, c.place_id, c.lot_id FROM container c JOIN item i ON i.id = c.item_id;
                INSERT INTO entry (key, kind, date, recorded_at, summary, note)
                    SELECT 'bulk-' || i, 'session', date('2010-01-02', (i * 5000 / {movements / 4}) || ' days'), '2025-01-01T00:00:00.000Z', 'session B' || i, '' FROM series;
                INSERT INTO session (entry_id, code, process, bath_id, developer)
                    SELECT first.id + i, 'B' || i, 'film', (SELECT place_id FROM bath), 25000 FROM series, first;
                INSERT INTO bath_work (entry_id, place_id, is_first, area, weighted)
                    SELECT first.id + i, (SELECT place_id FROM bath), 1, 100, 100 FROM series, first;
                INSERT INTO movement (entry_id, lot_id, from_place, to_place, quantity, value)
                    SELECT first.id + i, box.lot_id, box.place_id, iif(box.code = 'pan100', 2, 4), 1, 0
                    FROM series, first, box WHERE box.code IN ('pan100', 'syrup', 'citric-stop', 'gloves');
                INSERT INTO session_sheets (entry_id, number, line, lot_id, sheets, area, cost, "group", fate, note)
                    SELECT first.id + i, 1, 1, box.lot_id, 1, 100, 0, 'N', 'negative', '' FROM series, first, box WHERE box.code = 'pan100';
                COMMIT;
                """;
            command.CommandTimeout = 0;
            command.ExecuteNonQuery();
        }

        return LedgerFile.Open(path, Clock);
    }
}
