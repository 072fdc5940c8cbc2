using Ledger.Core.Journal.Entries;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>speeds.csv: the speeds at which the user exposes lots of film, each named by one of its boxes.</summary>
internal sealed class SpeedsFile() : RowFileKind("speeds", ["date", "container", "speed"], ["note", "reference"])
{
    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms) => new SpeedRating
    {
        Key = keys.Of(row),
        Date = row.Date("date"),
        Container = row.Needed("container", "accepted is the code of a box of the lot, such as fen80/3"),
        Speed = row.Needed("speed", row.Whole("speed")),
        Note = row.Text("note"),
    };
}
