using Ledger.Core.Journal.Entries;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>exposure_indexes.csv: the exposure indexes at which the user exposes lots of film, each named by one of its boxes.</summary>
internal sealed class ExposureIndexesFile() : RowFileKind("exposure_indexes", ["date", "container", "exposure_index"], ["note", "reference"])
{
    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms) => new ExposureIndexSetting
    {
        Key = keys.Of(row),
        Date = row.Date("date"),
        Container = row.Needed("container", "accepted is the code of a box of the lot, such as fen80/3"),
        ExposureIndex = row.Needed("exposure_index", row.Whole("exposure_index")),
        Note = row.Text("note"),
    };
}
