using System.Reflection;

namespace Ledger.Terminal.Tests.Fakes;

/// <summary>A ledger that keeps what it was asked to try out.</summary>
public class CountedLedger : DispatchProxy
{
    private ILedger _ledger = null!;

    /// <summary>The entries that were tried out, in order.</summary>
    public IList<Entry> Previews { get; } = [];

    /// <summary>Counts what a ledger is asked.</summary>
    public static CountedLedger Of(ILedger ledger, out ILedger counted)
    {
        counted = Create<ILedger, CountedLedger>();
        var proxy = (CountedLedger)counted;
        proxy._ledger = ledger;
        return proxy;
    }

    protected override object? Invoke(MethodInfo? targetMethod, object?[]? args)
    {
        if (targetMethod!.Name == nameof(ILedger.Preview))
            Previews.Add((Entry)args![0]!);
        try
        {
            return targetMethod.Invoke(_ledger, args);
        }
        catch (TargetInvocationException inner)
        {
            System.Runtime.ExceptionServices.ExceptionDispatchInfo.Throw(inner.InnerException!);
            throw;
        }
    }
}
