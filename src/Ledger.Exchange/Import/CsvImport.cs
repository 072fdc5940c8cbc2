using Ledger.Exchange.Export;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import;

/// <summary>Reads a CSV file into entries. Bad content is never thrown: it is told row by row.</summary>
public static class CsvImport
{
    /// <summary>
    /// The names of the files, one for each kind of entry that <see cref="EntryKinds"/> describes, in the order in
    /// which entries of the same day are posted.
    /// </summary>
    public static IReadOnlyList<string> Kinds { get; } = [.. KindFile.All.Select(kind => kind.Name)];

    /// <summary>The kind of that name, in any case, with hyphens or underscores; null when there is none.</summary>
    public static string? Named(string name) =>
        Kinds.FirstOrDefault(kind => kind.Equals(name.Trim().Replace('-', '_'), StringComparison.OrdinalIgnoreCase));

    /// <summary>The columns that a kind of file knows; those that must be there come first.</summary>
    /// <exception cref="ArgumentException">There is no such kind.</exception>
    public static IReadOnlyList<string> ColumnsOf(string kind) => Known(kind).Columns;

    /// <summary>What the rows of a kind of file record, in a sentence.</summary>
    /// <exception cref="ArgumentException">There is no such kind.</exception>
    public static string PurposeOf(string kind) => Known(kind).Purpose;

    /// <summary>The columns of a kind of file with what stands in them; those that must be there come first.</summary>
    /// <exception cref="ArgumentException">There is no such kind.</exception>
    public static IEnumerable<CsvColumn> DescribedColumnsOf(string kind) => Known(kind).Described;

    /// <summary>Writes a file of a kind with all its columns and an example row.</summary>
    /// <param name="kind">One of <see cref="Kinds"/>.</param>
    /// <param name="writer">Takes the text.</param>
    /// <exception cref="ArgumentException">There is no such kind.</exception>
    public static void WriteTemplate(string kind, TextWriter writer)
    {
        var known = Known(kind);
        CsvTable.Write(writer, known.Columns, [[.. known.Columns.Select(known.ExampleOf)]]);
    }

    /// <summary>Reads a file.</summary>
    /// <param name="kind">One of <see cref="Kinds"/>.</param>
    /// <param name="csv">The file's bytes; it stays open.</param>
    /// <param name="terms">What is known beside the file; definitions that name no day stand on its today.</param>
    /// <param name="source">What the user calls the file; otherwise items.csv and so on.</param>
    /// <exception cref="ArgumentException">There is no such kind.</exception>
    /// <exception cref="IOException">The bytes cannot be read.</exception>
    public static ImportFile Read(string kind, Stream csv, ReadingTerms terms, string? source = null)
    {
        var known = Known(kind);
        var name = source ?? $"{known.Name}.csv";
        var reading = new FileReading(known);
        using var text = new PlainText(csv);
        var rows = reading.Rows(text).ToList();
        var entries = known.Entries(rows, terms, name, reading.Mark).ToList();
        return new(name, entries, [.. reading.Problems.OrderBy(problem => problem.Line)], reading.Remarks,
            reading.IsWhole);
    }

    private static KindFile Known(string kind) => KindFile.All.FirstOrDefault(known => known.Name == kind)
        ?? throw new ArgumentException($"there is no kind of file \"{kind}\"; known: {string.Join(", ", Kinds)}",
            nameof(kind));
}
