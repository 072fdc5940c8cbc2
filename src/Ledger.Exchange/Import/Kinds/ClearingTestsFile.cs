using Ledger.Core.Journal.Entries;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>clearing_tests.csv: how long a strip of film took to clear, fresh or later, and the sheets that were cut up for it.</summary>
internal sealed class ClearingTestsFile() : RowFileKind(
    "clearing_tests", ["date", "bath", "film", "seconds"], ["fresh", "sheets", "reference"])
{
    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms) => new ClearingTest
    {
        Key = keys.Of(row),
        Date = row.Date("date"),
        Bath = row.Needed("bath", "accepted is the name of a bath"),
        Film = row.Needed("film", "accepted is the code of a film"),
        Seconds = row.Needed("seconds", row.Number("seconds")),
        IsFresh = row.Choice("fresh", YesNoColumn.Names) == 1,
        Sheets = row.Whole("sheets") ?? 0,
    };
}
