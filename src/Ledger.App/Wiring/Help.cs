using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Ledger.App.Wiring;

/// <summary>The help of every command: the library's tables, then the command's own details.</summary>
internal sealed class Help : SynchronousCommandLineAction
{
    private readonly HelpAction _tables;
    private readonly string _details;

    private Help(HelpAction tables, string details) => (_tables, _details) = (tables, details);

    public override bool ClearsParseErrors => true;

    /// <summary>Puts it in the place of the library's help, under the names that POSIX and GNU programs use.</summary>
    public static void AddTo(RootCommand root, string details, int width)
    {
        root.Options.Remove(root.Options.OfType<HelpOption>().Single());
        var option = new HelpOption("--help", "-h") { Description = "show what a command does and accepts" };
        var tables = (HelpAction)option.Action!;
        tables.MaxWidth = width;
        option.Action = new Help(tables, details);
        root.Options.Add(option);
        root.Options.OfType<VersionOption>().Single().Description = "show the version";
    }

    public override int Invoke(ParseResult parse)
    {
        _tables.Invoke(parse);
        var output = parse.InvocationConfiguration.Output;
        output.WriteLine(parse.CommandResult.Command switch
        {
            ExplainedCommand explained => explained.Details,
            RootCommand => _details,
            _ => "",
        });
        return ExitStatus.Done;
    }
}
