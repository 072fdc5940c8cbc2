using BenchmarkDotNet.Attributes;
using Ledger.Storage;

namespace Ledger.Benchmarks;

/// <summary>200 items with ten years of weekly use: the reorder readings against the shelf of the same file.</summary>
public class ReorderBenchmarks : IDisposable
{
    private LedgerFile _ledger = null!;

    [GlobalSetup]
    public void SetUp() => _ledger = BigLedger.WithWeeklyUse(items: 200, weeks: 520);

    [GlobalCleanup]
    public void Dispose()
    {
        _ledger.Dispose();
        File.Delete(_ledger.Path);
        GC.SuppressFinalize(this);
    }

    [Benchmark(Baseline = true)]
    public int Shelf() => ReadingBenchmarks.ShelfOf(_ledger);

    [Benchmark]
    public int Reorder() => ReorderOf(_ledger);

    internal static int ReorderOf(LedgerFile ledger) =>
        ReorderReading.Of(ledger, ledger.HoldingsOn(ledger.Today)).Count(reading => reading.Computed is not null);
}
