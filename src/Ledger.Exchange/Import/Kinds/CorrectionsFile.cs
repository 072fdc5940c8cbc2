using Ledger.Core.Journal.Entries;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>
/// corrections.csv: entries that are reversed, named by their reference as the journal has it: sessions:S16, or the kind and reference of a
/// row. The date says when it was found out; the correction itself stands on the day of the entry.
/// </summary>
internal sealed class CorrectionsFile() : RowFileKind("corrections", ["date", "reverses", "reason"], ["reference"])
{
    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms) => new Correction
    {
        Key = keys.Of(row),
        Date = row.Date("date"),
        Reference = row.Needed("reverses", "accepted is the reference of an entry, such as sessions:S16"),
        Reason = row.Needed("reason", "accepted is why it is reversed"),
    };
}
