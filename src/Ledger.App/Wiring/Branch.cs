namespace Ledger.App.Wiring;

/// <summary>
/// A command that is made when the command line may mean it. To make all of them takes longer than to read the shelf,
/// and a command is chosen by its name, so one whose name is nowhere in the line is not needed. Where none is named,
/// all are made: for the help, and to say what is known.
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
        var isMeant = parent is RootCommand || bench.Line.Contains(parent.Name);
        var named = isMeant && !LooksAtAll(bench.Line)
            ? all.Where(branch => bench.Line.Contains(branch.Name)).ToList() : [];
        foreach (var branch in named.Count > 0 ? named : all)
            parent.Subcommands.Add(branch.Make(bench));
    }

    /// <summary>A directive in brackets, such as the one for completion, looks at the whole tree too.</summary>
    private static bool LooksAtAll(IReadOnlyList<string> line) =>
        line.Any(word => word.StartsWith('[') || _lookers.Contains(word));
}
