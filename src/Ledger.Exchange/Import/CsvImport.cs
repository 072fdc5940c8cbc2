using Ledger.Core.Measures;
using Ledger.Core.Stock;
using Ledger.Exchange.Import.Kinds;
using Ledger.Exchange.Import.Rows;
using NodaTime;

namespace Ledger.Exchange.Import;

/// <summary>Reads a CSV file into entries. Bad content is never thrown: it is told row by row.</summary>
public static class CsvImport
{
    /// <summary>
    /// formats, items, processes, holders, orders, order_changes, deliveries, storage_moves, openings, exposure_indexes, cleanings, loads, exposures, unloads,
    /// decantings, stock_solutions, jugs, baths, rotations, top_ups, counts, discards, sessions, prints, clearing_tests, observations, services,
    /// keepers, price_rises, plans, undone: in the order in which entries of the same day are posted.
    /// </summary>
    public static IReadOnlyList<string> Kinds { get; } = [.. FileKind.All.Select(kind => kind.Name)];

    /// <summary>The columns that a kind of file knows; those that must be there come first.</summary>
    /// <exception cref="ArgumentException">There is no such kind.</exception>
    public static IReadOnlyList<string> ColumnsOf(string kind) => Known(kind).Columns;

    /// <summary>Reads a file.</summary>
    /// <param name="kind">One of <see cref="Kinds"/>.</param>
    /// <param name="csv">The file's bytes; it stays open.</param>
    /// <param name="itemOf">The item of a code, or null: quantities are read in its unit.</param>
    /// <param name="formats">The formats that are known beside the common ones.</param>
    /// <param name="undated">The day of the entries of a file whose rows name none: formats, items, processes and holders.</param>
    /// <param name="shift">Moves every date of the file in time, of what happened and printed ones alike.</param>
    /// <exception cref="ArgumentException">There is no such kind.</exception>
    /// <exception cref="IOException">The bytes cannot be read.</exception>
    public static ImportFile Read(
        string kind, Stream csv, Func<string, Item?> itemOf, FormatTable formats, LocalDate undated, Func<LocalDate, LocalDate>? shift = null)
    {
        var known = Known(kind);
        var reading = new FileReading(known, shift ?? (date => date));
        using var text = new PlainText(csv);
        var rows = reading.Rows(text).ToList();
        var entries = known.Entries(rows, new(itemOf, formats, undated) { Shift = shift ?? (date => date) }).ToList();
        return new(known.Name, entries, [.. reading.Problems.OrderBy(problem => problem.Line)], reading.Remarks);
    }

    private static FileKind Known(string kind) => FileKind.All.FirstOrDefault(known => known.Name == kind)
        ?? throw new ArgumentException($"there is no kind of file \"{kind}\"; known: {string.Join(", ", Kinds)}", nameof(kind));
}
