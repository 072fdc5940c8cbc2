using Ledger.App.Commands.Files;
using Ledger.App.Commands.Plan;
using Ledger.App.Commands.Print;
using Ledger.App.Commands.Record;
using Ledger.App.Commands.Show;
using Ledger.App.Screens;

namespace Ledger.App;

/// <summary>The program: its commands, one line each.</summary>
internal static class Program
{
    private const string Purpose =
        "Keeps the books of a darkroom: film, chemistry, baths, sessions and what they cost.";

    private static string Details() => $"""
        Without a command it opens the terminal screens.
        To look around in an invented year: trayledger demo

        {ExitStatuses()}
        A fault is explained in full where the variable TRAYLEDGER_TRACE is 1.
        """;

    private static readonly Branch[] _branches =
    [
        new("show", bench => new ShowCommands(bench)),
        new("record", bench => new RecordCommands(bench)),
        new("trace", bench => new TraceCommand(bench)),
        new("plan", bench => new PlanCommands(bench)),
        new("print", bench => new PrintCommands(bench)),
        new("import", bench => new ImportCommand(bench)),
        new("export", bench => new ExportCommand(bench)),
        new("join", bench => new JoinCommand(bench)),
        new("calendar", bench => new CalendarCommand(bench)),
        new("check", bench => new CheckCommand(bench)),
        new("backup", bench => new BackUpCommand(bench)),
        new("demo", bench => new DemoCommand(bench)),
        new("completion", bench => new CompletionCommand(bench)),
        new("help", bench => new HelpCommand(bench)),
        new("manual", bench => new ManualCommand(bench)),
    ];

    public static int Main(string[] args)
    {
        Descriptors.Hold();
        ThisProcess.ExplainFaults();
        return Run(args, ThisProcess.Surroundings(TerminalScreens.IfAttached));
    }

    internal static int Run(IReadOnlyList<string> args, Surroundings around)
    {
        var shown = around with { Out = new ShownText(around.Out), Error = new ShownText(around.Error) };
        var bench = new Workbench(shown) { Line = args };
        return Invocation.Run(Commands(bench), args, bench);
    }

    /// <summary>The tree of commands, as far as the line may mean them.</summary>
    internal static RootCommand Commands(Workbench bench)
    {
        var theme = TerminalStart.ThemeOption();
        var root = new ProgramRoot(bench, Purpose)
        {
            bench.File,
            theme,
        };
        Branch.AddTo(root, bench, _branches);
        Help.AddTo(root, Details, bench.Around.Width);
        root.SetAction(parse => TerminalStart.Open(bench, bench.PathIn(parse), parse.GetValue(theme)));
        return root;
    }

    /// <summary>A status and the first word of its meaning stay on one line.</summary>
    private static string ExitStatuses() => string.Join('\n', Wrapping.Of(
        "Exit status: "
            + $"{string.Join("; ", ExitStatus.Meanings.Select(one => $"{one.Status}\u00A0{one.Meaning}"))}.", 80))
        .Replace('\u00A0', ' ');
}
