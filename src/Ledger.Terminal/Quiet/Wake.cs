namespace Ledger.Terminal.Quiet;

/// <summary>What the loop sleeps on: a key, a timer that was added, a window that changed its size.</summary>
internal sealed class Wake : IDisposable
{
    private readonly AutoResetEvent _came = new(false);

    /// <summary>Whether the last waking was by a key or a mouse.</summary>
    private volatile bool _isInput;

    /// <summary>Something came that the loop must look at.</summary>
    public void Now() => _came.Set();

    /// <summary>The user typed, or moved the mouse.</summary>
    public void Typed()
    {
        _isInput = true;
        _came.Set();
    }

    /// <summary>Whether the user has typed since this was asked last.</summary>
    public bool WasTyped()
    {
        var was = _isInput;
        _isInput = false;
        return was;
    }

    /// <summary>Waits until something comes, at most so long; below zero for ever.</summary>
    public void Wait(int milliseconds) => _came.WaitOne(milliseconds);

    public void Dispose() => _came.Dispose();
}
