using System.Runtime.InteropServices;

namespace Ledger.App.Wiring;

/// <summary>The process's first three descriptors, as the operating system knows them.</summary>
internal static partial class Descriptors
{
    private const int GetFlags = 1, ReadOnly = 0, WriteOnly = 1;
    private const nuint WindowSize = 0x5413;

    /// <summary>
    /// Keeps the places of streams that were closed: the next file to be opened would take such a place, and what is
    /// meant for the output would be written into it. What is opened instead refuses what the closed stream would.
    /// </summary>
    public static void Hold()
    {
        if (OperatingSystem.IsWindows())
            return;
        for (var descriptor = 0; descriptor < 3; descriptor++)
            if (Control(descriptor, GetFlags) < 0)
                _ = Open("/dev/null", descriptor == 0 ? WriteOnly : ReadOnly);
    }

    /// <summary>The columns of the terminal behind the output; 0 where that is not known.</summary>
    public static int Columns() =>
        OperatingSystem.IsLinux() && Terminal(1, WindowSize, out var size) == 0 ? size.Columns : 0;

    [LibraryImport("libc", EntryPoint = "fcntl")]
    private static partial int Control(int descriptor, int command);

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "ioctl")]
    private static partial int Terminal(int descriptor, nuint request, out Size size);

    [StructLayout(LayoutKind.Sequential)]
    private struct Size
    {
        public ushort Rows;
        public ushort Columns;
        public ushort WidthInPixels;
        public ushort HeightInPixels;
    }
}
