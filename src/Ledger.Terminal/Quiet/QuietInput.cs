using System.Runtime.InteropServices;
using Terminal.Gui.Drivers;

namespace Ledger.Terminal.Quiet;

/// <summary>
/// Input that waits in the system until a key comes, where the library's looks fifty times a second. A pipe of its own
/// ends the wait when the screens are left.
/// </summary>
internal sealed partial class QuietInput : AnsiInput
{
    private const int Keyboard = 0;
    private const short Readable = 1;

    /// <summary>Long enough to cost nothing; what must come at once does not wait for it.</summary>
    private const int AtMost = 10_000;

    private readonly Wake _wake;
    private readonly int[] _pipe = new int[2];
    private readonly bool _canWait;
    private bool _wasThere;
    private int _isEnded;

    /// <summary>Waits for keys.</summary>
    /// <param name="wake">What is told when one has come.</param>
    public QuietInput(Wake wake)
    {
        _wake = wake;
        _canWait = !OperatingSystem.IsWindows() && IsAttachedToTerminal && Pipe(_pipe) == 0;
    }

    /// <summary>
    /// The library asks this on a thread of its own, and puts what is there in the loop's queue before it asks again.
    /// </summary>
    public override bool Peek()
    {
        if (_wasThere)
            _wake.Typed();
        _wasThere = base.Peek() || (_canWait && IsComing() && base.Peek());
        return _wasThere;
    }

    /// <summary>Ends a wait: the screens are being left.</summary>
    public void End()
    {
        if (_canWait && Interlocked.Exchange(ref _isEnded, 1) == 0)
            _ = Write(_pipe[1], [0], 1);
    }

    private bool IsComing()
    {
        if (_isEnded != 0)
            return false;
        Watched[] both =
        [
            new() { Descriptor = Keyboard, Events = Readable }, new() { Descriptor = _pipe[0], Events = Readable },
        ];
        return Poll(both, both.Length, AtMost) > 0 && (both[0].Came & Readable) != 0;
    }

    [LibraryImport("libc", EntryPoint = "poll")]
    private static partial int Poll([In, Out] Watched[] watched, nint count, int milliseconds);

    [LibraryImport("libc", EntryPoint = "pipe")]
    private static partial int Pipe([Out] int[] ends);

    [LibraryImport("libc", EntryPoint = "write")]
    private static partial nint Write(int descriptor, byte[] bytes, nint count);

    [StructLayout(LayoutKind.Sequential)]
    private struct Watched
    {
        public int Descriptor;
        public short Events;
        public short Came;
    }
}
