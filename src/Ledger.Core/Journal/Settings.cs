using Ledger.Core.Costing;
using Ledger.Core.Film;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;

namespace Ledger.Core.Journal;

/// <summary>The settings of a whole ledger.</summary>
/// <param name="Currency">The ledger's currency (ISO 4217); empty until the first receipt or setting names it.</param>
/// <param name="Style">The units the user reads.</param>
/// <param name="WarnDays">How many days before an end a notice appears.</param>
/// <param name="RotationCeiling">How often a pair of baths may be rotated before both are mixed anew.</param>
public sealed record Settings(string Currency, MeasureStyle Style, int WarnDays, int RotationCeiling)
{
    /// <summary>How the user works in trays.</summary>
    public TrayPractice Tray { get; init; } = TrayPractice.Common;

    /// <summary>A bath is spent when clearing takes this many times the fresh time, in thousandths (NAVEDTRA 14209: twice).</summary>
    public int SpentMultipleThousandths { get; init; } = 2000;

    /// <summary>Film is fixed for this many times its clearing time, in thousandths (NAVEDTRA 14209: twice).</summary>
    public int FixingMultipleThousandths { get; init; } = 2000;

    /// <summary>Days that a refrigerator adds to a printed date and to the life of a sealed pack.</summary>
    public int FridgeDays { get; init; }

    /// <summary>Days that a freezer adds to them.</summary>
    public int FreezerDays { get; init; }

    /// <summary>The silver at which a film bath ends, in milligrams per litre; null when silver ends none.</summary>
    public int? SilverLimitFilm { get; init; }

    /// <summary>The silver at which a single paper bath ends, or the second of two.</summary>
    public int? SilverLimitPaper { get; init; }

    /// <summary>The silver at which the first of two paper baths ends.</summary>
    public int? SilverLimitPaperFirst { get; init; }

    /// <summary>The length of the periods by which use is counted for reordering: a week unless the user wants another.</summary>
    public int DemandDays { get; init; } = 7;

    /// <summary>What a new ledger starts with. Three rotations: Darkroom Cookbook, 3rd ed.</summary>
    public static Settings Default { get; } = new("", MeasureStyle.Metric, WarnDays: 30, RotationCeiling: 3);

    /// <summary>The settings of holders, sheets and negatives.</summary>
    public FilmSettings Film { get; init; } = FilmSettings.Default;

    /// <summary>What the user means to spend in a month; null when they have not said.</summary>
    public Money? MonthlyBudget { get; init; }

    /// <summary>How the readings of costs value what was used.</summary>
    public CostFormula CostFormula { get; init; } = CostFormula.SpecificLot;

    /// <summary>The names of the settings and what each accepts.</summary>
    public static IReadOnlyDictionary<string, string> Names { get; } = new Dictionary<string, string>
    {
        ["currency"] = "a currency code of three letters, such as EUR",
        ["liquids"] = "ml or floz",
        ["areas"] = "sqin or cm2",
        ["warn-days"] = "a whole number of days, 0 to 365",
        ["demand-days"] = "a whole number of days, 1 to 92",
        ["rotation-ceiling"] = "a whole number, 0 to 20",
        ["batch-sheets"] = BatchLimit.Accepted,
        ["pass-seconds"] = "the seconds in which a stack of sheets passes once, 1 to 600",
        ["short-minutes"] = "a whole number of minutes, 0 to 60",
        ["tray-depth"] = "the least millimetres of solution over a sheet, 0 to 100, with one decimal at most",
        ["graduate"] = "the finest step of your graduate in ml, such as 0.5 or 5, or exact",
        ["loaded-days"] = "a whole number of days, 0 to 3650",
        ["exposed-days"] = "a whole number of days, 0 to 3650",
        ["side-faults"] = "a whole number of sheets, 0 to 100",
        ["forgotten-months"] = "a whole number of months, 0 to 120",
        ["thaw-hours"] = "a whole number of hours, 0 to 240",
        ["side-names"] = "the names of a holder's sides, such as 1/2 or A/B",
        ["slide-convention"] = "what the two faces of a dark slide mean",
        ["monthly-budget"] = "money for a month, such as 60 or 37.50; 0 for none",
        ["cost-formula"] = "lot (first in, first out unless you name another lot), fifo (whichever was taken) or average",
        ["negative-pattern"] = "the year and a running number, such as YYYY-### or YY####",
        ["spent-multiple"] = "times the fresh clearing time, 1.1 to 5",
        ["fixing-multiple"] = "times the clearing time, 1 to 5",
        ["fridge-days"] = "a whole number of days, 0 to 3650",
        ["freezer-days"] = "a whole number of days, 0 to 3650",
        ["silver-limit-film"] = "grams of silver per litre, 0.1 to 20, or none",
        ["silver-limit-paper"] = "grams of silver per litre, 0.1 to 20, or none",
        ["silver-limit-paper-first"] = "grams of silver per litre, 0.1 to 20, or none",
    };

