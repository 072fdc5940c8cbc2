using System.Runtime.InteropServices;
using System.Text;
using Microsoft.Win32.SafeHandles;
using NodaTime.Extensions;
using NodaTime.TimeZones;

namespace Ledger.App.Wiring;

/// <summary>The surroundings of the running process: the only place that touches its streams and signals.</summary>
internal static class ThisProcess
{
    /// <summary>The variable that says how many columns text may take (POSIX).</summary>
    public const string ColumnsVariable = "COLUMNS";

    private const int UsualColumns = 80, FewestColumns = 40;

    private static readonly List<PosixSignalRegistration> _watched = [];
    private static int _signal = 2;

    /// <summary>
    /// Whatever nobody has caught, on any thread, ends with a sentence, not with the runtime's own report.
    /// </summary>
    public static void ExplainFaults() => AppDomain.CurrentDomain.UnhandledException += (_, fault) =>
    {
        try
        {
            using var error = Writer(ErrorStream());
            error.WriteLine(Trouble.Fault((Exception)fault.ExceptionObject,
                "what was confirmed is recorded", IsTraced));
        }
        catch (IOException)
        {
            // Nobody is left who could be told.
        }

        Environment.Exit(ExitStatus.Fault);
    };

    /// <param name="screens">Makes the terminal screens, or null where there is no terminal.</param>
    public static Surroundings Surroundings(Func<IScreens?> screens)
    {
        if (OperatingSystem.IsWindows() && !Console.IsOutputRedirected)
            Console.OutputEncoding = Encoding.UTF8;
        var output = OutputStream();
        return new()
        {
            Out = Writer(output),
            Bytes = from => from.CopyTo(output),
            Error = Writer(ErrorStream()),
            In = Input,
            // The system's own rules for the zone: those of the library would have to be unpacked first.
            Clock = SystemClock.Instance.InZone(BclDateTimeZone.ForSystemDefault()),
            Variable = Environment.GetEnvironmentVariable,
            Width = Width(Environment.GetEnvironmentVariable, Terminal()),
            IsWatched = !Console.IsErrorRedirected,
            Interrupts = Interrupts,
            Signal = () => _signal,
            Screens = screens,
        };
    }

    private static bool IsTraced => Trouble.IsTraced(Environment.GetEnvironmentVariable);

    private static Stream OutputStream() =>
        OperatingSystem.IsWindows() ? Console.OpenStandardOutput() : new StandardStream(1, "the output");

    private static Stream ErrorStream() =>
        OperatingSystem.IsWindows() ? Console.OpenStandardError() : new StandardStream(2, "the messages");

    /// <summary>The console library would put a terminal into a mode of its own before it reads from it.</summary>
    private static Stream Input() => OperatingSystem.IsWindows()
        ? Console.OpenStandardInput()
        : new FileStream(new SafeFileHandle(0, ownsHandle: false), FileAccess.Read);

    /// <summary>As the variable says, else as wide as the terminal, else as wide as terminals usually are.</summary>
    internal static int Width(Func<string, string?> variable, int terminal) =>
        Math.Max(FewestColumns, Said(variable) ?? (terminal > 0 ? terminal : UsualColumns));

    private static int? Said(Func<string, string?> variable) =>
        int.TryParse(variable(ColumnsVariable), NumberStyles.None, CultureInfo.InvariantCulture, out var columns)
            && columns > 0 ? columns : null;

    private static int Terminal() => OperatingSystem.IsWindows() && !Console.IsOutputRedirected
        ? Console.WindowWidth
        : Descriptors.Columns();

    private static StreamWriter Writer(Stream stream) =>
        new(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false)) { AutoFlush = false };

    /// <summary>The first signal cancels the work in hand; a second one ends the program.</summary>
    private static CancellationToken Interrupts()
    {
        var source = new CancellationTokenSource();
        foreach (var (signal, number) in new[] { (PosixSignal.SIGINT, 2), (PosixSignal.SIGTERM, 15),
            (PosixSignal.SIGHUP, 1) })
            _watched.Add(PosixSignalRegistration.Create(signal, came =>
            {
                came.Cancel = !source.IsCancellationRequested;
                _signal = number;
                source.Cancel();
            }));
        return source.Token;
    }
}
