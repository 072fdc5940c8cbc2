using System.CommandLine;
using System.Text.RegularExpressions;

namespace Ledger.App.Tests;

/// <summary>
/// The help teaches: what a command is for, one worked example that really works on the demo year, and the words of the
/// trade.
/// </summary>
public sealed partial class HelpTests
{
    /// <summary>Files that the examples read, and what they are copied from; a null is the ledger itself.</summary>
    private static readonly (string Name, string? From)[] _files =
        [("deliveries.csv", "deliveries.csv"), ("laptop.db", null)];

    public static TheoryData<string> Commands
    {
        get
        {
            using var room = new Darkroom();
            return [.. CommandLine.All(room).Where(path => path.Length > 0).Select(path => string.Join(' ', path))];
        }
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void A_command_begins_with_what_it_is_for_and_an_example(string path)
    {
        using var room = new Darkroom();
        var lines = room.RunAnywhere([.. path.Split(' '), "--help"]).Out.Split('\n');
        Assert.Equal("Description:", lines[0]);
        var purpose = string.Join(' ', lines.Skip(1).TakeWhile(line => line.Length > 0).Select(line => line.Trim()));
        Assert.Matches(@"^[A-Z][^\n]*\.$", purpose);
        Assert.StartsWith("Example", lines.Skip(1).SkipWhile(line => line.Length > 0).Skip(1).First(),
            StringComparison.Ordinal);
    }

    /// <summary>The examples of a command are run one after the other, as they stand there.</summary>
    [Theory]
    [MemberData(nameof(Commands))]
    public void Its_examples_work_on_the_demo_year(string path)
    {
        using var room = Darkroom.WithDemoYear();
        foreach (var (name, from) in _files)
            File.Copy(from is null ? room.Ledger : Path.Combine(SampleData.Folder, from), room.PathOf(name));
        if (path == "import")
            room.Do("export", room.PathOf("ledger-2026"));
        foreach (var example in ExamplesOf(room, path.Split(' ')))
        {
            var words = CommandLine.Words(example).Skip(1).TakeWhile(word => word is not (">" or "|"))
                .Select(word => Place(word, room));
            var ran = room.Run([.. words]);
            Assert.True(ran.Status == 0, $"{example}\n{ran.Error}");
        }
    }

    [Theory]
    [InlineData("fixer factor")]
    [InlineData("fixer-factor")]
    [InlineData("One-Shot")]
    [InlineData("two-bath")]
    [InlineData("clip test")]
    [InlineData("lead time")]
    [InlineData("service level")]
    [InlineData("N+1")]
    public void A_word_is_explained(string word)
    {
        using var room = new Darkroom();
        Assert.Contains($"{TradeWords.Named(word)!.Word}: ", room.RunAnywhere(["help", .. word.Split(' ')]).Out,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Alone_it_lists_the_commands_and_the_words()
    {
        using var room = new Darkroom();
        var help = room.RunAnywhere("help").Out;
        Assert.All(CommandLine.All(room).Where(path => path.Length == 1),
            path => Assert.Contains($"  {path[0]} ", help, StringComparison.Ordinal));
        var words = help.ReplaceLineEndings(" ").Replace("   ", " ", StringComparison.Ordinal);
        Assert.All(TradeWords.All, term => Assert.Contains(term.Word, words, StringComparison.Ordinal));
    }

    [Fact]
    public void A_command_is_explained_too_and_a_slip_names_what_may_be_meant()
    {
        using var room = new Darkroom();
        Assert.Equal(room.RunAnywhere("record", "keeper", "--help").Out,
            room.RunAnywhere("help", "record", "keeper").Out);
        var ran = room.RunAnywhere("help", "clearing", "tset");
        Assert.Equal(ExitStatus.Refused, ran.Status);
        Assert.Contains("near it: clearing test", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_word_leads_to_is_a_command() =>
        Assert.All(TradeWords.All.Where(term => term.See.Length > 0), term =>
        {
            using var room = new Darkroom();
            Assert.Contains(CommandLine.All(room), path => string.Join(' ', path) == term.See);
        });

    private static IEnumerable<string> ExamplesOf(Darkroom room, string[] path)
    {
        var command = path.Aggregate((Command)CommandLine.Root(room),
            (at, name) => at.Subcommands.Single(sub => sub.Name == name));
        return command is ExplainedCommand explained
            ? Program().Split(explained.Examples.Replace('\n', ' ')).Skip(1)
                .Select(
                    rest =>
                        "trayledger "
                            + $"{Blanks().Replace(rest, " ").Replace("Example:", "", StringComparison.Ordinal).Trim()}")
            : [];
    }

    /// <summary>A word that names a file stands for one in the darkroom.</summary>
    private static string Place(string word, Darkroom room) =>
        word == "sample-data" ? SampleData.Folder : FileName().IsMatch(word) ? room.PathOf(word) : word;

    [GeneratedRegex(@"(?<=^|\s)trayledger\s")]
    private static partial Regex Program();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();

    [GeneratedRegex(@"^(ledger-2026|[\w-]+(/[\w-]+)?\.(db|html|csv|ics|jsonl))$")]
    private static partial Regex FileName();
}