    /// <summary>The settings with one of them changed, or null when the name or the value is not accepted.</summary>
    public Settings? With(string name, string value) => (name, value) switch
    {
        ("currency", { Length: 3 }) when value.All(char.IsAsciiLetterUpper) => this with { Currency = value },
        ("liquids", "ml" or "floz") => this with { Style = Style with { UsesFluidOunces = value == "floz" } },
        ("areas", "sqin" or "cm2") => this with { Style = Style with { UsesSquareCentimetres = value == "cm2" } },
        ("warn-days", _) when Whole(value, 365) is { } days => this with { WarnDays = days },
        ("demand-days", _) when Whole(value, 92) is { } days and > 0 => this with { DemandDays = days },
        ("rotation-ceiling", _) when Whole(value, 20) is { } ceiling => this with { RotationCeiling = ceiling },
        ("batch-sheets", _) when BatchLimit.Read(value) is { } limit => this with { Tray = Tray with { Limit = limit } },
        ("pass-seconds", _) when Whole(value, 600) is { } seconds and > 0 => this with { Tray = Tray with { PassSeconds = seconds } },
        ("short-minutes", _) when Whole(value, 60) is { } minutes => this with { Tray = Tray with { ShortMinutes = minutes } },
        ("tray-depth", _) when Tenths(value) is { } tenths and <= 1000 => this with { Tray = Tray with { DepthTenths = (int)tenths } },
        ("graduate", "exact") => this with { Tray = Tray with { Graduate = null } },
        ("graduate", _) when Number(value) is > 0 and <= 1000 and var step && Scaled.ToBase(step, 1000) is { } microlitres =>
            this with { Tray = Tray with { Graduate = Volume.FromMicrolitres(microlitres) } },
        ("loaded-days", _) when Whole(value, 3650) is { } days => this with { Film = Film with { LoadedDays = days } },
        ("exposed-days", _) when Whole(value, 3650) is { } days => this with { Film = Film with { ExposedDays = days } },
        ("side-faults", _) when Whole(value, 100) is { } faults => this with { Film = Film with { SideFaults = faults } },
        ("forgotten-months", _) when Whole(value, 120) is { } months => this with { Film = Film with { ForgottenMonths = months } },
        ("thaw-hours", _) when Whole(value, 240) is { } hours => this with { Film = Film with { ThawHours = hours } },
        ("side-names", { Length: > 0 and <= 60 }) when value.Split('/').All(name => name.Trim().Length > 0) =>
            this with { Film = Film with { SideNames = value } },
        ("slide-convention", { Length: > 0 and <= 80 }) when !value.Any(char.IsControl) =>
            this with { Film = Film with { SlideConvention = value } },
        ("monthly-budget", _) when Amount(value) is { } amount => this with { MonthlyBudget = amount == Money.Zero ? null : amount },
        ("cost-formula", _) when CostFormulas.ShortNames.Contains(value) =>
            this with { CostFormula = Enum.GetValues<CostFormula>().First(formula => formula.ShortName() == value) },
        ("negative-pattern", _) when NegativePattern.Parse(value) is { } pattern => this with { Film = Film with { Negatives = pattern } },
        ("spent-multiple", _) when Thousandths(value, 1100, 5000) is { } times => this with { SpentMultipleThousandths = times },
        ("fixing-multiple", _) when Thousandths(value, 1000, 5000) is { } times => this with { FixingMultipleThousandths = times },
        ("fridge-days", _) when Whole(value, 3650) is { } days => this with { FridgeDays = days },
        ("freezer-days", _) when Whole(value, 3650) is { } days => this with { FreezerDays = days },
        ("silver-limit-film", "none") => this with { SilverLimitFilm = null },
        ("silver-limit-paper", "none") => this with { SilverLimitPaper = null },
        ("silver-limit-paper-first", "none") => this with { SilverLimitPaperFirst = null },
        ("silver-limit-film", _) when Thousandths(value, 100, 20_000) is { } limit => this with { SilverLimitFilm = limit },
        ("silver-limit-paper", _) when Thousandths(value, 100, 20_000) is { } limit => this with { SilverLimitPaper = limit },
        ("silver-limit-paper-first", _) when Thousandths(value, 100, 20_000) is { } limit => this with { SilverLimitPaperFirst = limit },
        _ => null,
    };

    /// <summary>The days that a place of storage adds.</summary>
    public int ColdDays(string storage) =>
        storage.Contains("freezer", StringComparison.OrdinalIgnoreCase) ? FreezerDays
        : storage.Contains("fridge", StringComparison.OrdinalIgnoreCase) ? FridgeDays
        : 0;

    private static int? Thousandths(string value, int least, int most) =>
        decimal.TryParse(value, System.Globalization.NumberStyles.AllowDecimalPoint, System.Globalization.CultureInfo.InvariantCulture,
            out var number)
        && number <= most && Scaled.ToBase(number, 1000) is { } thousandths && thousandths >= least && thousandths <= most
            ? (int)thousandths : null;

    private static decimal? Number(string value) => decimal.TryParse(
        value, System.Globalization.NumberStyles.AllowDecimalPoint, System.Globalization.CultureInfo.InvariantCulture, out var number) ? number : null;

    private static long? Tenths(string value) => Number(value) is { } number ? Scaled.ToBase(number, 10) : null;

    private static Money? Amount(string value) =>
        decimal.TryParse(value, System.Globalization.NumberStyles.AllowDecimalPoint, System.Globalization.CultureInfo.InvariantCulture, out var amount)
        && Scaled.ToBase(amount, Money.PerUnit) is { } millionths ? new Money(millionths) : null;

    private static int? Whole(string value, int most) =>
        int.TryParse(value, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var number)
        && number <= most ? number : null;
}
