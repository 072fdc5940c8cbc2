using System.Runtime.InteropServices;

namespace Ledger.Storage.Files;

/// <summary>
/// What SQLite frees stays with the program for what it asks for next. Each statement that sorts or gathers takes about
/// 85 kB and gives them back at its end; where they lie last, glibc hands them to the system each time, and an import
/// spent two thirds of its time on that.
/// </summary>
internal static partial class FreedMemory
{
    // Of malloc.h: how much may lie unused before it is given back, and how much is asked for beyond what is needed.
    private const int TrimThreshold = -1;
    private const int TopPad = -2;

    private static readonly Lazy<bool> _kept = new(Ask);

    /// <summary>Asks for it, once; where the C library knows no such wish, nothing changes.</summary>
    public static void Keep() => _ = _kept.Value;

    private static bool Ask()
    {
        if (!OperatingSystem.IsLinux())
            return false;
        try
        {
            return Option(TrimThreshold, 16 << 20) != 0 & Option(TopPad, 1 << 20) != 0;
        }
        catch (EntryPointNotFoundException)
        {
            return false;
        }
    }

    [LibraryImport("libc", EntryPoint = "mallopt")]
    private static partial int Option(int what, int value);
}
