using System.CommandLine;
using Ledger.App.Commands.Files;
using Ledger.App.Commands.Plan;
using Ledger.App.Commands.Print;
using Ledger.App.Commands.Record;
using Ledger.App.Commands.Show;
using Ledger.App.Output;
using Ledger.App.Screens;
using Ledger.App.Wiring;

namespace Ledger.App;

/// <summary>The program: its commands, one line each.</summary>
internal static class Program
{
    private const string Purpose = "Keeps the books of a darkroom: film, chemistry, baths, sessions and what they cost.";

    private const string Details = """
        Without a command it opens the terminal screens.
        To look around in an invented year: trayledger demo

        Exit status: 0 done; 1 a fault of the program; 2 the command line is wrong;
        3 refused, and nothing was written; 4 a file cannot be used (not there, locked,
        damaged, made by a newer version) or the output cannot be written; 10 something
        must be done now or soon, where `show today --exit-code` asked for it;
        130 stopped by Ctrl+C, 129 or 143 by another signal; 141 whoever read the output
        has left. A fault is explained in full where the variable TRAYLEDGER_TRACE is 1.
        """;

    public static int Main(string[] args)
    {
        ThisProcess.HoldDescriptors();
        ThisProcess.ExplainFaults();
        return Run(args, ThisProcess.Surroundings(TerminalScreens.IfAttached));
    }

    internal static int Run(IReadOnlyList<string> args, Surroundings around)
    {
        var bench = new Workbench(around with { Out = new ShownText(around.Out), Error = new ShownText(around.Error) });
        return Invocation.Run(Commands(bench), args, bench);
    }

    /// <summary>The whole tree of commands.</summary>
    internal static RootCommand Commands(Workbench bench)
    {
        var theme = TerminalStart.ThemeOption();
        var root = new ProgramRoot(bench, Purpose)
        {
            bench.File,
            theme,
            new ShowCommands(bench),
            new RecordCommands(bench),
            new TraceCommand(bench),
            new PlanCommands(bench),
            new PrintCommands(bench),
            new ImportCommand(bench),
            new ExportCommand(bench),
            new JoinCommand(bench),
            new CalendarCommand(bench),
            new CheckCommand(bench),
            new BackUpCommand(bench),
            new DemoCommand(bench),
            new CompletionCommand(bench),
            new HelpCommand(bench),
            new ManualCommand(bench, Details),
        };
        Help.AddTo(root, Details, bench.Around.Width);
        root.SetAction(parse => TerminalStart.Open(bench, bench.PathIn(parse), parse.GetValue(theme)));
        return root;
    }
}
