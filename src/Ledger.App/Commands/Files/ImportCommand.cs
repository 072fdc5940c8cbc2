using System.Text.Json;
using Ledger.Exchange.Import;
using Ledger.Storage;

namespace Ledger.App.Commands.Files;

/// <summary>import: entries from CSV, a whole file or folder or nothing of it.</summary>
internal sealed class ImportCommand : ExplainedCommand, IDescribed
{
    private const string AllKinds = "all";
    private const string Journal = "journal";
    private readonly Workbench _bench;
    private readonly Argument<string> _kind = Typed.Argument(
        "kind", KindOf, $"{string.Join(", ", CsvImport.Kinds)}; all, for a folder; or journal, for a journal.jsonl");
    private readonly Argument<string?> _path = Typed.Argument<string?>(
        "file", Text.NotEmpty,
        "the CSV file, - for the standard input; with all, a folder that holds files named items.csv, deliveries.csv "
            + "and so on, or an export");

    private readonly Option<bool> _template = new(
        "--template") { Description = "show the file's columns with an example row, and import nothing" };

    private readonly Option<bool> _amend = new("--amend")
    {
        Description = "record as amendments what rows say otherwise than the entries that they are known as; otherwise "
            + "it is only told",
    };

    private readonly Told<Imported> _told = new(new Shape<Imported>()
        .Flag("isDone", done => done.IsDone, "whether all rows were accepted; otherwise nothing was written")
        .Flag("isDryRun", done => done.IsDryRun)
        .Whole("recorded", done => done.Recorded)
        .Whole("alreadyThere", done => done.AlreadyThere)
        .Whole("changed", done => done.Changed, "entries that stand in the journal with other values and were left so")
        .Whole("amended", done => done.Amended)
        .Text("result", done => done.Result)
        .Texts("problems", done => done.Problems)
        .Texts("remarks", done => done.Remarks));

    private readonly Option<bool> _dryRun = new(
        "--dry-run") { Description = "show what would happen, and write nothing" };

    public ImportCommand(Workbench bench)
        : base("import", "Records entries from CSV files, a whole file or folder or nothing of it.", """
            Each file has a header row; every bad row is listed. What stands in the journal
            already is not recorded again, however a spreadsheet wrote it; a row that says
            something else than its entry is told, and --amend records it as an amendment;
            what it leaves empty stays, and a cell with only - in it says nothing is there.
            Commas, semicolons or tabs; 186,50 and 05.01.2026 where the whole file writes so.
            Examples: trayledger import deliveries deliveries.csv --dry-run
                      trayledger import all sample-data
                      trayledger import sessions --template
                      trayledger import journal ledger-2026/journal.jsonl
            """)
    {
        _bench = bench;
        Arguments.Add(_kind);
        _path.Arity = ArgumentArity.ZeroOrOne;
        Arguments.Add(_path);
        Options.Add(_dryRun);
        Options.Add(_amend);
        Options.Add(_template);
        Options.Add(_told.Option);
        SetAction(Run);
        _kind.CompletionSources.Add([.. CsvImport.Kinds, AllKinds, Journal]);
    }

    public void Describe(Utf8JsonWriter json) => _told.Describe(json);

    private int Run(ParseResult parse)
    {
        var (kind, path) = (parse.GetRequiredValue(_kind), parse.GetValue(_path));
        if (parse.GetValue(_template))
            return Template(kind);
        if (path is null)
            throw new FormatException(
                kind == AllKinds ? "name the folder that holds the files"
                    : "name the file, or - for the standard input; --template shows what may stand in it");
        using var ledger = _bench.Open(parse);
        var batch = Batch(kind, path, ledger);
        using var progress = new ProgressLine(_bench.Around, "recorded");
        var isDry = parse.GetValue(_dryRun);
        var posted = batch.Post(ledger, isDry, parse.GetValue(_amend), progress, _bench.Around.Interrupts());
        if (posted.IsDone && !isDry)
            _bench.Written = posted.Result;
        progress.Clear();
        if (_told.Write(parse, _bench.Around.Out, posted))
            return posted.IsDone ? ExitStatus.Done : ExitStatus.Refused;
        foreach (var remark in posted.Remarks)
            _bench.Say($"note: {remark}");
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

    private IBatch Batch(string kind, string path, LedgerFile ledger) => kind switch
    {
        AllKinds => FolderBatch.Read(path, ledger),
        Journal => new JournalBatch(Dash.Is(path) ? Lines(_bench.Around.In()) : File.ReadLines(path), []),
        _ => Dash.Is(path) ? CsvBatch.Read(kind, _bench.Around.In(), "standard input", ledger)
            : CsvBatch.ReadFile(kind, path, ledger),
    };

    private int Template(string kind)
    {
        if (kind is AllKinds or Journal)
            throw new RefusedByCommandException(
                $"--template shows one kind of file; the kinds are {string.Join(", ", CsvImport.Kinds)}");
        CsvImport.WriteTemplate(kind, _bench.Around.Out);
        return ExitStatus.Done;
    }

    private static string KindOf(string text) =>
        new[] { AllKinds, Journal }.FirstOrDefault(known => text.Equals(known, StringComparison.OrdinalIgnoreCase))
            ?? CsvImport.Named(text)
            ?? throw new FormatException($"there is no kind of file \"{text}\"; {Spelling.Meant(text, CsvImport.Kinds)}"
                + $"known: {string.Join(", ", CsvImport.Kinds)}, {AllKinds}, {Journal}");

    private static IEnumerable<string> Lines(Stream input)
    {
        using var text = new StreamReader(input);
        while (text.ReadLine() is { } line)
            yield return line;
    }
}
