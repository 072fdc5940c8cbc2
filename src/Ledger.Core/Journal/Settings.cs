using Ledger.Core.Measures;

namespace Ledger.Core.Journal;

/// <summary>The settings of a whole ledger.</summary>
/// <param name="Currency">The ledger's currency (ISO 4217); empty until the first receipt or setting names it.</param>
/// <param name="Style">The units the user reads.</param>
/// <param name="WarnDays">How many days before an end a notice appears.</param>
/// <param name="RotationCeiling">How often a pair of baths may be rotated before both are mixed anew.</param>
public sealed record Settings(string Currency, MeasureStyle Style, int WarnDays, int RotationCeiling)
{
    /// <summary>The length of the periods by which use is counted for reordering: a week unless the user wants another.</summary>
    public int DemandDays { get; init; } = 7;

    /// <summary>What a new ledger starts with. Three rotations: Darkroom Cookbook, 3rd ed.</summary>
    public static Settings Default { get; } = new("", MeasureStyle.Metric, WarnDays: 30, RotationCeiling: 3);

    /// <summary>The names of the settings and what each accepts.</summary>
    public static IReadOnlyDictionary<string, string> Names { get; } = new Dictionary<string, string>
    {
        ["currency"] = "a currency code of three letters, such as EUR",
        ["liquids"] = "ml or floz",
        ["areas"] = "sqin or cm2",
        ["warn-days"] = "a whole number of days, 0 to 365",
        ["demand-days"] = "a whole number of days, 1 to 92",
        ["rotation-ceiling"] = "a whole number, 0 to 20",
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
        _ => null,
    };

    private static int? Whole(string value, int most) =>
        int.TryParse(value, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var number)
        && number <= most ? number : null;
}
