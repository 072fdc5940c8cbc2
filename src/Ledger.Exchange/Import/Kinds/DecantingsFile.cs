using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>
/// decantings.csv: a bottle, or the next one of an item, filled into so many smaller ones of a size; the last takes what is left unless it
/// is said. Names stand with blanks between them, one for each bottle.
/// </summary>
internal sealed class DecantingsFile() : RowFileKind(
    "decantings", ["date", "from", "bottles", "size_ml"], ["last_ml", "names", "reference"])
{
    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms)
    {
        var from = row.Needed("from", "accepted is the code of a bottle or of an item");
        return new Decanting
        {
            Key = keys.Of(row),
            Date = row.Date("date"),
            From = from,
            Bottles = Bottles(row, terms.UnitOf(from)),
        };
    }

    /// <summary>The bottles that a row names by their number, size and names.</summary>
    public static IReadOnlyList<FilledBottle> Bottles(Row row, Unit unit)
    {
        var count = row.Needed("bottles", row.Whole("bottles"));
        var size = row.Needed("size_ml", row.Quantity("size_ml", unit));
        var last = row.Quantity("last_ml", unit);
        var names = row.Text("names").Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (count is < 1 or > 200)
            row.Refuse("bottles", "accepted are 1 to 200 bottles");
        if (names.Length > 0 && names.Length != count)
            row.Refuse("names", "accepted is one name for each bottle, with blanks between them");
        return row.IsGood
            ? [.. Enumerable.Range(0, count).Select(i => new FilledBottle(size, i == count - 1 ? last : null, names.ElementAtOrDefault(i)))]
            : [];
    }
}
