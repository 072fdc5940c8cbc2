using Ledger.Storage;
using NodaTime;
using NodaTime.Extensions;
using NodaTime.Testing;

namespace Ledger.Terminal.Tests.Fakes;

/// <summary>Tests on a real file with the demo year in it, on 15 March 2026: each test has a file and a screen of its own, gone when it ends.</summary>
public abstract class OnTheDemoYear : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("trayledger").FullName;
    private LedgerFile? _ledger;
    private Screen? _screen;

    protected LedgerFile Ledger => _ledger ??= Another("ledger");

    private protected static ZonedClock Clock { get; } = new FakeClock(Instant.FromUtc(2026, 3, 15, 9, 0)).InUtc();

    /// <summary>The screen that is looked at; one of 80 by 24 where none was asked for.</summary>
    private protected Screen Screen => _screen ?? Look();

    /// <summary>A new screen on the ledger, in place of the one before.</summary>
    private protected Screen Look(int width = 80, int height = 24, IPaper? paper = null)
    {
        _screen?.Dispose();
        return _screen = new(Ledger, width, height, paper: paper);
    }

    /// <summary>Another file with the demo year in it.</summary>
    private protected LedgerFile Another(string name) => ReadyLedger.DemoYear(Path.Combine(_folder, $"{name}.db"), Clock);

    public void Dispose()
    {
        _screen?.Dispose();
        _ledger?.Dispose();
        Directory.Delete(_folder, recursive: true);
        GC.SuppressFinalize(this);
    }
}
