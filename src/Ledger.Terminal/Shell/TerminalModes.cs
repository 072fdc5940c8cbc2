using System.Runtime.InteropServices;
using System.Text;

namespace Ledger.Terminal.Shell;

/// <summary>
/// The terminal as it was before the screens and as they need it: its line mode, and the codes that enter and leave the
/// alternate screen, mouse reporting and bracketed paste. The library sets and resets them at its beginning and end
/// only; a stop in between needs both too. Disposed, it gives the terminal back; on Windows the library does all of it.
/// </summary>
internal sealed partial class TerminalModes : IDisposable
{
    private const int Input = 0, Output = 1, AtOnce = 0;

    /// <summary>More than any system's termios takes.</summary>
    private const int ModeSize = 256;

    private const string EnterCodes = "\e[?1049h\e[?25l\e[?1003h\e[?1015h\e[?1006h\e[?2004h";
    private const string LeaveCodes = "\e[<u\e[?2004l\e[?1003l\e[?1015l\e[?1006l\e[0m\e[?1049l\e[?1l\e>\e[?25h";

    private readonly Lock _turn = new();
    private readonly byte[] _before = new byte[ModeSize];
    private readonly byte[] _screens = new byte[ModeSize];
    private readonly bool _isKnown;
    private bool _isEntered;

    /// <summary>Keeps the mode that the terminal has now.</summary>
    public TerminalModes() => _isKnown = !OperatingSystem.IsWindows() && GetMode(Input, ref _before[0]) == 0;

    /// <summary>Keeps the mode that the library has set for the screens.</summary>
    public void Entered() => _isEntered = _isKnown && GetMode(Input, ref _screens[0]) == 0;

    /// <summary>Gives the terminal back as it was.</summary>
    /// <param name="isSure">Whether it is known that the screens have it; otherwise they may be about to take it, or to
    /// give it back.</param>
    public void Leave(bool isSure = true)
    {
        lock (_turn)
        {
            if (!_isKnown || (isSure && !_isEntered))
                return;
            _isEntered = false;
            Send(LeaveCodes);
            _ = SetMode(Input, AtOnce, in _before[0]);
        }
    }

    /// <summary>Takes the terminal for the screens again; who calls it has them drawn whole.</summary>
    public void Enter()
    {
        lock (_turn)
        {
            if (!_isKnown)
                return;
            _isEntered = true;
            _ = SetMode(Input, AtOnce, in _screens[0]);
            Send(EnterCodes);
        }
    }

    public void Dispose()
    {
        lock (_turn)
        {
            if (!_isEntered)
                return;
            _isEntered = false;

            // The library has left the screen by now; the mode of the keypad and of the lines is what it forgets.
            Send("\e[?1l\e>");
            _ = SetMode(Input, AtOnce, in _before[0]);
        }
    }

    /// <summary>What cannot be sent to a terminal that has gone is of no use to anybody.</summary>
    private static void Send(string codes)
    {
        var bytes = Encoding.ASCII.GetBytes(codes);
        _ = Write(Output, in bytes[0], bytes.Length);
    }

    [LibraryImport("libc", EntryPoint = "tcgetattr")]
    private static partial int GetMode(int descriptor, ref byte mode);

    [LibraryImport("libc", EntryPoint = "tcsetattr")]
    private static partial int SetMode(int descriptor, int when, ref readonly byte mode);

    [LibraryImport("libc", EntryPoint = "write")]
    private static partial nint Write(int descriptor, ref readonly byte codes, nint count);
}
