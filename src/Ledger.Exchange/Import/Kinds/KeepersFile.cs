using Ledger.Core.Journal.Entries;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>keepers.csv: negatives that turned out to be worth printing.</summary>
internal sealed class KeepersFile() : RowFileKind("keepers", ["date", "negative"], ["note", "reference"])
{
    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms) => new KeeperNaming
    {
        Key = keys.Of(row),
        Date = row.Date("date"),
        Negative = row.Needed("negative", "accepted is the number of a negative, such as 2025-014"),
        Note = row.Text("note"),
    };
}
