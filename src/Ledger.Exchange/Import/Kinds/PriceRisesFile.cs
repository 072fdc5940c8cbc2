using Ledger.Core.Journal.Entries;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>price_rises.csv: announced price rises, by how many percent and from which day on.</summary>
internal sealed class PriceRisesFile() : RowFileKind("price_rises", ["date", "item", "percent", "from"], ["note", "reference"])
{
    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms) => new PriceRiseNotice
    {
        Key = keys.Of(row),
        Date = row.Date("date"),
        Item = row.Needed("item", "accepted is the code of an item"),
        Percent = row.Needed("percent", row.Number("percent")),
        From = row.Date("from"),
        Note = row.Text("note"),
    };
}
