using Ledger.App.Wiring;
using Ledger.Core.Journal.Kinds;
using Ledger.Core.Measures;
using Ledger.Exchange.Import;
using Ledger.Storage.Files;
using Ledger.Storage;

namespace Ledger.App.Commands.Files;

/// <summary>What was read from CSV, a file or a folder: posted as a whole, or not at all when a row is bad or refused.</summary>
/// <param name="Entries">The entries of the good rows, in the order in which they are posted.</param>
/// <param name="Problems">Every bad row, a sentence each.</param>
/// <param name="BadRows">How many rows that is: one may be bad in several ways.</param>
/// <param name="Remarks">What the user should know of the files.</param>
internal sealed record CsvBatch(
    IReadOnlyList<SourcedEntry> Entries, IReadOnlyList<string> Problems, int BadRows, IReadOnlyList<string> Remarks)
{
    /// <summary>Reads a file.</summary>
    public static CsvBatch ReadFile(string kind, string path, LedgerFile ledger)
    {
        using var csv = Open(path);
        return Read(kind, csv, path, ledger);
    }

    /// <summary>Reads the bytes of a file.</summary>
    public static CsvBatch Read(string kind, Stream csv, string name, LedgerFile ledger)
    {
        var file = CsvImport.Read(kind, csv, Known(ledger), name);
        return Of([file], file.Remarks);
    }

    /// <summary>Reads all known files of a folder.</summary>
    public static CsvBatch ReadFolder(string folder, LedgerFile ledger)
    {
        if (!Directory.Exists(folder))
            throw new LedgerFileException($"there is no folder {Path.GetFullPath(folder)}");
        var names = Directory.EnumerateFiles(folder, "*.csv")
            .Select(file => Path.GetFileNameWithoutExtension(file)).Order(StringComparer.Ordinal).ToLookup(CsvImport.Kinds.Contains);
        if (!names[true].Any())
            throw new RefusedByCommandException(
                $"{folder} holds no file to import; known names: {string.Join(", ", CsvImport.Kinds.Select(kind => $"{kind}.csv"))}");
        var open = new List<(string Kind, Stream Csv)>();
        try
        {
            foreach (var kind in names[true])
                open.Add((kind, Open(Path.Combine(folder, $"{kind}.csv"))));
            var files = ImportFolder.Read(open, Known(ledger));
            return Of(files,
            [
                .. files.SelectMany(file => file.Remarks.Select(remark => $"{file.Source}: {remark}")),
                .. names[false].Select(name => $"{name}.csv is not a file that can be imported and was left out"),
            ]);
        }
        finally
        {
            foreach (var (_, csv) in open)
                csv.Dispose();
        }
    }

    /// <summary>Posts everything, or nothing when a row is bad or refused.</summary>
    /// <exception cref="OperationCanceledException">It was stopped; nothing was written.</exception>
    public CsvOutcome Post(LedgerFile ledger, bool isDry, IProgress<double> progress, CancellationToken cancel)
    {
        if (Problems.Count > 0)
            return Refused(Problems, BadRows);
        var outcome = ledger.Import(Entries.Select(sourced => sourced.Entry), isDry, new Counting(progress, Entries.Count), cancel);
        return outcome.Refused.Count > 0
            ? Refused(
                [.. outcome.Refused.Select(refused => $"{Entries[refused.Index].Where}: {refused.Refusal.Sentence}")], outcome.Refused.Count)
            : new(
                true, $"{Counted.Of(outcome.Posted, "entry")} {(isDry ? "would be recorded" : "recorded")}, {outcome.AlreadyThere} already there", [],
                [.. Remarks, .. outcome.Remarks.Select(remark => $"{Entries[remark.Index].Where}: {remark.Sentence}")]);
    }

    private static CsvBatch Of(IReadOnlyList<ImportFile> files, IReadOnlyList<string> remarks) => new(
        ImportFolder.InOrder(files), [.. files.SelectMany(file => file.Problems.Select(problem => $"{file.Source}, {problem}"))],
        files.Sum(file => file.Problems.DistinctBy(problem => problem.Line).Count()), remarks);

    private CsvOutcome Refused(IReadOnlyList<string> problems, int rows) => new(
        false, $"nothing was written: {Counted.Of(rows, "row")} must be mended first", problems, Remarks);

    private static ReadingTerms Known(LedgerFile ledger) => ReadingTerms.Of(ledger.HoldingsOn(ledger.Today), ledger.Today);

    private static FileStream Open(string path)
    {
        try
        {
            return new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw new LedgerFileException($"{path} cannot be read: {FileTrouble.Reason(trouble)}", trouble);
        }
    }
}

/// <summary>What came of an import.</summary>
/// <param name="IsDone">Whether all of it was accepted.</param>
/// <param name="Result">What was recorded, or that nothing was.</param>
/// <param name="Problems">Every bad row, a sentence each.</param>
/// <param name="Remarks">What the user should know, of the files and of what was recorded.</param>
internal sealed record CsvOutcome(bool IsDone, string Result, IReadOnlyList<string> Problems, IReadOnlyList<string> Remarks);
