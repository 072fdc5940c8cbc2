namespace Ledger.Terminal.Tests.Fakes;

/// <summary>On <see cref="Some.Ledger"/>.</summary>
public abstract class OnASmallLedger : OnScreens<FakeLedger>
{
    private protected override FakeLedger Make() => Some.Ledger();
}
