namespace Ledger.Core.Measures;

/// <summary>The units in which a user reads liquids and areas, and how finely money. What is stored does not depend on it.</summary>
/// <param name="UsesFluidOunces">Liquids in US fluid ounces rather than millilitres.</param>
/// <param name="UsesSquareCentimetres">Areas in square centimetres rather than square inches.</param>
public sealed record MeasureStyle(bool UsesFluidOunces = false, bool UsesSquareCentimetres = false)
{
    /// <summary>Millilitres and square inches, the trade's usual pair.</summary>
    public static MeasureStyle Metric { get; } = new();

    /// <summary>The decimals that amounts of the ledger's currency are read with: 2 for EUR, 0 for JPY, from 0 to 6.</summary>
    public int MoneyDecimals { get; init; } = 2;

    internal string Liquid(long microlitres) => UsesFluidOunces
        ? $"{Scaled.ToText(microlitres / 29573.5295625m, 2)} fl oz"
        : $"{Scaled.InUnits(microlitres, 1000)} ml";

    internal string Surface(Area area) => UsesSquareCentimetres
        ? $"{Scaled.ToText(area.SquareCentimetres, 1)} cm²"
        : $"{Scaled.ToText(area.SquareInches, 1)} sq in";
}
