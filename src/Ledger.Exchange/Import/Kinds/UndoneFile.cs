using Ledger.Core.Journal.Entries;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>
/// undone.csv: entries that are taken back, named by their reference as the journal has it: sessions:S16, or the kind and reference of a
/// row. The date says when it was found out; the undo itself stands on the day of the entry.
/// </summary>
internal sealed class UndoneFile() : RowFileKind("undone", ["date", "entry", "reason"], ["reference"])
{
    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms) => new Undo
    {
        Key = keys.Of(row),
        Date = row.Date("date"),
        Reference = row.Needed("entry", "accepted is the reference of an entry, such as sessions:S16"),
        Reason = row.Needed("reason", "accepted is why it is taken back"),
    };
}
