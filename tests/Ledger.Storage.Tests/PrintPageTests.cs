using Dapper;
using Ledger.Storage.Tests.Support;
using SQLitePCL;

namespace Ledger.Storage.Tests;

/// <summary>A page of print sessions costs the same work however many went before it: counted in steps of SQLite, not in time.</summary>
public sealed class PrintPageTests : IDisposable
{
    private readonly TemporaryLedger _file = new();

    public void Dispose() => _file.Dispose();

    [Fact]
    public void ThePageDoesNotGrowWithTheHistory()
    {
        Print(1, 200);
        var few = StepsOfAPage();
        Print(201, 2000);
        Assert.InRange(StepsOfAPage(), 1, few * 2);
    }

    private void Print(int from, int to)
    {
        const string Numbers = "WITH RECURSIVE n (i) AS (SELECT @from UNION ALL SELECT i + 1 FROM n WHERE i < @to) ";
        var numbers = new { from, to };
        _file.Ledger.Connection.Execute(
            "INSERT INTO entry (id, key, kind, date, recorded_at, summary, note) " + Numbers
            + "SELECT i, 'print-' || i, 'print session', date('2020-01-01', i || ' days'), '2026-01-01T00:00:00.000Z', '', '' FROM n", numbers);
        _file.Ledger.Connection.Execute("INSERT INTO print_session (entry_id, code) " + Numbers + "SELECT i, 'P' || i FROM n", numbers);
    }

    private int StepsOfAPage()
    {
        var steps = 0;
        var handle = _file.Ledger.Connection.Handle!;
        raw.sqlite3_progress_handler(handle, 1, _ => steps++ < 0 ? 1 : 0, null);
        var page = _file.Ledger.Prints(_file.Ledger.Today, null, 10);
        raw.sqlite3_progress_handler(handle, 0, null, null);
        Assert.Equal(10, page.Count);
        return steps;
    }
}
