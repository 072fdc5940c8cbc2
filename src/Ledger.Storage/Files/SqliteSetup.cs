using System.Runtime.InteropServices;
using SQLitePCL;

namespace Ledger.Storage.Files;

/// <summary>
/// What SQLite is told before the first connection. Each statement that sorts or gathers takes about 85 kB and gives
/// them back at its end; where they lie last, glibc hands them to the system each time, and an import spent two thirds
/// of its time on that. So what is freed stays with the program for what is asked for next. SQLite would keep count of
/// each piece under one lock, a sixteenth of all that a short command does, for a figure that nothing here asks for.
/// And it would take a lock for each call, although a ledger is used by one thread at a time: a twelfth of reading
/// costs.
/// </summary>
internal static partial class SqliteSetup
{
    // Of malloc.h: how much may lie unused before it is given back, and how much is asked for beyond what is needed.
    private const int TrimThreshold = -1;
    private const int TopPad = -2;

    // Of sqlite3.h: SQLITE_CONFIG_MULTITHREAD, a connection by one thread at a time, and SQLITE_CONFIG_MEMSTATUS.
    private const int OneThreadAtATime = 2;
    private const int CountMemory = 9;

    private static readonly Lazy<bool> _prepared = new(Ask);

    /// <summary>
    /// Asks for it, once and before the first connection; where a library knows no such wish, nothing changes.
    /// </summary>
    public static void Prepare() => _ = _prepared.Value;

    private static bool Ask()
    {
        Batteries_V2.Init();
        return raw.sqlite3_config(OneThreadAtATime) == raw.SQLITE_OK
            & raw.sqlite3_config(CountMemory, 0) == raw.SQLITE_OK & IsKept();
    }

    private static bool IsKept()
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
