using System.Text;
using Ledger.App.Wiring;
using Ledger.Exchange.Export;
using Ledger.Storage;

namespace Ledger.App.Commands.Files;

/// <summary>Writes every table of a ledger as a CSV file, and the readings of its costs.</summary>
internal static class CsvExport
{
    /// <summary>
    /// Writes the files, all of them from one state of the ledger; returns how many. They appear under their names only when all are whole.
    /// </summary>
    /// <exception cref="RefusedByCommandException">A file is there already and may not be replaced, or is the ledger.</exception>
    /// <exception cref="OperationCanceledException">It was stopped; no file was written or replaced.</exception>
    public static int Write(LedgerFile ledger, string folder, bool isReplacing, IProgress<double> progress, CancellationToken cancel) =>
        ledger.Read(() => WriteOneState(ledger, folder, isReplacing, progress, cancel));

    private static int WriteOneState(LedgerFile ledger, string folder, bool isReplacing, IProgress<double> progress, CancellationToken cancel)
    {
        var tables = ledger.Tables.Select(table => new ExportedTable(table, ledger.Columns(table), ledger.Rows(table))).Concat(CostTables.Of(ledger));
        var files = tables.Select(table => (Table: table, Path: Path.Combine(folder, $"{table.Name}.csv"))).ToList();
        foreach (var (_, path) in files)
            WholeFile.RequireOther(ledger.Path, path);
        if (!isReplacing && files.Find(file => File.Exists(file.Path)).Path is { } there)
            throw new RefusedByCommandException($"{there} exists already; name another folder, or say that it is to be replaced");

        Directory.CreateDirectory(folder);
        try
        {
            for (var i = 0; i < files.Count; i++)
            {
                Write(files[i].Table, WholeFile.Unfinished(files[i].Path), cancel);
                progress.Report((i + 1.0) / files.Count);
            }

            foreach (var (_, path) in files)
                File.Move(WholeFile.Unfinished(path), path, overwrite: true);
        }
        finally
        {
            foreach (var (_, path) in files)
                File.Delete(WholeFile.Unfinished(path));
        }

        return files.Count;
    }

    private static void Write(ExportedTable table, string path, CancellationToken cancel)
    {
        using var text = new StreamWriter(path, append: false, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        CsvTable.Write(text, table.Columns, table.Rows.TakeWhile(_ => !cancel.IsCancellationRequested));
        cancel.ThrowIfCancellationRequested();
    }
}
