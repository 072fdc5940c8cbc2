using System.CommandLine.Invocation;
using System.CommandLine.Parsing;

namespace Ledger.App.Wiring;

/// <summary>Runs a command line and turns every way in which it can end into its exit status and a sentence.</summary>
internal static class Invocation
{
    public static int Run(RootCommand root, IReadOnlyList<string> args, Workbench bench)
    {
        var around = bench.Around;
        var isLost = false;
        var status = Guarded(() =>
        {
            // A value that starts with an at-sign is the user's text, not the name of a file with more of the command
            // line.
            var parse = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
            return parse.Action is ParseErrorAction ? Explain(parse, Slips.In(parse), around)
                : Slips.Swallowed(parse, args) is { Length: > 0 } slip ? Explain(parse, [slip], around)
                : Invoke(parse, around.Out, around.Error);
        });
        var flushed = isLost ? status : Guarded(() =>
        {
            around.Out.Flush();
            return ExitStatus.Done;
        });
        Told(around.Error.Flush);
        return flushed == ExitStatus.Done ? status : flushed;

        int Guarded(Func<int> work)
        {
            try
            {
                return work();
            }
            catch (Exception exception)
            {
                isLost = exception is OutputLostException;
                var (ended, sentence) = Trouble.Of(exception, bench);
                if (sentence.Length > 0)
                    Told(() => around.Error.WriteLine(sentence));
                return ended;
            }
        }
    }

    /// <summary>Messages that cannot be written are lost; the exit status still tells how it ended.</summary>
    private static void Told(Action say)
    {
        try
        {
            say();
        }
        catch (IOException)
        {
            // Nobody is left who could be told.
        }
    }

    private static int Invoke(ParseResult parse, TextWriter output, TextWriter error) =>
        parse.Invoke(new() { Output = output, Error = error, EnableDefaultExceptionHandler = false });

    private static int Explain(ParseResult parse, IEnumerable<string> problems, Surroundings around)
    {
        foreach (var problem in problems)
            around.Error.WriteLine(problem);
        around.Error.WriteLine($"`{CommandPath(parse)} --help` tells what is accepted");
        return ExitStatus.WrongCommandLine;
    }

    private static string CommandPath(ParseResult parse)
    {
        var names = new Stack<string>();
        for (var result = parse.CommandResult; result?.Parent is not null; result = result.Parent as CommandResult)
            names.Push(result.Command.Name);
        return string.Join(' ', names.Prepend("trayledger"));
    }
}
