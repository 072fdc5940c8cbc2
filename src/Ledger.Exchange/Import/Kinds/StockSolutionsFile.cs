using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>stock_solutions.csv: a powder or concentrate mixed into a stock solution: whole packs, or a weighed amount of it.</summary>
internal sealed class StockSolutionsFile() : RowFileKind(
    "stock_solutions", ["date", "item", "volume_ml"], ["from", "packs", "amount", "bottles", "size_ml", "last_ml", "names", "reference"])
{
    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms)
    {
        var item = row.Needed("item", "accepted is the code of the stock solution's item");
        var from = row.TextOrNull("from") ?? terms.ItemOf(item)?.StockOf;
        return new StockSolution
        {
            Key = keys.Of(row),
            Date = row.Date("date"),
            Item = item,
            From = row.TextOrNull("from"),
            Packs = row.Whole("packs") ?? 1,
            Amount = row.Quantity("amount", terms.UnitOf(from ?? "")),
            Volume = row.Needed("volume_ml", row.Volume("volume_ml")),
            Bottles = row.Text("bottles").Length == 0 ? [] : DecantingsFile.Bottles(row, Unit.Millilitre),
        };
    }
}
