using System.Runtime.InteropServices;

namespace Ledger.Terminal.Shell;

/// <summary>Stopping like any other program of a shell; `fg` continues it.</summary>
internal static partial class JobControl
{
    private const int ParentField = 1;
    private static readonly int StopNow = OperatingSystem.IsLinux() ? 19 : 17;
    private static readonly int AskToStop = OperatingSystem.IsLinux() ? 20 : 18;

    /// <summary>
    /// Whether a shell is there that would continue it: the parent of its group stands in the same session
    /// (POSIX.1-2017, 3.269, orphaned process group). A terminal that runs nothing else would be stuck for ever.
    /// </summary>
    public static bool CanStop
    {
        get
        {
            var leader = GroupOf(0);
            var parent = leader == Environment.ProcessId ? Parent() : ParentOf(leader);
            return parent > 0 && SessionOf(parent) == SessionOf(0);
        }
    }

    /// <summary>Stops this process until it is continued.</summary>
    public static void Stop() => _ = Kill(Environment.ProcessId, StopNow);

    /// <summary>Asks the whole group to stop, as the terminal does for its stop key in line mode.</summary>
    public static void Ask() => _ = Kill(0, AskToStop);

    private static int ParentOf(int process)
    {
        try
        {
            // The name of the program stands in brackets and may hold anything; the state and the parent come behind
            // it.
            var status = File.ReadAllText($"/proc/{process}/stat");
            return int.Parse(status[(status.LastIndexOf(')') + 2)..].Split(' ')[ParentField],
                System.Globalization.CultureInfo.InvariantCulture);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return 0;
        }
    }

    [LibraryImport("libc", EntryPoint = "kill")]
    private static partial int Kill(int process, int signal);

    [LibraryImport("libc", EntryPoint = "getppid")]
    private static partial int Parent();

    [LibraryImport("libc", EntryPoint = "getpgid")]
    private static partial int GroupOf(int process);

    [LibraryImport("libc", EntryPoint = "getsid")]
    private static partial int SessionOf(int process);
}
