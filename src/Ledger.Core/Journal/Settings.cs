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

    /// <summary>What a new ledger starts with. Three rotations: Darkroom Cookbook, 3rd ed.</summary>
    public static Settings Default { get; } = new("", MeasureStyle.Metric, WarnDays: 30, RotationCeiling: 3);

    /// <summary>The names of the settings and what each accepts.</summary>
    public static IReadOnlyDictionary<string, string> Names { get; } = new Dictionary<string, string>
    {
        ["currency"] = "a currency code of three letters, such as EUR",
        ["liquids"] = "ml or floz",
        ["areas"] = "sqin or cm2",
        ["warn-days"] = "a whole number of days, 0 to 365",
        ["rotation-ceiling"] = "a whole number, 0 to 20",
        ["batch-sheets"] = BatchLimit.Accepted,
        ["pass-seconds"] = "the seconds in which a stack of sheets passes once, 1 to 600",
        ["short-minutes"] = "a whole number of minutes, 0 to 60",
        ["tray-depth"] = "the least millimetres of solution over a sheet, 0 to 100, with one decimal at most",
        ["graduate"] = "the finest step of your graduate in ml, such as 0.5 or 5, or exact",
    };

    /// <summary>The settings with one of them changed, or null when the name or the value is not accepted.</summary>
    public Settings? With(string name, string value) => (name, value) switch
    {
        ("currency", { Length: 3 }) when value.All(char.IsAsciiLetterUpper) => this with { Currency = value },
        ("liquids", "ml" or "floz") => this with { Style = Style with { UsesFluidOunces = value == "floz" } },
        ("areas", "sqin" or "cm2") => this with { Style = Style with { UsesSquareCentimetres = value == "cm2" } },
        ("warn-days", _) when Whole(value, 365) is { } days => this with { WarnDays = days },
        ("rotation-ceiling", _) when Whole(value, 20) is { } ceiling => this with { RotationCeiling = ceiling },
        ("batch-sheets", _) when BatchLimit.Read(value) is { } limit => this with { Tray = Tray with { Limit = limit } },
        ("pass-seconds", _) when Whole(value, 600) is { } seconds and > 0 => this with { Tray = Tray with { PassSeconds = seconds } },
        ("short-minutes", _) when Whole(value, 60) is { } minutes => this with { Tray = Tray with { ShortMinutes = minutes } },
        ("tray-depth", _) when Tenths(value) is { } tenths and <= 1000 => this with { Tray = Tray with { DepthTenths = (int)tenths } },
        ("graduate", "exact") => this with { Tray = Tray with { Graduate = null } },
        ("graduate", _) when Number(value) is > 0 and <= 1000 and var step && Scaled.ToBase(step, 1000) is { } microlitres =>
            this with { Tray = Tray with { Graduate = Volume.FromMicrolitres(microlitres) } },
        _ => null,
    };

    private static decimal? Number(string value) => decimal.TryParse(
        value, System.Globalization.NumberStyles.AllowDecimalPoint, System.Globalization.CultureInfo.InvariantCulture, out var number) ? number : null;

    private static long? Tenths(string value) => Number(value) is { } number ? Scaled.ToBase(number, 10) : null;

    private static int? Whole(string value, int most) =>
        int.TryParse(value, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var number)
        && number <= most ? number : null;
}
