using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>formats.csv: formats of the user's own, or other areas for known ones, in square inches or square centimetres.</summary>
internal sealed class FormatsFile() : RowFileKind("formats", ["format", "area"], ["unit"])
{
    public override bool IsUndated => true;

    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms)
    {
        var code = row.Needed("format", "accepted is a short name, such as 220 or postcard");
        var area = Area.Read(row.Text("area"));
        if (area is null)
            row.Refuse("area", "accepted is an area such as 80 sqin or 516.13 cm2");
        var unit = row.Text("unit").Length > 0 ? (Unit)row.Choice("unit", Units.Names)
            : terms.Formats.TryFind(code, out var known) ? known.Unit : Unit.Sheet;
        return new FormatDefinition { Key = keys.Of(code, row), Date = terms.Undated, Format = new(code, area ?? Area.Unit80, unit) };
    }
}
