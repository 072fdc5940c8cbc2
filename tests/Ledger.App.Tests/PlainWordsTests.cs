using System.CommandLine;
using Ledger.Core.Tests.Architecture;

namespace Ledger.App.Tests;

/// <summary>What the program prints, sentences composed at run time among it, is in plain words.</summary>
public sealed class PlainWordsTests
{
    /// <summary>Pages of the demo year beside its readings, one a line.</summary>
    private const string Pages = """
        plan session --process film --sheets "40 fen80 N" --bath F4
        print mixing-sheet --from-plan tarn
        print bottle-label syrup F4
        print box-label fen80 N
        print sleeve-labels S22
        print tally-slip F4
        print wall-card
        print cost-report
        manual
        """;

    public static TheoryData<string> Lines => [.. Readings.With(Pages)];

    [Theory]
    [MemberData(nameof(Lines))]
    public void A_page_holds_no_phrase_that_is_not_plain(string line)
    {
        using var room = Darkroom.WithDemoYear();
        Assert.Empty(NeverInText.In(room.Do([.. CommandLine.Words(line)])));
    }

    [Fact]
    public void The_help_of_every_command_holds_none()
    {
        using var room = new Darkroom();
        Assert.All(CommandLine.All(room), path =>
        {
            var help = room.RunAnywhere([.. path, "--help"]);
            Assert.Equal(0, help.Status);
            Assert.Empty(NeverInText.In(help.Out));
        });
    }
}

/// <summary>Command lines as they are typed.</summary>
internal static class CommandLine
{
    /// <summary>The words of a line; what stands between quotes is one.</summary>
    public static IEnumerable<string> Words(string line) =>
        System.CommandLine.Parsing.CommandLineParser.SplitCommandLine(line);

    /// <summary>The whole tree.</summary>
    public static RootCommand Root(Darkroom room) => Program.Commands(new Workbench(new()
    {
        Out = TextWriter.Null, Error = TextWriter.Null, In = () => Stream.Null, Clock = room.Clock,
        Variable = _ => null,
    }));

    /// <summary>The paths of all commands, the root's own among them.</summary>
    public static IEnumerable<string[]> All(Darkroom room) => Paths(Root(room), []);

    private static IEnumerable<string[]> Paths(Command command, string[] path) =>
        command.Subcommands.SelectMany(sub => Paths(sub, [.. path, sub.Name])).Prepend(path);
}
