using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import;

/// <summary>A CSV file as it was read. It may be posted when it has no problems.</summary>
/// <param name="Source">What the user calls the file: its path, or items.csv in a folder.</param>
/// <param name="Entries">The entries of its good rows, in the order of the rows.</param>
/// <param name="Problems">Every bad row; a file with any of them is not imported.</param>
/// <param name="Remarks">What the user should know but need not change, such as a column that was left out.</param>
/// <param name="IsWhole">
/// Whether all of its rows were found, though some may be bad. Otherwise there is little use in what its entries, and
/// those that need them, are refused for.
/// </param>
public sealed record ImportFile(
    string Source, IReadOnlyList<SourcedEntry> Entries, IReadOnlyList<RowProblem> Problems,
    IReadOnlyList<string> Remarks, bool IsWhole);

/// <summary>An entry and where it was read.</summary>
/// <param name="Source">What the user calls the file.</param>
/// <param name="Line">The line on which its (first) row begins, counting from 1 with the header.</param>
/// <param name="Entry">The entry.</param>
/// <param name="HasDay">Whether a row names its day; a definition need not.</param>
public sealed record SourcedEntry(string Source, int Line, Entry Entry, bool HasDay)
{
    /// <summary>The file and the line.</summary>
    public string Where => $"{Source}, line {Line}";
}
