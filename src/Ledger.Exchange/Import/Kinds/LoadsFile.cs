using Ledger.Core.Journal.Entries;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>loads.csv: sheets loaded into holders, from a film's box that is reached for first or from a box that is named.</summary>
internal sealed class LoadsFile() : RowFileKind("loads", ["date", "sides", "from"], ["anyway", "note", "reference"])
{
    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms) => new Load
    {
        Key = keys.Of(row),
        Date = row.Date("date"),
        Sides = row.Sides("sides"),
        From = row.Needed("from", "accepted is the code of a film or of a box"),
        Anyway = row.IsYes("anyway"),
        Note = row.Text("note"),
    };
}
