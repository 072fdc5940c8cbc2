using System.Runtime.InteropServices;
using System.Text;

namespace Ledger.Terminal.Quiet;

/// <summary>The terminal as the system writes to it.</summary>
internal static partial class Descriptor
{
    private const int Output = 1, Interrupted = 4, TryAgain = 11;

    /// <summary>Sends text; a terminal that is slow is waited for, one that has gone takes nothing any more.</summary>
    public static void Send(string text)
    {
        ReadOnlySpan<byte> rest = Encoding.UTF8.GetBytes(text);
        while (rest.Length > 0)
        {
            var sent = Write(Output, in rest[0], rest.Length);
            if (sent > 0)
                rest = rest[(int)sent..];
            else if (Marshal.GetLastPInvokeError() is TryAgain)
                Thread.Sleep(1);
            else if (Marshal.GetLastPInvokeError() is not Interrupted)
                return;
        }
    }

    [LibraryImport("libc", EntryPoint = "write", SetLastError = true)]
    private static partial nint Write(int descriptor, ref readonly byte bytes, nint count);
}
