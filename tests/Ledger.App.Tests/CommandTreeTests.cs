using System.CommandLine;

namespace Ledger.App.Tests;

/// <summary>
/// Every command of the tree, with values left out, cut short or senseless: always a sentence, never a report of the
/// runtime's.
/// </summary>
public class CommandTreeTests
{
    /// <summary>Commands whose values are names of files that they would write.</summary>
    private static readonly string[] _writers = ["export", "calendar", "backup", "demo"];

    public static TheoryData<string> Commands => [.. Leaves(Root(), "").Select(leaf => leaf.Path)];

    /// <summary>
    /// Every command with each value in each of its places. An option that most commands have is read by one reader:
    /// each command tries it with one of the values, and all of them together try each.
    /// </summary>
    [Theory]
    [MemberData(nameof(Commands))]
    public void Whatever_is_typed_ends_with_a_sentence(string path)
    {
        using var room = Darkroom.WithDemoYear();
        var leaves = Leaves(Root(), "").ToList();
        var turn = leaves.FindIndex(leaf => leaf.Path == path);
        var command = leaves[turn].Command;
        var common = leaves.SelectMany(leaf => leaf.Command.Options).CountBy(option => option.Name)
            .Where(option => option.Value > leaves.Count / 4).Select(option => option.Key).ToHashSet();
        var names = path.Split(' ');
        var arguments = command.Arguments.Count + 1;
        string[] values = _writers.Contains(names[0])
            ? ["", room.PathOf("junk")]
            : ["", "F4", "fen80", "99999999999999999999", "12", room.PathOf("junk")];
        foreach (var value in values)
        {
            for (var given = 0; given <= arguments; given++)
                Proved(room, [.. names, .. Enumerable.Repeat(value, given)]);
            foreach (var option in command.Options)
                if (!common.Contains(option.Name) || value == values[turn % values.Length])
                    Proved(room, [.. names, .. Enumerable.Repeat(value, arguments - 1), option.Name, value]);
        }

        foreach (var option in command.Options)
            Proved(room, [.. names, option.Name]);
    }

    /// <summary>
    /// A command that is made alone because the line names it is the one that stands in the whole tree.
    /// </summary>
    [Theory]
    [MemberData(nameof(Commands))]
    public void A_line_finds_its_command_whether_all_are_made_or_only_what_it_names(string path)
    {
        var names = path.Split(' ');
        var (whole, sought) = (Root(), Root(names));
        Assert.Equal(
            Path(whole.Parse(names).CommandResult.Command), Path(sought.Parse([.. names]).CommandResult.Command));
        Assert.Equal(path, Path(sought.Parse(names).CommandResult.Command));
        if (names[0] is not ("help" or "manual"))
            Assert.True(sought.Subcommands.Count < whole.Subcommands.Count);
    }

    /// <summary>What looks at all commands has them all; where none is named, neither is one missing.</summary>
    [Theory]
    [InlineData("help", "show", "today")]
    [InlineData("manual")]
    [InlineData("[suggest:12]", "trayledger show")]
    [InlineData("shwo", "today")]
    [InlineData("--help")]
    [InlineData("--version")]
    public void Whoever_looks_at_all_commands_finds_them(params string[] line) =>
        Assert.Equal(Leaves(Root(), "").Select(leaf => leaf.Path), Leaves(Root(line), "").Select(leaf => leaf.Path));

    /// <summary>What opens the screens waits for no command to be made; what only looks like it has all.</summary>
    [Theory]
    [InlineData(0, "--file", "show.db")]
    [InlineData(0, "--theme", "dark", "--file", "show.db")]
    [InlineData(15, "--file")]
    [InlineData(15, "--file", "show.db", "shelff")]
    [InlineData(15, "--fiel", "show.db")]
    [InlineData(1, "--file", "show.db", "trace")]
    public void A_line_that_opens_the_screens_needs_no_command(int made, params string[] line) =>
        Assert.Equal(made, Root(line).Subcommands.Count);

    private static string Path(Command command) => string.Join(' ', command.Parents.OfType<Command>()
        .Where(parent => parent is not RootCommand).Select(parent => parent.Name).Append(command.Name));

    private static void Proved(Darkroom room, string[] line)
    {
        var ran = room.Run(line);
        if (line.Contains("--exit-code") && ran.Status == ExitStatus.NeedsTheUser)
            return;
        Assert.True(
            ran.Status is 0 or 2 or 3 or 4 && !ran.Error.Contains("   at ", StringComparison.Ordinal)
                && !ran.Error.Contains("fault of", StringComparison.Ordinal),
            $"{string.Join(' ', line.Select(word => $"'{word}'"))} ended with {ran.Status}: {ran.Error}");
        Assert.True(ran.Status == 0 || ran.Error.Length > 0,
            $"{string.Join(' ', line)} ended with {ran.Status} and said nothing");
    }

    private static RootCommand Root(params string[] line)
    {
        using var room = new Darkroom();
        return Program.Commands(new Workbench(new()
        {
            Out = TextWriter.Null, Error = TextWriter.Null, In = () => Stream.Null, Clock = room.Clock,
            Variable = _ => null,
        }) { Line = line.Length > 0 ? line : null });
    }

    private static IEnumerable<(string Path, Command Command)> Leaves(Command command, string path) =>
        command.Subcommands.Count == 0
            ? [(path, command)]
            : command.Subcommands.SelectMany(sub => Leaves(sub, path.Length == 0 ? sub.Name : $"{path} {sub.Name}"));
}
