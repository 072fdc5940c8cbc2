using Ledger.Core.Journal.Entries;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>services.csv: holder sides taken out of service or put back into it.</summary>
internal sealed class ServicesFile() : RowFileKind("services", ["date", "sides", "reason"], ["in_service", "note", "reference"])
{
    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms) => new SideService
    {
        Key = keys.Of(row),
        Date = row.Date("date"),
        Sides = row.Sides("sides"),
        IsInService = row.IsYes("in_service"),
        Reason = row.Text("reason"),
        Note = row.Text("note"),
    };
}
