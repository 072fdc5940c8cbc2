namespace Ledger.Published.Tests;

/// <summary>Exact conversions, and the same against a reference library at the precision of its doubles.</summary>
public sealed class UnitConversionTests
{
    private const double DoublePrecision = 1e-14;

    /// <summary>The reference library's fluid ounce differs from the definition in the twelfth figure.</summary>
    private const double ItsFluidOunce = 2e-12;

    /// <summary>
    /// US volumes are whole microlitres only in large amounts, so each row takes as many as make it exact.
    /// </summary>
    [Published("NIST Handbook 44, appendix C, National Institute of Standards and Technology 2024: gallon of 231 cubic "
        + "inches, and its parts",
        Columns = "ml in one, fl oz in one")]
    private const string Volumes = """
        unit        | ml in one      | fl oz in one | so many
        fluid ounce | 29.5735295625  | 1            | 10000000
        pint        | 473.176473     | 16           | 1000
        quart       | 946.352946     | 32           | 1000
        gallon      | 3785.411784    | 128          | 1000
        """;

    [Fact]
    public void A_volume_in_fluid_ounces_is_exact() => Assert.All(Table.Read(Volumes), row =>
    {
        var volume = Volume.FromMillilitres(row.Number("ml in one") * row.Number("so many"));
        Assert.Equal(row.Number("fl oz in one") * row.Number("so many"), volume.FluidOunces);
    });

    /// <summary>Cubic metres in one, to seven figures.</summary>
    [Published("Thompson, A. and Taylor, B. N.: Guide for the Use of the International System of Units, NIST Special "
        + "Publication 811, 2008, appendix B.9",
        Columns = "m3")]
    private const string SevenFigures = """
        unit        | fl oz | m3
        fluid ounce | 1     | 2.957353E-05
        pint        | 16    | 4.731765E-04
        quart       | 32    | 9.463529E-04
        gallon      | 128   | 3.785412E-03
        """;

    [Fact]
    public void A_volume_in_cubic_metres_is_fluid_ounces_to_seven_figures() =>
        Assert.All(Table.Read(SevenFigures), row =>
        {
            var ounces = Volume.FromMillilitres(row.Number("m3") * 1_000_000 * 1000).FluidOunces / 1000;
            Assert.InRange(ounces / row.Number("fl oz") - 1, -2e-7m, 2e-7m);
        });

    [Fact]
    [Published("US Code of Federal Regulations, 16 CFR 500.19: conversions", Values = 1)]
    public void A_millilitre_is_0_033814_fluid_ounces() =>
        Assert.Equal(0.033814m, Math.Round(Volume.FromMillilitres(1).FluidOunces, 6));

    [Fact]
    [Published("US Code of Federal Regulations, 16 CFR 500.19: 29.5735 ml, 946.353 ml, 3.78541 l", Values = 3)]
    public void A_volume_shows_in_the_fluid_ounces_of_16_CFR_500_19()
    {
        var style = new MeasureStyle(UsesFluidOunces: true);
        Assert.Equal("1 fl oz", Volume.FromMicrolitres(29_574).ToText(style));
        Assert.Equal("32 fl oz", Volume.FromMillilitres(946.353m).ToText(style));
        Assert.Equal("128 fl oz", Volume.FromMillilitres(3785.41m).ToText(style));
    }

    /// <summary>2.54 cm and 6.4516 cm² are exact.</summary>
    [Published("US Code of Federal Regulations, 16 CFR 500.19: inch and square inch, marked exact", Columns = "cm²")]
    private const string Areas = """
        format       | sq in | cm²    | mm²
        1x1in        | 1     | 6.4516 | 645.16
        2.54x2.54cm  | 1     | 6.4516 | 645.16
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
        AssertClose(UnitsNet.Area.FromSquareMillimeters(ours.Hundredths / 100d).SquareInches,
            (double)ours.SquareInches);
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
