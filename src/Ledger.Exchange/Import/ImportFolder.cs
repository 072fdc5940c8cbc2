using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;
using Ledger.Exchange.Import.Kinds;
using NodaTime;

namespace Ledger.Exchange.Import;

/// <summary>Several files that belong together: what one of them defines, the others may use.</summary>
public static class ImportFolder
{
    /// <summary>Reads the files. Items and processes, which name no day, stand on the earliest day of all the files.</summary>
    /// <param name="files">Each file's kind and bytes; the streams stay open.</param>
    /// <param name="itemOf">The items that were known before; those of the files come first.</param>
    /// <param name="formats">The formats that were known before; those of the files are put in.</param>
    /// <param name="undated">The day of items and processes when no file names a day.</param>
    /// <param name="shift">Moves every date in time.</param>
    /// <returns>The files in the order of <see cref="CsvImport.Kinds"/>.</returns>
    /// <exception cref="ArgumentException">There is no such kind.</exception>
    public static IReadOnlyList<ImportFile> Read(
        IEnumerable<(string Kind, Stream Csv)> files,
        Func<string, Item?> itemOf,
        FormatTable formats,
        LocalDate undated,
        Func<LocalDate, LocalDate>? shift = null)
    {
        var defined = new Dictionary<string, Item>(StringComparer.OrdinalIgnoreCase);
        var read = new List<ImportFile>();
        foreach (var (kind, csv) in files.OrderBy(file => Rank(file.Kind)))
        {
            var file = CsvImport.Read(kind, csv, code => defined.GetValueOrDefault(code) ?? itemOf(code), formats, undated, shift);
            foreach (var definition in file.Entries.Select(sourced => sourced.Entry).OfType<FormatDefinition>())
                formats.Put(definition.Format);
            foreach (var definition in file.Entries.Select(sourced => sourced.Entry).OfType<ItemDefinition>())
                defined[definition.Item.Code] = definition.Item;
            read.Add(file);
        }

        var earliest = read.Where(file => !IsUndated(file)).SelectMany(file => file.Entries).Select(sourced => sourced.Entry.Date)
            .DefaultIfEmpty(undated).Min();
        return [.. read.Select(file => IsUndated(file) ? On(earliest, file) : file)];
    }

    /// <summary>All entries of the files as one sequence: by date, on the same day by kind, and as they stand in their file.</summary>
    public static IReadOnlyList<FolderEntry> InOrder(IEnumerable<ImportFile> files) =>
    [
        .. files.SelectMany(file => file.Entries.Select(sourced => new FolderEntry(file.Kind, sourced.Line, sourced.Entry)))
            .OrderBy(entry => entry.Entry.Date)
            .ThenBy(entry => Rank(entry.Kind)),
    ];

    private static ImportFile On(LocalDate date, ImportFile file) => file with
    {
        Entries = [.. file.Entries.Select(sourced => sourced with { Entry = sourced.Entry with { Date = date } })],
    };

    private static bool IsUndated(ImportFile file) => FileKind.All[Rank(file.Kind)].IsUndated;

    private static int Rank(string kind)
    {
        for (var i = 0; i < CsvImport.Kinds.Count; i++)
            if (CsvImport.Kinds[i] == kind)
                return i;
        return -1;
    }
}

/// <summary>An entry of one of several files.</summary>
/// <param name="Kind">The kind of its file.</param>
/// <param name="Line">The line of its (first) row.</param>
/// <param name="Entry">The entry.</param>
public sealed record FolderEntry(string Kind, int Line, Entry Entry);
