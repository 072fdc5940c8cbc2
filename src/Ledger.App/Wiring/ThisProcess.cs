using System.Text;
using NodaTime;
using NodaTime.Extensions;

namespace Ledger.App.Wiring;

/// <summary>The surroundings of the running process: the only place that touches its console.</summary>
internal static class ThisProcess
{
    public static Surroundings Surroundings()
    {
        if (OperatingSystem.IsWindows() && !Console.IsOutputRedirected)
            Console.OutputEncoding = Encoding.UTF8;
        return new()
        {
            Out = Writer(Console.OpenStandardOutput()),
            Error = Writer(Console.OpenStandardError()),
            In = Console.OpenStandardInput,
            Clock = SystemClock.Instance.InTzdbSystemDefaultZone(),
            Variable = Environment.GetEnvironmentVariable,
            Width = Console.IsOutputRedirected ? 80 : Math.Max(80, Console.WindowWidth),
            IsWatched = !Console.IsErrorRedirected,
            Interrupts = Interrupts,
            Screens = TerminalScreens.IfAttached,
        };
    }

    private static StreamWriter Writer(Stream stream) =>
        new(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false)) { AutoFlush = false };

    /// <summary>The first interrupt cancels the work in hand; a second one ends the program.</summary>
    private static CancellationToken Interrupts()
    {
        var source = new CancellationTokenSource();
        Console.CancelKeyPress += (_, pressed) =>
        {
            pressed.Cancel = !source.IsCancellationRequested;
            source.Cancel();
        };
        return source.Token;
    }
}
