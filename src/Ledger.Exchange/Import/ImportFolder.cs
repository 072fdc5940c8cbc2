namespace Ledger.Exchange.Import;

/// <summary>Several files that belong together: what one of them defines, the others may use.</summary>
public static class ImportFolder
{
    /// <summary>Reads the files. Definitions that name no day stand on the earliest day of all the files.</summary>
    /// <param name="files">Each file's kind and bytes; the streams stay open.</param>
    /// <param name="terms">
    /// What was known before; items of the files come first, and formats of the files are put into its table. Its today
    /// is the day of definitions when no file names a day.
    /// </param>
    /// <returns>The files in the order of <see cref="CsvImport.Kinds"/>.</returns>
    /// <exception cref="ArgumentException">There is no such kind.</exception>
    public static IReadOnlyList<ImportFile> Read(IEnumerable<(string Kind, Stream Csv)> files, ReadingTerms terms)
    {
        var defined = new Dictionary<string, Item>(StringComparer.OrdinalIgnoreCase);
        var all = terms with { ItemOf = code => defined.GetValueOrDefault(code) ?? terms.ItemOf(code) };
        var read = new List<ImportFile>();
        foreach (var (kind, csv) in files.OrderBy(file => Rank(file.Kind)))
        {
            var file = CsvImport.Read(kind, csv, all);
            foreach (var sourced in file.Entries)
                if (sourced.Entry is FormatDefinition format)
                    terms.Formats.Put(format.Format);
                else if (sourced.Entry is ItemDefinition item)
                    defined[item.Item.Code] = item.Item;
            read.Add(file);
        }

        var earliest = read.SelectMany(file => file.Entries).Where(sourced => sourced.HasDay)
            .Select(sourced => sourced.Entry.Date)
            .DefaultIfEmpty(terms.Today).Min();
        return [
            .. read.Select(file => file with { Entries = [.. file.Entries.Select(sourced => On(earliest, sourced))] })];
    }

    /// <summary>
    /// All entries of the files as one sequence: by date, on the same day by kind, and as they stand in their file.
    /// </summary>
    /// <param name="files">The files in the order of their kinds.</param>
    public static IReadOnlyList<SourcedEntry> InOrder(IEnumerable<ImportFile> files) =>
        [.. files.SelectMany(file => file.Entries).OrderBy(sourced => sourced.Entry.Date)];

    private static int Rank(string kind) => CsvImport.Kinds.TakeWhile(known => known != kind).Count();

    private static SourcedEntry On(LocalDate date, SourcedEntry sourced) =>
        sourced.HasDay ? sourced : sourced with { Entry = sourced.Entry with { Date = date } };
}
