using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>holders.csv: film holders; the sides are their names (1/2, A/B) or how many there are.</summary>
internal sealed class HoldersFile() : RowFileKind("holders", ["holder", "format"], ["sides", "notch", "bought"])
{
    public override bool IsUndated => true;

    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms)
    {
        var holder = row.Needed("holder", "accepted is the name on the holder, such as E07");
        if (row.Text("format").Length == 0)
            row.Refuse("format", "accepted is the format of its film, such as 4x5 or 8x10");
        return new HolderDefinition
        {
            Key = keys.Of(holder, row),
            Date = terms.Undated,
            Holder = holder,
            Format = row.Format("format", terms.Formats) ?? Format.Common[0],
            Sides = Sides(row),
            Notch = row.Text("notch"),
            BoughtOn = row.DateOrNull("bought"),
        };
    }

    private static string[] Sides(Row row)
    {
        var text = row.Text("sides");
        if (text.Length == 0)
            return [];
        if (!text.All(char.IsAsciiDigit))
            return text.Split('/', StringSplitOptions.TrimEntries);
        if (text.Length <= 2 && row.Whole("sides") is > 0 and var count)
            return [.. Enumerable.Range(1, count).Select(number => $"{number}")];
        row.Refuse("sides", "accepted are the names of the sides, such as 1/2 or A/B, or how many there are, 1 to 50");
        return [];
    }
}
