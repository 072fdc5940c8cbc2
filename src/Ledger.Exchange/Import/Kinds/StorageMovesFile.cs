using Ledger.Core.Journal.Entries;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>storage_moves.csv: boxes and bottles that are kept somewhere else: freezer, fridge, shelf.</summary>
internal sealed class StorageMovesFile() : RowFileKind("storage_moves", ["date", "container", "to"], ["open_from", "note", "reference"])
{
    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms) => new StorageMove
    {
        Key = keys.Of(row),
        Date = row.Date("date"),
        Container = row.Needed("container", "accepted is the code of a container, such as fen80/3"),
        To = row.Needed("to", "accepted is a place such as freezer, fridge or shelf"),
        OpensFrom = row.DateOrNull("open_from"),
        Note = row.Text("note"),
    };
}
