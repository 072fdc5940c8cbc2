using Ledger.Core.Journal.Entries;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>unloads.csv: sheets taken out of holders, or put from one box of exposed sheets into another.</summary>
internal sealed class UnloadsFile() : RowFileKind("unloads", ["date", "from"], ["group", "to", "note", "reference"])
{
    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms) => new Unload
    {
        Key = keys.Of(row),
        Date = row.Date("date"),
        From = row.Names(
            "from", "accepted are holder sides such as E07-2, sheets such as #12, or boxes such as fen80 N, divided by commas"),
        Group = row.Text("group"),
        To = row.TextOrNull("to"),
        Note = row.Text("note"),
    };
}
