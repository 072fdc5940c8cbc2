using System.CommandLine;
using System.CommandLine.Invocation;
using System.CommandLine.Parsing;
using Ledger.Storage;

namespace Ledger.App.Wiring;

/// <summary>Runs a command line and turns every way in which it can end into its exit status and a sentence.</summary>
internal static class Invocation
{
    public static int Run(RootCommand root, IReadOnlyList<string> args, Surroundings around)
    {
        try
        {
            // A value that starts with an at-sign is the user's text, not the name of a file with more of the command line.
            var parse = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
            return parse.Action is ParseErrorAction ? Explain(parse, around) : Invoke(parse, around.Out, around.Error);
        }
        catch (Exception exception)
        {
            var (status, sentence) = Meaning(exception);
            around.Error.WriteLine(sentence);
            return status;
        }
        finally
        {
            around.Out.Flush();
            around.Error.Flush();
        }
    }

    private static int Invoke(ParseResult parse, TextWriter output, TextWriter error) =>
        parse.Invoke(new() { Output = output, Error = error, EnableDefaultExceptionHandler = false });

    private static int Explain(ParseResult parse, Surroundings around)
    {
        foreach (var problem in parse.Errors.Select(problem => problem.Message).Distinct())
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

    private static (int Status, string Sentence) Meaning(Exception exception) => exception switch
    {
        FormatException wrong => (ExitStatus.WrongCommandLine, wrong.Message),
        RefusedByCommandException refused => (ExitStatus.Refused, refused.Message),
        LedgerFileException unusable => (ExitStatus.UnusableFile, unusable.Message),
        IOException or UnauthorizedAccessException => (ExitStatus.UnusableFile, exception.Message),
        OperationCanceledException => (ExitStatus.Interrupted, "stopped; nothing of it was written"),
        _ => (ExitStatus.Fault, $"this is a fault of the program, and nothing of this command was written: {exception}"),
    };
}
