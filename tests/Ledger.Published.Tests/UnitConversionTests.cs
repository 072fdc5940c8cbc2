using Ledger.Core.Measures;

namespace Ledger.Published.Tests;

/// <summary>Exact conversions, and the same against a reference library at the precision of its doubles.</summary>
public sealed class UnitConversionTests
{
    private const double DoublePrecision = 1e-14;

    /// <summary>The reference library's fluid ounce differs from the definition in the twelfth figure.</summary>
    private const double ItsFluidOunce = 2e-12;

    /// <summary>US volumes are whole microlitres only in large amounts, so each row takes as many as make it exact.</summary>
    private const string Volumes = """
        row  | unit        | ml in one      | fl oz in one | so many  | source
        U-08 | fluid ounce | 29.5735295625  | 1            | 10000000 | exact capacity table compiled from NIST values; gallon / 128
        U-07 | pint        | 473.176473     | 16           | 1000     | the same; gallon / 8
        U-06 | quart       | 946.352946     | 32           | 1000     | customary fluid-volume table; gallon / 4
        U-05 | gallon      | 3785.411784    | 128          | 1000     | the same; 231 cubic inches (UNT-07, NIST Handbook 44 App. C)
        """;

    [Fact]
    public void A_volume_in_fluid_ounces_is_exact() => Assert.All(Table.Read(Volumes), row =>
    {
        var volume = Volume.FromMillilitres(row.Number("ml in one") * row.Number("so many"));
        Assert.Equal(row.Number("fl oz in one") * row.Number("so many"), volume.FluidOunces);
    });

    [Fact]
    public void A_gallon_is_231_cubic_inches() =>
        // NIST Handbook 44, appendix C (2024): 231 cubic inches, 128 fluid ounces; a cubic inch is 2.54³ ml.
        Assert.Equal(128_000, Volume.FromMillilitres(1000 * 231 * 2.54m * 2.54m * 2.54m).FluidOunces);

    [Fact]
    public void A_millilitre_is_0_033814_fluid_ounces() =>
        // UNT-12, 16 CFR 500.19.
        Assert.Equal(0.033814m, Math.Round(Volume.FromMillilitres(1).FluidOunces, 6));

    [Fact]
    public void A_volume_shows_in_the_fluid_ounces_of_16_CFR_500_19()
    {
        // U-25 to U-27: 29.5735 ml, 946.353 ml, 3.78541 l.
        var style = new MeasureStyle(UsesFluidOunces: true);
        Assert.Equal("1 fl oz", Volume.FromMicrolitres(29_574).ToText(style));
        Assert.Equal("32 fl oz", Volume.FromMillilitres(946.353m).ToText(style));
        Assert.Equal("128 fl oz", Volume.FromMillilitres(3785.41m).ToText(style));
    }

    /// <summary>Areas: 16 CFR 500.19 marks 2.54 cm and 6.4516 cm² exact.</summary>
    private const string Areas = """
        row  | format       | sq in | cm²    | mm²
        U-02 | 1x1in        | 1     | 6.4516 | 645.16
        U-03 | 25.4x25.4mm  | 1     | 6.4516 | 645.16
        U-01 | 2.54x2.54cm  | 1     | 6.4516 | 645.16
        """;

    [Fact]
    public void A_square_inch_is_exact() => Assert.All(Table.Read(Areas), row =>
    {
        var area = Format.Parse(row["format"]).Area;
        Assert.Equal(row.Number("sq in"), area.SquareInches);
        Assert.Equal(row.Number("cm²"), area.SquareCentimetres);
        Assert.Equal(row.Number("mm²"), area.Hundredths / 100m);
        Assert.Equal(Area.PerSquareInch, area.Hundredths);
    });

    [Theory]
    [InlineData(1)]
    [InlineData(20)]
    [InlineData(80)]
    [InlineData(154)]
    [InlineData(35.25)]
    [InlineData(1_000_000)]
    public void An_area_agrees_with_the_reference_library(double squareInches)
    {
        var ours = Area.FromSquareInches((decimal)squareInches);
        var reference = UnitsNet.Area.FromSquareInches(squareInches);
        AssertClose(reference.SquareCentimeters, (double)ours.SquareCentimetres);
        AssertClose(reference.SquareMillimeters, ours.Hundredths / 100d);
        AssertClose(UnitsNet.Area.FromSquareMillimeters(ours.Hundredths / 100d).SquareInches, (double)ours.SquareInches);
    }

    [Theory]
    [InlineData(0.001)]
    [InlineData(31.25)]
    [InlineData(1250)]
    [InlineData(3785.411)]
    [InlineData(25_000)]
    public void A_volume_agrees_with_the_reference_library(double millilitres)
    {
        var ours = Volume.FromMillilitres((decimal)millilitres);
        var reference = UnitsNet.Volume.FromMilliliters(millilitres);
        AssertClose(reference.UsOunces, (double)ours.FluidOunces, ItsFluidOunce);
        AssertClose(reference.Liters, (double)ours.Litres);
        AssertClose(reference.Microliters, ours.Microlitres);
    }

    private static void AssertClose(double reference, double ours, double within = DoublePrecision) =>
        Assert.InRange(Math.Abs(ours / reference - 1), 0, within);
}
