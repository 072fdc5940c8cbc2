using System.Text;
using Ledger.Exchange.Export;
using Ledger.Storage;
using Ledger.Storage.Files;

namespace Ledger.App.Commands.Files;

/// <summary>Writes every table of a ledger as a CSV file, and the readings of its costs.</summary>
internal static class CsvExport
{
    /// <summary>What was said, in full: from this file alone the ledger can be made once more.</summary>
    public const string Journal = "journal.jsonl";

    /// <summary>
    /// Writes the files, all of them from one state of the ledger; returns how many. They appear under their names only
    /// when all are whole. An export that was broken off while they appeared is marked as such, and finished by the
    /// next one.
    /// </summary>
    /// <exception cref="RefusedByCommandException">A file is there already and may not be replaced, or is the
    /// ledger.</exception>
    /// <exception cref="OperationCanceledException">It was stopped; no file was written or replaced.</exception>
    public static int Write(LedgerFile ledger, string folder, bool isReplacing, IProgress<double> progress,
        CancellationToken cancel) =>
        ledger.Read(() => WriteOneState(ledger, folder, isReplacing, progress, cancel));

    private static int WriteOneState(LedgerFile ledger, string folder, bool isReplacing, IProgress<double> progress,
        CancellationToken cancel)
    {
        var tables = ledger.Tables.Select(table => new ExportedTable(table, ledger.Columns(table), ledger.Rows(table)))
            .Concat(CostTables.Of(ledger)).Concat(ReadableTables.Of(ledger));
        var files = tables.Select(table => (Table: table, Path: Path.Combine(folder, $"{table.Name}.csv"))).ToList();
        var journal = Path.Combine(folder, Journal);
        foreach (var path in files.Select(file => file.Path).Append(journal))
            WholeFile.RequireOther(ledger.Path, path);
        var mark = new ExportMark(folder, ledger.Path);
        isReplacing |= mark.IsThere;
        if (!isReplacing && files.Select(file => file.Path).Append(journal).FirstOrDefault(File.Exists) is { } there)
            throw new RefusedByCommandException(
                $"{there} exists already; name another folder, or say that it is to be replaced");

        foreach (var path in files.Select(file => file.Path))
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        var written = new List<NewFile>();
        try
        {
            foreach (var (table, path) in files)
            {
                var file = new NewFile(path, ledger.Path);
                written.Add(file);
                Write(table, file.Open(), cancel);
                progress.Report(written.Count / (double)files.Count);
            }

            var said = new NewFile(journal, ledger.Path);
            written.Add(said);
            using (var text = new StreamWriter(said.Open(), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false)))
                foreach (var line in ledger.SaidLines())
                    text.Write($"{line}\n");

            mark.Put();
            foreach (var file in written)
                file.Finish(isReplacing);
            mark.TakeAway();
        }
        finally
        {
            foreach (var file in written)
                file.Dispose();
        }

        return files.Count;
    }

    private static void Write(ExportedTable table, Stream file, CancellationToken cancel)
    {
        using var text = new StreamWriter(file, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        CsvTable.Write(text, table.Columns, table.Rows.TakeWhile(_ => !cancel.IsCancellationRequested));
        cancel.ThrowIfCancellationRequested();
    }
}
