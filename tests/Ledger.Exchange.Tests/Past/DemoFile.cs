using NodaTime.Testing;

namespace Ledger.Exchange.Tests.Past;

/// <summary>
/// The demo year in a file of its own, imported once and copied for each test; or imported with other entries in it.
/// </summary>
internal sealed class DemoFile : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("trayledger-").FullName;

    /// <summary>The demo year as it is.</summary>
    public DemoFile() => Ledger = ReadyLedger.DemoYear(FilePath, Clock);

    /// <summary>A copy of another one.</summary>
    public DemoFile(DemoFile other)
    {
        File.Copy(other.FilePath, FilePath);
        Ledger = LedgerFile.Open(FilePath, Clock);
    }

    /// <summary>These entries.</summary>
    public DemoFile(IEnumerable<Entry> entries)
    {
        Ledger = ReadyLedger.Empty(FilePath, Clock);
        Assert.Empty(Ledger.Import(entries, dryRun: false, null,
            default).Refused.Select(refused => refused.Refusal.Sentence));
    }

    public LedgerFile Ledger { get; }

    public string FilePath => Path.Combine(_folder, "ledger.db");

    private static ZonedClock Clock => new(
        new FakeClock(DemoYear.LastDay.AtMidnight().InUtc().ToInstant()), DateTimeZone.Utc, CalendarSystem.Iso);

    /// <summary>The demo year's entries.</summary>
    public static IReadOnlyList<Entry> Year { get; } = [.. DemoYear.Read(DemoYear.LastDay)];

    public Posted Accept(Entry entry) => Ledger.Post(entry) switch
    {
        Posted posted => posted,
        NotPosted { Refusal: var refusal } => throw new InvalidOperationException(
            $"{refusal.Kind}: {refusal.Sentence}"),
        _ => throw new InvalidOperationException("already posted"),
    };

    public static Undo Undo(long number) =>
        new() { Key = $"undo-{Guid.NewGuid()}", Date = DemoYear.LastDay, Number = number, Reason = "mistake" };

    public static Amendment Amend(string key, params FieldChange[] changes) => new()
    {
        Key = $"amendment-{Guid.NewGuid()}", Date = DemoYear.LastDay, Reference = key, Changes = changes,
        Reason = "mistyped",
    };

    /// <summary>All that follows from what was said, row by row.</summary>
    public IReadOnlyList<string> State() => LedgerState.Of(Ledger);

    public void Dispose()
    {
        Ledger.Dispose();
        Directory.Delete(_folder, recursive: true);
    }
}
