using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Exchange.Import;
using Ledger.Storage;

namespace Ledger.App.Commands.Files;

/// <summary>import: entries from CSV, a whole file or folder or nothing of it.</summary>
internal sealed class ImportCommand : ExplainedCommand
{
    private const string AllKinds = "all";
    private readonly Workbench _bench;
    private readonly Argument<string> _kind = Typed.Argument("kind", KindOf, $"{string.Join(", ", CsvImport.Kinds)}; or all, for a folder");
    private readonly Argument<string> _path = Typed.Argument(
        "file", Text.NotEmpty,
        "the CSV file, - for the standard input; with all, a folder that holds files named items.csv, purchases.csv and so on");

    private readonly Option<bool> _dryRun = new("--dry-run") { Description = "show what would happen, and write nothing" };

    public ImportCommand(Workbench bench)
        : base("import", "Entries from CSV files, a whole file or folder or nothing of it.", """
            Each file has a header row; every bad row is listed. What stands in the journal
            already is not recorded again.
            Examples: trayledger import purchases purchases.csv --dry-run
                      trayledger import all sample-data
            """)
    {
        _bench = bench;
        Arguments.Add(_kind);
        Arguments.Add(_path);
        Options.Add(_dryRun);
        SetAction(Run);
        _kind.CompletionSources.Add([.. CsvImport.Kinds, AllKinds]);
    }

    private int Run(ParseResult parse)
    {
        using var ledger = _bench.Open(parse);
        var (kind, path) = (parse.GetRequiredValue(_kind), parse.GetRequiredValue(_path));
        var batch = kind == AllKinds ? CsvSources.ReadFolder(path, ledger) : CsvSources.ReadFile(kind, path, ledger, _bench);
        foreach (var remark in batch.Remarks)
            _bench.Say($"note: {remark}");
        if (batch.Problems.Count == 0)
            return Post(batch, ledger, parse.GetValue(_dryRun));
        foreach (var problem in batch.Problems)
            _bench.Say(problem);
        return Refuse(batch.Problems.Count);
    }

    private int Post(CsvBatch batch, LedgerFile ledger, bool isDry)
    {
        using var progress = new ProgressLine(_bench.Around, "recorded", batch.Entries.Count);
        var outcome = ledger.Import(batch.Entries.Select(sourced => sourced.Entry), isDry, progress, _bench.Around.Interrupts());
        progress.Clear();
        foreach (var refused in outcome.Refused)
            _bench.Say($"{batch.Entries[refused.Index].Where}: {refused.Refusal.Sentence}");
        if (outcome.Refused.Count > 0)
            return Refuse(outcome.Refused.Count);
        _bench.Around.Out.WriteLine(
            $"{Count(outcome.Posted)} {(isDry ? "would be recorded" : "recorded")}, {outcome.AlreadyThere} already there");
        if (isDry)
            _bench.Say("nothing was written: this was a dry run");
        return ExitStatus.Done;
    }

    private int Refuse(int problems)
    {
        _bench.Say($"nothing was written: {problems} {(problems == 1 ? "row" : "rows")} must be put right first");
        return ExitStatus.Refused;
    }

    private static string Count(int entries) => entries == 1 ? "1 entry" : $"{entries} entries";

    private static string KindOf(string text) =>
        CsvImport.Kinds.Append(AllKinds).FirstOrDefault(kind => kind.Equals(text, StringComparison.OrdinalIgnoreCase))
        ?? throw new FormatException($"there is no kind of file \"{text}\"; known: {string.Join(", ", CsvImport.Kinds)}, {AllKinds}");
}
