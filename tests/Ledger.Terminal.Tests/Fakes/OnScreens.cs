namespace Ledger.Terminal.Tests.Fakes;

/// <summary>
/// Tests of screens: each test has a ledger and a screen of its own, made when they are first asked for and gone when
/// it ends.
/// </summary>
public abstract class OnScreens<TLedger> : IDisposable
    where TLedger : class, ILedger
{
    private TLedger? _ledger;
    private Screen? _screen;

    protected TLedger Ledger => _ledger ??= Make();

    /// <summary>The screen that is looked at; one of 80 by 24 where none was asked for.</summary>
    private protected Screen Screen => _screen ?? Look();

    private protected abstract TLedger Make();

    /// <summary>A new screen on the ledger, in place of the one before.</summary>
    private protected Screen Look(
        int width = 80, int height = 24, TerminalOptions? options = null, IUpkeep? upkeep = null, IPaper? paper = null)
    {
        _screen?.Dispose();
        return _screen = new(Ledger, width, height, options, upkeep, paper);
    }

    public virtual void Dispose()
    {
        _screen?.Dispose();
        (_ledger as IDisposable)?.Dispose();
        GC.SuppressFinalize(this);
    }
}
