namespace Ledger.App.Wiring;

/// <summary>
/// A command that is made when the command line may mean it. To make all of them takes longer than to read the shelf,
/// and a command is chosen by its name, so one whose name is nowhere in the line is not needed. Where none is named,
/// all are made: for the help, and to say what is known. A line that says only where the ledger is and how the screens
/// look opens the screens, and needs none.
/// </summary>
/// <param name="Name">The command's name.</param>
/// <param name="Make">Makes it.</param>
internal sealed record Branch(string Name, Func<Workbench, Command> Make)
{
    /// <summary>Commands that look at the whole tree.</summary>
    private static readonly string[] _lookers = ["help", "manual"];

    /// <summary>Puts those that the line may mean under a command.</summary>
    /// <param name="parent">The command.</param>
    /// <param name="bench">What they work with, and the command line.</param>
    /// <param name="all">All that belong there, in their order.</param>
    public static void AddTo(Command parent, Workbench bench, IReadOnlyList<Branch> all)
    {
        foreach (var branch in bench.Line is { } line ? Meant(parent, line, all) : all)
            parent.Subcommands.Add(branch.Make(bench));
    }

    private static IReadOnlyList<Branch> Meant(Command parent, IReadOnlyList<string> line, IReadOnlyList<Branch> all)
    {
        if (parent is RootCommand && SaysOnlyValues(parent.Options, line))
            return [];
        var mayName = (parent is RootCommand || line.Contains(parent.Name)) && !LooksAtAll(line);
        Branch[] named = mayName ? [.. all.Where(branch => line.Contains(branch.Name))] : [];
        return named.Length > 0 ? named : all;
    }

    private static bool SaysOnlyValues(IList<Option> options, IReadOnlyList<string> line)
    {
        var isValue = false;
        foreach (var word in line)
            if (isValue)
                isValue = false;
            else if (options.Any(option => option.Name == word && option.Arity.MinimumNumberOfValues == 1))
                isValue = true;
            else
                return false;
        return !isValue;
    }

    /// <summary>A directive in brackets, such as the one for completion, looks at the whole tree too.</summary>
    private static bool LooksAtAll(IReadOnlyList<string> line) =>
        line.Any(word => word.StartsWith('[') || _lookers.Contains(word));
}
