using SQLitePCL;

namespace Ledger.Storage.Tests;

/// <summary>
/// What is read costs the same work however long the journal around it is: counted in steps of SQLite, not in time.
/// </summary>
public sealed class HistoryTests : IDisposable
{
    private static readonly LocalDate LastOfMarch = Some.Day(3, 31);

    private static readonly Dictionary<string, Action<LedgerFile>> Readings = new()
    {
        ["prices"] = ledger => Assert.NotEmpty(ledger.Prices(ledger.Today)),
        ["prices of one item"] = ledger => Assert.NotEmpty(ledger.PricesOf("pan", ledger.Today)),
        ["a page of prints"] = ledger => Assert.Single(ledger.Prints(ledger.Today, null, 10)),
        ["costs of a month"] = ledger => Assert.Single(ledger.Costs(Some.Day(3, 1), LastOfMarch).Sessions.Sheets
            .Select(sheet => sheet.Session).Distinct()),
    };

    private readonly TemporaryLedger _file = new();

    public HistoryTests()
    {
        Some.Stock(_file);
        _file.Accept(Some.Session("S01", 4, month: 3));
        _file.Run(
            """
            INSERT INTO entry (id, key, kind, date, recorded_at, summary, note)
                VALUES (1000, 'print', 'print session', '2025-02-01', '2026-01-01T00:00:00.000Z', '', '');
            INSERT INTO print_session (entry_id, code) VALUES (1000, 'P01');
            """);
    }

    public static TheoryData<string> Names => [.. Readings.Keys];

    public void Dispose() => _file.Dispose();

    [Theory]
    [MemberData(nameof(Names))]
    public void It_does_not_grow_with_the_journal_around_it(string name)
    {
        var before = Steps(Readings[name]);
        _file.Run(
            """
            INSERT INTO entry (id, key, kind, date, recorded_at, summary, note)
                WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 3000)
                SELECT 1000 + i, 'other-' || i, 'other', date(iif(i % 2, '2025-04-01', '2025-01-02'),
                    (i % 25) || ' days'),
                    '2026-01-01T00:00:00.000Z', '', '' FROM n
            """);
        Assert.InRange(Steps(Readings[name]), 1, before * 2);
    }

    private int Steps(Action<LedgerFile> read)
    {
        var steps = 0;
        var handle = _file.Ledger.Connection.Handle!;
        raw.sqlite3_progress_handler(handle, 1, _ => steps++ < 0 ? 1 : 0, null);
        read(_file.Ledger);
        raw.sqlite3_progress_handler(handle, 0, null, null);
        return steps;
    }
}
