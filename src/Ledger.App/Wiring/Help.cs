using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Ledger.App.Wiring;

/// <summary>
/// The help of every command: what it is for, an example, the library's tables, then the command's own details.
/// </summary>
internal sealed class Help : SynchronousCommandLineAction
{
    private readonly HelpAction _tables;
    private readonly Func<string> _details;
    private readonly int _width;

    private Help(HelpAction tables, Func<string> details, int width) =>
        (_tables, _details, _width) = (tables, details, width);

    public override bool ClearsParseErrors => true;

    /// <summary>Puts it in the place of the library's help, under the names that POSIX and GNU programs use.</summary>
    public static void AddTo(RootCommand root, Func<string> details, int width)
    {
        root.Options.Remove(root.Options.OfType<HelpOption>().Single());
        var option = new HelpOption("--help", "-h") { Description = "show what a command does and accepts" };
        var tables = (HelpAction)option.Action!;
        tables.MaxWidth = width;
        option.Action = new Help(tables, details, width);
        root.Options.Add(option);
        root.Options.OfType<VersionOption>().Single().Description = "show the version";
    }

    public override int Invoke(ParseResult parse)
    {
        var (output, command) = (parse.InvocationConfiguration.Output, parse.CommandResult.Command);
        using var tables = new StringWriter { NewLine = "\n" };
        parse.InvocationConfiguration.Output = tables;
        _tables.Invoke(parse);
        parse.InvocationConfiguration.Output = output;
        var (purpose, below) = Parts(tables.ToString().ReplaceLineEndings("\n"));
        output.WriteLine($"{purpose}\n");
        if (Examples(command) is { Length: > 0 } examples)
            output.WriteLine($"{HelpText.Fitted(examples, _width)}\n");
        output.Write(below);
        output.WriteLine(HelpText.Fitted(command switch
        {
            ExplainedCommand explained => explained.Details,
            RootCommand => _details(),
            _ => "",
        }, _width));
        foreach (var line in (command as ExplainedCommand)?.More.SelectMany(text => HelpText.Fitted(text,
            _width).Split('\n')) ?? [])
            output.WriteLine(line);
        return ExitStatus.Done;
    }

    /// <summary>A command's own examples; of one that only holds others, those of the first.</summary>
    private static string Examples(Command command) => command is ExplainedCommand explained ? explained.Examples
        : command is not RootCommand && command.Subcommands is [var first, ..] ? Examples(first) : "";

    /// <summary>The library's first part, which says what the command is for, and all that follows.</summary>
    private static (string Purpose, string Below) Parts(string tables) =>
        tables.IndexOf("\n\n", StringComparison.Ordinal) is > 0 and var end
            ? (tables[..end], tables[(end + 2)..])
            : ("", tables);
}
