using Ledger.Core.Journal.Entries;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>jugs.csv: waste jugs that are begun, filled and handed over; what says what goes in, or where the jug goes.</summary>
internal sealed class JugsFile() : RowFileKind("jugs", ["date", "jug", "step", "what"], ["volume_ml", "reference"])
{
    private static readonly string[] Steps = ["start", "filling", "handover"];

    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms)
    {
        var (key, date) = (keys.Of(row), row.Date("date"));
        var jug = row.Needed("jug", "accepted is what is written on the jug");
        var what = row.Needed("what", "accepted is what goes in, or where the jug goes");
        return row.Choice("step", Steps, mayBeEmpty: false) switch
        {
            0 => new JugStart
            {
                Key = key, Date = date, Jug = jug, Contents = what, Size = row.Needed("volume_ml", row.Volume("volume_ml")),
            },
            1 => new JugFilling
            {
                Key = key, Date = date, Jug = jug, What = what, Volume = row.Needed("volume_ml", row.Volume("volume_ml")),
            },
            _ => new JugHandover { Key = key, Date = date, Jug = jug, To = what },
        };
    }
}
