namespace Ledger.Exchange.Export;

/// <summary>A table on its way to CSV.</summary>
/// <param name="Name">Its name, as that of its file.</param>
/// <param name="Columns">The names of its columns.</param>
/// <param name="Rows">Its rows, read as they are written.</param>
public sealed record ExportedTable(string Name, IReadOnlyList<string> Columns,
    IEnumerable<IReadOnlyList<string?>> Rows);
