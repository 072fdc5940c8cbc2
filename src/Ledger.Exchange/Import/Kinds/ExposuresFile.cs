using Ledger.Core.Journal.Entries;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>exposures.csv: sheets exposed in their holders, with their group and one free line.</summary>
internal sealed class ExposuresFile() : RowFileKind("exposures", ["date", "sides"], ["group", "subject", "anyway", "note", "reference"])
{
    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms) => new ExposureNote
    {
        Key = keys.Of(row),
        Date = row.Date("date"),
        Sides = row.Sides("sides"),
        Group = row.Text("group"),
        Subject = row.Text("subject"),
        Anyway = row.IsYes("anyway"),
        Note = row.Text("note"),
    };
}
