using Ledger.Core.Journal.Entries;
using Ledger.Core.Keeping;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>
/// observations.csv: what was learned about a bath beside clearing tests. kind is sight, silver (grams per litre), residual silver or
/// residual fixer (passed: yes or no), container (what it stands in from that day on), indicator (its colour), or control strip (passed: yes or
/// no); found says what.
/// </summary>
internal sealed class ObservationsFile() : RowFileKind(
    "observations", ["date", "bath", "kind", "found"], ["passed", "session", "reference"])
{
    private static readonly string[] Kinds = ["sight", "silver", "residual silver", "residual hypo", "container", "indicator", "control strip"];

    protected override Entry Read(Row row, RowKeys keys, ImportTerms terms)
    {
        var (key, date) = (keys.Of(row), row.Date("date"));
        var bath = row.Needed("bath", "accepted is the name of a bath");
        var found = row.Needed("found", "accepted is what was found");
        return row.Choice("kind", Kinds, mayBeEmpty: false) switch
        {
            0 => new BathObservation
            {
                Key = key, Date = date, Bath = bath, Sign = found, EndsUse = row.Choice("passed", YesNo.Names) == 0,
            },
            1 => new SilverTest { Key = key, Date = date, Bath = bath, GramsPerLitre = row.Needed("found", row.Number("found")) },
            2 => Residual("silver"),
            3 => Residual("hypo"),
            4 => new BathStorage
            {
                Key = key, Date = date, Bath = bath, Container = (WorkingContainer)row.Choice("found", WorkingContainers.Names),
            },
            5 => new IndicatorReading { Key = key, Date = date, Bath = bath, Colour = found },
            _ => new ControlStripTest
            {
                Key = key, Date = date, Bath = bath, Result = found,
                IsWithinLimits = row.Choice("passed", YesNo.Names, mayBeEmpty: false) == 1,
            },
        };

        ResidualCheck Residual(string what) => new()
        {
            Key = key, Date = date, Bath = bath, LookedFor = what, Result = found,
            HasPassed = row.Choice("passed", YesNo.Names, mayBeEmpty: false) == 1,
            Session = row.TextOrNull("session"),
        };
    }
}
