using Ledger.Core.Journal.Entries;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>openings.csv: sealed boxes and bottles that were opened, by the container's code or as the next one of an item.</summary>
internal sealed class OpeningsFile() : RowFileKind("openings", ["date"], ["item", "batch", "container", "reference"])
{
    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms) => new Opening
    {
        Key = keys.Of(row),
        Date = row.Date("date"),
        Container = row.TextOrNull("container") ?? row.Needed("item", "accepted is the code of an item, unless a container is named"),
        Batch = row.Text("batch"),
    };
}
