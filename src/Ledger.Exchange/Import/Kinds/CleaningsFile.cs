using Ledger.Core.Journal.Entries;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>cleanings.csv: holders that were cleaned.</summary>
internal sealed class CleaningsFile() : RowFileKind("cleanings", ["date", "holders"], ["bagged", "note", "reference"])
{
    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms) => new Cleaning
    {
        Key = keys.Of(row),
        Date = row.Date("date"),
        Holders = row.Sides("holders"),
        IsBagged = row.IsYes("bagged"),
        Note = row.Text("note"),
    };
}
