using Ledger.Core.Journal.Entries;

namespace Ledger.Exchange.Import;

/// <summary>A CSV file as it was read. It may be posted when it has no problems.</summary>
/// <param name="Kind">The kind of the file: items, deliveries, sessions…</param>
/// <param name="Entries">The entries of its good rows, in the order of the rows.</param>
/// <param name="Problems">Every bad row; a file with any of them is not imported.</param>
/// <param name="Remarks">What the user should know but need not change, such as a column that was left out.</param>
public sealed record ImportFile(
    string Kind, IReadOnlyList<SourcedEntry> Entries, IReadOnlyList<RowProblem> Problems, IReadOnlyList<string> Remarks);

/// <summary>An entry and where it was read.</summary>
/// <param name="Line">The line on which its (first) row begins, counting from 1 with the header.</param>
/// <param name="Entry">The entry.</param>
public sealed record SourcedEntry(int Line, Entry Entry);
