using System.Text.Json;
using Ledger.Storage.Files;

namespace Ledger.App.Commands.Files;

/// <summary>What an export wrote.</summary>
/// <param name="Ledger">The ledger.</param>
/// <param name="Folder">The folder.</param>
/// <param name="Tables">How many tables.</param>
internal sealed record Exported(string Ledger, string Folder, int Tables);

/// <summary>export: every table as CSV.</summary>
internal sealed class ExportCommand : ExplainedCommand, IDescribed
{
    private readonly Workbench _bench;
    private readonly Argument<string> _folder = Typed.Argument("dir", Text.NotEmpty,
        "the folder; it is made if it is not there");
    private readonly Option<bool> _replace = new(
        "--replace") { Description = "replace the files of an earlier export" };
    private readonly Told<Exported> _told = new(new Shape<Exported>()
        .Text("ledger", done => done.Ledger)
        .Text("folder", done => done.Folder)
        .Whole("tables", done => done.Tables, "how many CSV files were written, readable ones among them")
        .Text("journal", done => Path.Combine(done.Folder, CsvExport.Journal),
            "all that was said; an import makes the ledger of it"));

    public ExportCommand(Workbench bench)
        : base("export",
            "Writes every table of the ledger as a CSV file, plain text that any program can read in decades.", """
            Beside the ledger's own tables stand the readings of its costs: cost_by_month,
            cost_by_year, cost_by_film, cost_by_session, cost_by_sheet, cost_reconciled and
            price_history, unrounded. The folder readable holds the shelf, sheets,
            sessions, baths, costs and journal by names, in ml, g, sq in and money, and
            code-book.csv says what each column means. An import does not read that folder.
            journal.jsonl holds all that was said, in full: `trayledger import all DIR`
            makes the same ledger of it.
            Example: trayledger export ledger-2026
            """)
    {
        _bench = bench;
        Arguments.Add(_folder);
        Options.Add(_replace);
        Options.Add(_told.Option);
        SetAction(Run);
    }

    public void Describe(Utf8JsonWriter json) => _told.Describe(json);

    private int Run(ParseResult parse)
    {
        using var ledger = _bench.OpenToRead(parse);
        var folder = Path.GetFullPath(parse.GetRequiredValue(_folder));
        if (File.Exists(folder))
            throw new LedgerFileException($"{folder} is a file; name a folder");
        using var progress = new ProgressLine(_bench.Around, "exported");
        var tables = CsvExport.Write(ledger, folder, parse.GetValue(_replace), progress, _bench.Around.Interrupts());
        _bench.Written = $"{tables} tables exported to {folder}";
        progress.Clear();
        if (!_told.Write(parse, _bench.Around.Out, new(ledger.Path, folder, tables)))
            _bench.Around.Out.WriteLine(_bench.Written);
        return ExitStatus.Done;
    }
}
