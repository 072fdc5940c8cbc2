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
    /// <param name="ledger">The ledger.</param>
    /// <param name="isDry">Whether nothing is written.</param>
    /// <param name="isAmending">Whether rows that say something else than the entry that they are known as become amendments of it.</param>
    /// <param name="progress">Told how far it is.</param>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="OperationCanceledException">It was stopped; nothing was written.</exception>
    public CsvOutcome Post(LedgerFile ledger, bool isDry, bool isAmending, IProgress<double> progress, CancellationToken cancel)
    {
        if (Problems.Count > 0)
            return Refused(Problems, BadRows);
        var amendments = isAmending ? Amendments(ledger, cancel) : [];
        var outcome = ledger.Import(
            [.. Entries.Select(sourced => sourced.Entry), .. amendments.Select(one => one.Amendment)], isDry, new Counting(progress, Entries.Count), cancel);
        if (outcome.Refused.Count > 0)
            return Refused([.. outcome.Refused.Select(refused => $"{Where(refused.Index)}: {refused.Refusal.Sentence}")], outcome.Refused.Count);
        var changed = isAmending ? [] : outcome.Changed;
        var there = outcome.AlreadyThere - changed.Count - amendments.Count;
        return new(
            true,
            $"{Counted.Of(outcome.Posted - amendments.Count, "entry")} {(isDry ? "would be recorded" : "recorded")}, {there} already there"
                + (amendments.Count > 0 ? $", {amendments.Count} {(isDry ? "would be amended" : "amended")}" : "")
                + (changed.Count > 0 ? $", {changed.Count} with other values left as they stand" : ""),
            [],
            [
                .. Remarks, .. outcome.Remarks.Select(remark => $"{Where(remark.Index)}: {remark.Sentence}"),
                .. changed.Select(one => $"{Entries[one.Index].Where}: {Sentence(one)}"),
                .. changed.Count > 0 ? ["--amend records what such rows say as amendments"] : Array.Empty<string>(),
            ])
        {
            Recorded = outcome.Posted - amendments.Count, AlreadyThere = there, Amended = amendments.Count, Changed = changed.Count, IsDryRun = isDry,
        };

        string Where(int index) => index < Entries.Count ? Entries[index].Where : amendments[index - Entries.Count].Where;
    }

    /// <summary>What the rows say otherwise than the entries that they are known as.</summary>
    private List<(string Where, Amendment Amendment)> Amendments(LedgerFile ledger, CancellationToken cancel) =>
    [
        .. ledger.Import(Entries.Select(sourced => sourced.Entry), dryRun: true, null, cancel).Changed.Select(one => (Entries[one.Index].Where, new Amendment
        {
            Key = Guid.CreateVersion7().ToString(), Date = ledger.Today, Reference = one.Key, Changes = one.Changes,
            Reason = $"imported again from {Path.GetFileName(Entries[one.Index].Source)}",
        })),
    ];

    private static string Sentence(ChangedEntry changed) => $"entry {changed.Number} says something else: " + string.Join("; ", changed.Changes.Zip(
        changed.Before, (change, before) => change.Field.Length == 0 ? $"line {change.Line} is not in the row's file"
            : $"{(change.Line > 0 ? $"{change.Line}." : "")}{change.Field} is {Quoted(before)} there and {Quoted(change.Value)} here"));

    private static string Quoted(string value) => value.Length == 0 ? "not said" : value;

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
internal sealed record CsvOutcome(bool IsDone, string Result, IReadOnlyList<string> Problems, IReadOnlyList<string> Remarks)
{
    /// <summary>How many entries were recorded, or would be.</summary>
    public int Recorded { get; init; }

    /// <summary>How many stood in the journal already, with the same values.</summary>
    public int AlreadyThere { get; init; }

    /// <summary>How many stand in the journal with other values, and were left so.</summary>
    public int Changed { get; init; }

    /// <summary>How many of these were amended.</summary>
    public int Amended { get; init; }

    /// <summary>Whether nothing was written.</summary>
    public bool IsDryRun { get; init; }
}
