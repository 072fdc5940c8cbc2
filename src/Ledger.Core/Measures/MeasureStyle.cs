namespace Ledger.Core.Measures;

/// <summary>
/// The units in which a user reads liquids and areas, and how finely money. What is stored does not depend on it.
/// </summary>
/// <param name="UsesFluidOunces">Liquids in US fluid ounces rather than millilitres.</param>
/// <param name="UsesSquareCentimetres">Areas in square centimetres rather than square inches.</param>
public sealed record MeasureStyle(bool UsesFluidOunces = false, bool UsesSquareCentimetres = false)
{
    /// <summary>Millilitres and square inches, the trade's usual pair.</summary>
    public static MeasureStyle Metric { get; } = new();

    /// <summary>
    /// The decimals that amounts of the ledger's currency are read with: 2 for EUR, 0 for JPY, from 0 to 6.
    /// </summary>
    public int MoneyDecimals { get; init; } = 2;

    /// <summary>The finest that is read: no graduate, syringe or scale of a darkroom shows more.</summary>
    private const int Decimals = 2;

    internal string Liquid(long microlitres) => UsesFluidOunces
        ? Measured(microlitres / 29573.5295625m, "fl oz") : Measured(microlitres / 1000m, "ml");

    internal static string Weight(long milligrams) => Measured(milligrams / 1000m, "g");

    /// <summary>What is there but too little to be shown is not told as nothing.</summary>
    private static string Measured(decimal value, string unit) =>
        value != 0 && Math.Round(value, Decimals, MidpointRounding.AwayFromZero) == 0
            ? $"less than 0.01 {unit}" : $"{Scaled.ToText(value, Decimals)} {unit}";

    internal string Surface(Area area) => UsesSquareCentimetres
        ? $"{Scaled.ToText(area.SquareCentimetres, 1)} cm²"
        : $"{Scaled.ToText(area.SquareInches, 1)} sq in";
}
