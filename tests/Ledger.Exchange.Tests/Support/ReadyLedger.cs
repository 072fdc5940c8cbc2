using System.Collections.Concurrent;

namespace Ledger.Tests;

/// <summary>
/// Ledgers to test with, each made once in a run and copied after that: making one takes longer than most tests do.
/// </summary>
internal static class ReadyLedger
{
    private static readonly ConcurrentDictionary<LocalDate, Lazy<byte[]>> _empty = new();
    private static readonly ConcurrentDictionary<LocalDate, Lazy<byte[]>> _years = new();

    /// <summary>A ledger in which nothing is recorded.</summary>
    public static LedgerFile Empty(string path, ZonedClock clock) => Copy(_empty, _ => { }, path, clock);

    /// <summary>A ledger that holds the demo year as far as the clock's day.</summary>
    public static LedgerFile DemoYear(string path, ZonedClock clock) => Copy(_years, FillWithDemoYear, path, clock);

    private static void FillWithDemoYear(LedgerFile ledger)
    {
        var year = Exchange.Import.DemoYear.Read(ledger.Today);
        Assert.Empty(ledger.Import(year, dryRun: false, progress: null,
            CancellationToken.None).Refused.Select(refused => refused.Refusal.Sentence));
    }

    private static LedgerFile Copy(
        ConcurrentDictionary<LocalDate, Lazy<byte[]>> made, Action<LedgerFile> fill, string path, ZonedClock clock)
    {
        File.WriteAllBytes(path, made.GetOrAdd(clock.GetCurrentDate(), _ => new(() => Make(fill, clock))).Value);
        return LedgerFile.Open(path, clock);
    }

    private static byte[] Make(Action<LedgerFile> fill, ZonedClock clock)
    {
        var folder = Directory.CreateTempSubdirectory("trayledger-");
        try
        {
            var path = Path.Combine(folder.FullName, "ledger.db");
            using (var ledger = LedgerFile.Open(path, clock))
                fill(ledger);
            return File.ReadAllBytes(path);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
