using NodaTime.Testing;

namespace Ledger.Storage.Tests.Support;

/// <summary>A ledger in a folder of its own, on a fixed day; gone when the test ends.</summary>
public sealed class TemporaryLedger : IDisposable
{
    /// <summary>An empty ledger, made once: making one takes longer than most tests do.</summary>
    private static readonly Lazy<byte[]> _empty = new(MakeEmpty);

    public TemporaryLedger()
    {
        Folder = Directory.CreateTempSubdirectory("trayledger-").FullName;
        File.WriteAllBytes(FilePath, _empty.Value);
        Ledger = LedgerFile.Open(FilePath, Clock);
    }

    public string Folder { get; }

    public string FilePath => Path.Combine(Folder, "ledger.db");

    public ZonedClock Clock { get; } = AFixedDay();

    /// <summary>The night falls: what is recorded from now on is recorded a day later.</summary>
    public void Sleep() => ((FakeClock)Clock.Clock).AdvanceDays(1);

    public LedgerFile Ledger { get; private set; }

    public Posted Accept(Entry entry) => Ledger.Post(entry) switch
    {
        Posted posted => posted,
        NotPosted { Refusal: var refusal } => throw new InvalidOperationException(
            $"{refusal.Kind}: {refusal.Sentence}"),
        _ => throw new InvalidOperationException("already posted"),
    };

    public Refusal Refuse(Entry entry) => Assert.IsType<NotPosted>(Ledger.Post(entry)).Refusal;

    public void Reopen()
    {
        Ledger.Dispose();
        Ledger = LedgerFile.Open(FilePath, Clock);
    }

    /// <summary>Another file stands in its place.</summary>
    public void Replace(Action<string> write)
    {
        Ledger.Dispose();
        write(FilePath);
        Ledger = LedgerFile.Open(FilePath, Clock);
    }

    /// <summary>Writes into the file past all rules, as an older version or a long life may have left it.</summary>
    public void Run(string sql) => Ledger.Connection.Run(sql);

    /// <summary>A full disk: SQLite may not use another page.</summary>
    public void LimitToItsPresentSize() =>
        Run($"PRAGMA max_page_count = {Ledger.Connection.Number("PRAGMA page_count")}");

    private static ZonedClock AFixedDay() =>
        new(FakeClock.FromUtc(2026, 3, 15, 12, 0, 0), DateTimeZone.Utc, CalendarSystem.Iso);

    private static byte[] MakeEmpty()
    {
        var folder = Directory.CreateTempSubdirectory("trayledger-").FullName;
        try
        {
            var path = Path.Combine(folder, "empty.db");
            LedgerFile.Open(path, AFixedDay()).Dispose();
            return File.ReadAllBytes(path);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    public void Dispose()
    {
        Ledger.Dispose();
        Directory.Delete(Folder, recursive: true);
    }
}
