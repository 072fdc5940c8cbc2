using Ledger.Exchange.Import;
using Ledger.Storage.Files;
using Ledger.Storage;

namespace Ledger.App.Commands.Files;

/// <summary>
/// What was read from CSV, a file or a folder: posted as a whole, or not at all when a row is bad or refused.
/// </summary>
/// <param name="files">The files.</param>
/// <param name="remarks">What the user should know of them.</param>
internal sealed class CsvBatch(IReadOnlyList<ImportFile> files, IReadOnlyList<string> remarks) : IBatch
{
    /// <summary>The entries of the good rows, in the order in which they are posted.</summary>
    private readonly IReadOnlyList<SourcedEntry> _entries = ImportFolder.InOrder(files);

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
        return new([file], file.Remarks);
    }

    /// <summary>Reads files of a folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="kinds">The kinds of files to read.</param>
    /// <param name="others">The names of what is left out.</param>
    /// <param name="ledger">The ledger.</param>
    public static CsvBatch ReadFiles(string folder, IEnumerable<string> kinds, IEnumerable<string> others,
        LedgerFile ledger)
    {
        var open = new List<(string Kind, Stream Csv)>();
        try
        {
            foreach (var kind in kinds)
                open.Add((kind, Open(Path.Combine(folder, $"{kind}.csv"))));
            var read = ImportFolder.Read(open, Known(ledger));
            return new(read,
            [
                .. read.SelectMany(file => file.Remarks.Select(remark => $"{file.Source}: {remark}")),
                .. others.Select(name => $"{name}.csv is not a file that can be imported and was left out"),
            ]);
        }
        finally
        {
            foreach (var (_, csv) in open)
                csv.Dispose();
        }
    }

    public Imported Post(LedgerFile ledger, bool isDry, bool isAmending, IProgress<double> progress,
        CancellationToken cancel)
    {
        var unread =
            files.SelectMany(file =>
                file.Problems.Select(problem => new BadRow(file.Source, problem.Line, problem.ToString()))).ToList();
        if (files.Any(file => !file.IsWhole))
            return Refused(unread, []);
        var amendments = isAmending ? Amendments(ledger, cancel) : [];
        // Where rows cannot be read, the others are only tried, so that all that must be mended is told at once.
        var outcome = ledger.Import(
            [.. _entries.Select(sourced => sourced.Entry), .. amendments.Select(one => one.Amendment)],
            isDry || unread.Count > 0, new Counting(progress, _entries.Count), cancel);
        var refused = outcome.Refused.Select(one => (Row: Row(one.Index), one.Refusal.Sentence))
            .Select(one => new BadRow(one.Row.Source, one.Row.Line, $"line {one.Row.Line}: {one.Sentence}")).ToList();
        if (unread.Count + refused.Count > 0)
            return Refused(unread, refused);
        var changed = isAmending ? [] : outcome.Changed;
        var there = outcome.AlreadyThere - changed.Count - amendments.Count;
        return new(
            true,
            $"{Counted.Of(outcome.Posted - amendments.Count, "entry")} {(isDry ? "would be recorded" : "recorded")}, "
                + $"{there} already there"
                + (amendments.Count > 0 ? $", {amendments.Count} {(isDry ? "would be amended" : "amended")}" : "")
                + (changed.Count > 0 ? $", {changed.Count} with other values left as they stand" : ""),
            [],
            [
                .. remarks, .. outcome.Remarks.Select(remark => $"{Row(remark.Index).Where}: {remark.Sentence}"),
                .. changed.Select(one => $"{_entries[one.Index].Where}: {Sentence(one)}"),
                .. changed.Count > 0 ? ["--amend records what such rows say as amendments"] : Array.Empty<string>(),
            ])
        {
            Recorded = outcome.Posted - amendments.Count, AlreadyThere = there, Amended = amendments.Count,
            Changed = changed.Count, IsDryRun = isDry,
        };

        SourcedEntry Row(int index) =>
            index < _entries.Count ? _entries[index] : amendments[index - _entries.Count].Row;
    }

    /// <summary>What the rows say otherwise than the entries that they are known as.</summary>
    private List<(SourcedEntry Row, Amendment Amendment)> Amendments(LedgerFile ledger, CancellationToken cancel) =>
    [
        .. ledger.Import(_entries.Select(sourced => sourced.Entry), dryRun: true, null,
            cancel).Changed.Select(one => (_entries[one.Index], new Amendment
        {
            Key = Guid.CreateVersion7().ToString(), Date = ledger.Today, Reference = one.Key, Changes = one.Changes,
            Reason = $"imported again from {Path.GetFileName(_entries[one.Index].Source)}",
        })),
    ];

    private static string Sentence(ChangedEntry changed) =>
        $"entry {changed.Number} says something else: " + string.Join("; ", changed.Changes.Zip(
            changed.Before,
            (change, before) => change.Field.Length == 0 ? $"line {change.Line} is not in the row's file"
                : $"{(change.Line > 0 ? $"{change.Line}." : "")}{change.Field} is {Quoted(before)} there and "
                    + $"{Quoted(change.Value)} here"));

    private static string Quoted(string value) => value.Length == 0 ? "not said" : value;

    /// <summary>
    /// Every row that must be mended, in the order of the files and their rows. One may be bad in several ways.
    /// </summary>
    private Imported Refused(IReadOnlyList<BadRow> unread, IReadOnlyList<BadRow> refused)
    {
        var (cannot, are) = (Count(unread), Count(refused));
        var order = files.Select((file, i) => (file.Source, i)).ToDictionary(one => one.Source, one => one.i);
        var both = cannot > 0 && are > 0
            ? $": {cannot} cannot be read, {are} {(are == 1 ? "is" : "are")} refused, perhaps only because one that "
                + "cannot be read is missing" : "";
        return new(
            false, $"nothing was written: {Counted.Of(cannot + are, "row")} must be mended first{both}",
            [.. unread.Concat(refused).OrderBy(row => order[row.Source]).ThenBy(row => row.Line)
                .Select(row => $"{row.Source}, {row.Sentence}")],
            remarks);
    }

    private static int Count(IEnumerable<BadRow> rows) => rows.DistinctBy(row => (row.Source, row.Line)).Count();

    private static ReadingTerms Known(LedgerFile ledger) =>
        ReadingTerms.Of(ledger.HoldingsOn(ledger.Today), ledger.Today);

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

/// <summary>A row that must be mended.</summary>
/// <param name="Source">Its file.</param>
/// <param name="Line">The line on which it begins; 0 for the whole file.</param>
/// <param name="Sentence">Where in the file, and what is wrong.</param>
internal sealed record BadRow(string Source, int Line, string Sentence);
