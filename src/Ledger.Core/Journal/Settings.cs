using Ledger.Core.Costing;
using Ledger.Core.Film;
using Ledger.Core.Keeping;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;

namespace Ledger.Core.Journal;

/// <summary>The settings of a whole ledger; <see cref="Setting.All"/> names them one by one.</summary>
/// <param name="Currency">The ledger's currency (ISO 4217); empty until the first delivery or setting names it.</param>
/// <param name="Style">The units the user reads.</param>
/// <param name="WarnDays">How many days before an end a notice appears.</param>
/// <param name="RotationCeiling">How often a pair of baths may be rotated before a fresh pair is mixed.</param>
public sealed record Settings(string Currency, MeasureStyle Style, int WarnDays, int RotationCeiling)
{
    /// <summary>How the screens are coloured: terminal, light, dark, mono or red.</summary>
    public string Theme { get; init; } = "terminal";

    private readonly MeasureStyle _style = Style;

    /// <summary>The units the user reads, and the digits of the ledger's currency.</summary>
    public MeasureStyle Style
    {
        get => _style with { MoneyDecimals = Currencies.MinorUnits(Currency) ?? 2 };
        init => _style = value;
    }

    /// <summary>How the user works in trays.</summary>
    public TrayPractice Tray { get; init; } = TrayPractice.Common;

    /// <summary>
    /// A bath is exhausted when clearing takes this many times the fresh time, in thousandths (NAVEDTRA 14209: twice).
    /// </summary>
    public int ExhaustedMultipleThousandths { get; init; } = 2000;

    /// <summary>Film is fixed for this many times its clearing time, in thousandths (NAVEDTRA 14209: twice).</summary>
    public int FixingMultipleThousandths { get; init; } = 2000;

    /// <summary>Days that a refrigerator adds to a expiry date and to the life of a sealed pack.</summary>
    public int FridgeDays { get; init; }

    /// <summary>Days that a freezer adds to them.</summary>
    public int FreezerDays { get; init; }

    /// <summary>The silver at which a film bath ends, in milligrams per litre; null when silver ends none.</summary>
    public int? SilverLimitFilm { get; init; }

    /// <summary>The silver at which a single paper bath ends, or the second of two.</summary>
    public int? SilverLimitPaper { get; init; }

    /// <summary>The silver at which the first of two paper baths ends.</summary>
    public int? SilverLimitPaperFirst { get; init; }

    /// <summary>
    /// The fixer that may stay in film or paper after washing, in milligrams per square metre; null when no figure is
    /// judged.
    /// </summary>
    public int? ResidualHypoLimit { get; init; }

    /// <summary>
    /// After how many days a waste jug is worth a reminder; 0 for none. It says nothing about what is allowed.
    /// </summary>
    public int JugDays { get; init; } = 365;

    /// <summary>
    /// The length of the periods by which use is counted for reordering: a week unless the user wants another.
    /// </summary>
    public int DemandDays { get; init; } = 7;

    /// <summary>What a new ledger starts with. Three rotations: Darkroom Cookbook, 3rd ed.</summary>
    public static Settings Default { get; } = new("", MeasureStyle.Metric, WarnDays: 30, RotationCeiling: 3);

    /// <summary>The settings of holders, sheets and negatives.</summary>
    public FilmSettings Film { get; init; } = FilmSettings.Default;

    /// <summary>What the user means to spend in a month; null when they have not said.</summary>
    public Money? MonthlyBudget { get; init; }

    /// <summary>How the readings of costs value what was used.</summary>
    public CostFormula CostFormula { get; init; } = CostFormula.SpecificLot;

    /// <summary>The settings with one of them changed, or null when the name or the value is not accepted.</summary>
    public Settings? With(string name, string value) => Setting.Named(name)?.Read(this, value);

    /// <summary>
    /// The days that a year at a place of storage adds to an item's date: its own, otherwise the ledger's.
    /// </summary>
    public int ColdDaysAYear(Stock.Item item, string storage)
    {
        ArgumentNullException.ThrowIfNull(item);
        return ColdPlaces.Of(storage) switch
        {
            Coldness.Freezer => item.FreezerDays ?? FreezerDays,
            Coldness.Fridge => item.FridgeDays ?? FridgeDays,
            _ => 0,
        };
    }

    /// <summary>
    /// The hours that a box stays closed when it comes from one place to another: the whole time out of a freezer, a
    /// quarter of it out of a refrigerator; none where it does not get warmer.
    /// </summary>
    public int ThawHours(Stock.Item item, string from, string to)
    {
        ArgumentNullException.ThrowIfNull(item);
        var hours = item.ThawHours ?? Film.ThawHours;
        return (ColdPlaces.Of(from), ColdPlaces.Of(to)) switch
        {
            (Coldness.Freezer, not Coldness.Freezer) => hours,
            (Coldness.Fridge, Coldness.None) => (hours + 3) / 4,
            _ => 0,
        };
    }
}
