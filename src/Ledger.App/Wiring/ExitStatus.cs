namespace Ledger.App.Wiring;

/// <summary>How a command ended, for scripts.</summary>
internal static class ExitStatus
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>A fault of the program.</summary>
    public const int Fault = 1;

    /// <summary>The command line is wrong.</summary>
    public const int WrongCommandLine = 2;

    /// <summary>Refused, with the reason, and nothing was written.</summary>
    public const int Refused = 3;

    /// <summary>A file cannot be used.</summary>
    public const int UnusableFile = 4;

    /// <summary>Something needs the user: only where they asked to be told so.</summary>
    public const int NeedsTheUser = 10;

    /// <summary>
    /// Stopped by the user with Ctrl+C: 128 + the number of the interrupt signal, as shells count it.
    /// </summary>
    public const int Interrupted = 130;

    /// <summary>
    /// Whoever read the output has left: 128 + the number of the signal for that, as shells count it.
    /// </summary>
    public const int ReaderLeft = 141;

    /// <summary>What each means, in words for the user.</summary>
    public static IReadOnlyList<(string Status, string Meaning)> Meanings { get; } =
    [
        ($"{Done}", "done"),
        ($"{Fault}", "a fault of the program"),
        ($"{WrongCommandLine}", "the command line is wrong"),
        ($"{Refused}", "refused, and nothing was written"),
        ($"{UnusableFile}",
            "a file cannot be used (not there, locked, damaged, made by a newer version) or the output cannot be "
                + "written"),
        ($"{NeedsTheUser}", "something must be done now or soon, where `show today --exit-code` asked for it"),
        ($"{Interrupted}", "stopped by Ctrl+C"),
        ($"{StoppedBy(1)} or {StoppedBy(15)}", "stopped by another signal"),
        ($"{ReaderLeft}", "whoever read the output has left"),
    ];

    /// <summary>Stopped by a signal, as shells count it.</summary>
    public static int StoppedBy(int signal) => 128 + signal;
}
