using Ledger.Storage;
using Ledger.Storage.Files;

namespace Ledger.App.Commands.Files;

/// <summary>join: what a copy of the ledger knows that was written to elsewhere.</summary>
internal sealed class JoinCommand : ExplainedCommand
{
    private readonly Workbench _bench;
    private readonly Argument<string> _other = Typed.Argument("other", Text.NotEmpty, "the other ledger, which is only read; - is the standard input");
    private readonly Option<bool> _dryRun = new("--dry-run") { Description = "show what would happen, and write nothing" };

    public JoinCommand(Workbench bench)
        : base("join", "Adds what another copy of this ledger knows, when both were written to.", """
            Entries that stand in both are the same entry. What follows from all of them
            together is worked out again. Where the two contradict each other (both gave a
            box the same name, both drew the last sheet, both amended one entry) nothing
            is joined, and the sentence names both. Joining the other way round gives the
            same ledger.
            Example: trayledger join laptop.db --dry-run
            """)
    {
        _bench = bench;
        Arguments.Add(_other);
        Options.Add(_dryRun);
        SetAction(Run);
    }

    /// <summary>Adds lines of a journal to a ledger, and says what came of it.</summary>
    public static int Join(LedgerFile ledger, IEnumerable<string> lines, bool isDry, Workbench bench)
    {
        var outcome = ledger.Join(lines.Where(line => line.Length > 0), isDry);
        if (outcome.Refusal is { } refusal)
        {
            bench.Say(refusal);
            return ExitStatus.Refused;
        }

        var sentence = $"{Counted.Of(outcome.Added, "entry")} added, {outcome.Known} known already";
        if (!isDry)
            bench.Written = sentence;
        bench.Around.Out.WriteLine(sentence);
        if (isDry)
            bench.Say("nothing was written: this was a dry run");
        return ExitStatus.Done;
    }

    private int Run(ParseResult parse)
    {
        using var ledger = _bench.Open(parse);
        var name = parse.GetRequiredValue(_other);
        return Dash.Is(name) ? Dash.In(_bench, path => Join(ledger, path, parse)) : Join(ledger, Path.GetFullPath(name), parse);
    }

    private int Join(LedgerFile ledger, string path, ParseResult parse)
    {
        if (Directory.Exists(path))
            throw new LedgerFileException($"{path} is a folder; name the other ledger's file");
        if (!File.Exists(path))
            throw new RefusedByCommandException($"there is no ledger at {path}");
        using var other = _bench.Open(path);
        return Join(ledger, other.SaidLines(), parse.GetValue(_dryRun), _bench);
    }
}
