using NodaTime.Extensions;
using NodaTime.Testing;

namespace Ledger.Terminal.Tests.Fakes;

/// <summary>On a real file with the demo year in it, on 15 March 2026.</summary>
public abstract class OnTheDemoYear : OnScreens<LedgerFile>
{
    private readonly string _folder = Directory.CreateTempSubdirectory("trayledger").FullName;

    private protected static ZonedClock Clock { get; } = new FakeClock(Instant.FromUtc(2026, 3, 15, 9, 0)).InUtc();

    private protected override LedgerFile Make() => Another("ledger");

    /// <summary>Another file with the demo year in it; on another day, where a clock is given.</summary>
    private protected LedgerFile Another(string name, ZonedClock? clock = null) =>
        ReadyLedger.DemoYear(Path.Combine(_folder, $"{name}.db"), clock ?? Clock);

    public override void Dispose()
    {
        base.Dispose();
        Directory.Delete(_folder, recursive: true);
        GC.SuppressFinalize(this);
    }
}
