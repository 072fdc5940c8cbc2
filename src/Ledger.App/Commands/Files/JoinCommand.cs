using System.Text.Json;
using Ledger.Storage;
using Ledger.Storage.Deriving;
using Ledger.Storage.Files;

namespace Ledger.App.Commands.Files;

/// <summary>What a join did.</summary>
/// <param name="Added">How many entries were added.</param>
/// <param name="Known">How many stood in both.</param>
/// <param name="Refusal">Why nothing was joined; null when it was.</param>
/// <param name="IsDryRun">Whether nothing was written.</param>
internal sealed record Joined(int Added, int Known, string? Refusal, bool IsDryRun);

/// <summary>join: what a copy of the ledger knows that was written to elsewhere.</summary>
internal sealed class JoinCommand : ExplainedCommand, IDescribed
{
    private readonly Workbench _bench;
    private readonly Argument<string> _other = Typed.Argument("other", Text.NotEmpty,
        "the other ledger, which is only read; - is the standard input");
    private readonly Option<bool> _dryRun = new(
        "--dry-run") { Description = "show what would happen, and write nothing" };
    private readonly Told<Joined> _told = new(new Shape<Joined>()
        .Flag("isDone", done => done.Refusal is null, "whether the two agree; otherwise nothing was written")
        .Flag("isDryRun", done => done.IsDryRun)
        .Whole("added", done => done.Added)
        .Whole("known", done => done.Known, "entries that stood in both")
        .Word("refusal", done => done.Refusal, "what the two contradict each other in, and what to do"));

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
        Options.Add(_told.Option);
        SetAction(Run);
    }

    public void Describe(Utf8JsonWriter json) => _told.Describe(json);

    private int Run(ParseResult parse)
    {
        using var ledger = _bench.Open(parse);
        var name = parse.GetRequiredValue(_other);
        return Dash.Is(name) ? Dash.In(_bench, path => Join(ledger, path, parse))
            : Join(ledger, Path.GetFullPath(name), parse);
    }

    private int Join(LedgerFile ledger, string path, ParseResult parse)
    {
        if (Directory.Exists(path))
            throw new LedgerFileException($"{path} is a folder; name the other ledger's file");
        if (!File.Exists(path))
            throw new RefusedByCommandException($"there is no ledger at {path}");
        using var other = _bench.Open(path);
        return Tell(ledger.Join(other.SaidLines(), parse.GetValue(_dryRun)), parse);
    }

    private int Tell(JoinOutcome outcome, ParseResult parse)
    {
        var isDry = parse.GetValue(_dryRun);
        var told = JournalBatch.Told(outcome.Added, outcome.Known, isDry);
        if (outcome.Refusal is null && !isDry)
            _bench.Written = told;
        var status = outcome.Refusal is null ? ExitStatus.Done : ExitStatus.Refused;
        if (_told.Write(parse, _bench.Around.Out, new(outcome.Added, outcome.Known, outcome.Refusal, isDry)))
            return status;
        if (outcome.Refusal is { } refusal)
            _bench.Say(refusal);
        else
            _bench.Around.Out.WriteLine(told);
        if (outcome.Refusal is null && isDry)
            _bench.Say("nothing was written: this was a dry run");
        return status;
    }
}
