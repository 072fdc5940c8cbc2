using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Exchange.Import;

namespace Ledger.App.Commands.Files;

/// <summary>import: entries from CSV, a whole file or folder or nothing of it.</summary>
internal sealed class ImportCommand : ExplainedCommand
{
    private const string AllKinds = "all";
    private readonly Workbench _bench;
    private readonly Argument<string> _kind = Typed.Argument("kind", KindOf, $"{string.Join(", ", CsvImport.Kinds)}; or all, for a folder");
    private readonly Argument<string> _path = Typed.Argument(
        "file", Text.NotEmpty,
        "the CSV file, - for the standard input; with all, a folder that holds files named items.csv, deliveries.csv and so on");

    private readonly Option<bool> _dryRun = new("--dry-run") { Description = "show what would happen, and write nothing" };

    public ImportCommand(Workbench bench)
        : base("import", "Entries from CSV files, a whole file or folder or nothing of it.", """
            Each file has a header row; every bad row is listed. What stands in the journal
            already is not recorded again.
            Examples: trayledger import deliveries deliveries.csv --dry-run
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
        var batch = kind == AllKinds ? CsvSources.ReadFolder(path, ledger)
            : path == "-" ? CsvSources.Read(kind, _bench.Around.In(), "standard input", ledger)
            : CsvSources.ReadFile(kind, path, ledger);
        foreach (var remark in batch.Remarks)
            _bench.Say($"note: {remark}");
        using var progress = new ProgressLine(_bench.Around, "recorded");
        var isDry = parse.GetValue(_dryRun);
        var posted = CsvPosting.Post(batch, ledger, isDry, progress, _bench.Around.Interrupts());
        if (posted.IsDone && !isDry)
            _bench.Written = posted.Result;
        progress.Clear();
        foreach (var problem in posted.Problems)
            _bench.Say(problem);
        if (posted.IsDone)
            _bench.Around.Out.WriteLine(posted.Result);
        else
            _bench.Say(posted.Result);
        if (posted.IsDone && isDry)
            _bench.Say("nothing was written: this was a dry run");
        return posted.IsDone ? ExitStatus.Done : ExitStatus.Refused;
    }

    private static string KindOf(string text) =>
        CsvImport.Kinds.Append(AllKinds).FirstOrDefault(kind => kind.Equals(text, StringComparison.OrdinalIgnoreCase))
        ?? throw new FormatException($"there is no kind of file \"{text}\"; known: {string.Join(", ", CsvImport.Kinds)}, {AllKinds}");
}
