using BenchmarkDotNet.Attributes;
using Ledger.Storage;

namespace Ledger.Benchmarks;

/// <summary>Reading a screen must not slow down as the history grows: compare the rows of one method.</summary>
[MemoryDiagnoser]
public class ReadingBenchmarks : IDisposable
{
    private LedgerFile _ledger = null!;

    [Params(10_000, 1_000_000)]
    public int Movements { get; set; }

    [GlobalSetup]
    public void SetUp() => _ledger = BigLedger.WithMovements(Movements);

    [GlobalCleanup]
    public void Dispose()
    {
        _ledger.Dispose();
        File.Delete(_ledger.Path);
        GC.SuppressFinalize(this);
    }

    [Benchmark]
    public int Shelf() => ShelfOf(_ledger);

    [Benchmark]
    public int JournalPage() => _ledger.Journal(_ledger.Today, null, 200).Count;

    [Benchmark]
    public int SessionsPage() => _ledger.Sessions(_ledger.Today, null, 200).Count;

    [Benchmark]
    public bool CostsOfTheLastMonth() =>
        new CostReading(_ledger.Costs(_ledger.Today.PlusDays(-30), _ledger.Today)).Reconciles;

    internal static Core.Measures.Money CostsOf(LedgerFile ledger, int year)
    {
        var costs = new CostReading(ledger.Costs(new(year, 1, 1), new(year, 12, 31)));
        return costs.Reconciles && costs.Film > Core.Measures.Money.Zero
            ? costs.Used
            : throw new InvalidOperationException($"{year} does not reconcile");
    }

    internal static int ShelfOf(LedgerFile ledger)
    {
        var holdings = ledger.HoldingsOn(ledger.Today);
        return holdings.Items.Sum(item => new ShelfReading(item, holdings.ContainersOf(item.Code),
            holdings.AsOf).Containers.Count);
    }
}
