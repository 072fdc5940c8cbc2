using System.CommandLine;
using System.Text;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Exchange.Export;

namespace Ledger.App.Commands.Files;

/// <summary>export: every table as CSV.</summary>
internal sealed class ExportCommand : ExplainedCommand
{
    private readonly Workbench _bench;
    private readonly Argument<string> _folder = Typed.Argument("dir", Text.NotEmpty, "the folder; it is made if it is not there");
    private readonly Option<bool> _replace = new("--replace") { Description = "replace the files of an earlier export" };

    public ExportCommand(Workbench bench)
        : base("export", "Every table of the ledger as a CSV file, plain text that any program can read in decades.", """
            Beside the ledger's own tables stand the readings of its costs: cost_by_month,
            cost_by_year, cost_by_film, cost_by_session, cost_by_sheet, cost_reconciled and
            price_history, exact to the millionth.
            Example: trayledger export ledger-2026
            """)
    {
        _bench = bench;
        Arguments.Add(_folder);
        Options.Add(_replace);
        SetAction(Run);
    }

    private int Run(ParseResult parse)
    {
        using var ledger = _bench.Open(parse);
        var folder = Path.GetFullPath(parse.GetRequiredValue(_folder));
        var tables = ledger.Tables.Select(table => new ExportedTable(table, ledger.Columns(table), ledger.Rows(table)))
            .Concat(CostTables.Of(ledger));
        var files = tables.Select(table => (Table: table, Path: Path.Combine(folder, $"{table.Name}.csv"))).ToList();
        if (!parse.GetValue(_replace) && files.Find(file => File.Exists(file.Path)).Path is { } there)
            throw new RefusedByCommandException($"{there} exists already; name another folder, or say --replace");

        Directory.CreateDirectory(folder);
        using var progress = new ProgressLine(_bench.Around, "exported", files.Count);
        var cancel = _bench.Around.Interrupts();
        for (var i = 0; i < files.Count; i++)
        {
            Write(files[i].Table, files[i].Path, cancel);
            progress.Report(i + 1);
        }

        progress.Clear();
        _bench.Around.Out.WriteLine($"{files.Count} tables exported to {folder}");
        return ExitStatus.Done;
    }

    /// <summary>A file appears under its name only when it is whole.</summary>
    private static void Write(ExportedTable table, string path, CancellationToken cancel)
    {
        var unfinished = path + ".part";
        try
        {
            using (var text = new StreamWriter(unfinished, append: false, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false)))
                CsvTable.Write(text, table.Columns, table.Rows.TakeWhile(_ => !cancel.IsCancellationRequested));
            cancel.ThrowIfCancellationRequested();
            File.Move(unfinished, path, overwrite: true);
        }
        finally
        {
            File.Delete(unfinished);
        }
    }
}
