using Ledger.Core.Baths;
using Ledger.Core.Measures;

namespace Ledger.Published.Tests;

/// <summary>The arithmetic of replenishment: capacity is volume by rate. The printed figures are rounded; the tables count litres first.</summary>
public sealed class ReplenishmentTests
{
    private const decimal MillilitresPerGallon = 3785.411784m;

    /// <summary>DEV-06 to DEV-11: E-6 process manual, chemicals and mixing, table 2-1.</summary>
    private const string Kits = """
        row    | gallons | ml per sq ft | sq ft
        DEV-06 | 25      | 200          | 475
        DEV-07 | 100     | 100          | 3780
        DEV-08 | 50      | 100          | 1890
        DEV-09 | 5       | 20           | 950
        DEV-10 | 50      | 100          | 1890
        DEV-11 | 320     | 100          | 12110
        """;

    [Fact]
    public void A_kit_serves_the_printed_area() => Assert.All(Table.Read(Kits), row =>
    {
        var kit = Volume.FromMicrolitres((long)(row.Number("gallons") * MillilitresPerGallon * 1000));
        var per80 = Volume.FromMicrolitres((long)(row.Number("ml per sq ft") * 1000 * 80 / 144));
        var squareFeet = ReplenishmentReading.AreaServedBy(kit, per80).SquareInches / 144;
        Assert.InRange(squareFeet / row.Number("sq ft"), 0.995m, 1.005m);
        Assert.True(ReplenishmentReading.For(Area.FromSquareInches(squareFeet * 144), per80) <= kit + Volume.FromMicrolitres(1));
    });

    [Fact]
    public void Film_of_72_feet_a_minute_takes_144_millilitres_a_minute()
    {
        // DEV-12, microfilm processing manual: 84 ft in 70 s, at 2 ml per ft. A foot stands for 80 sq in here: the rule is the same.
        var feet = 84m / 70 * 60;
        Assert.Equal(144m, ReplenishmentReading.For(Area.FromSquareInches(feet * 80), Volume.FromMillilitres(2)).Millilitres);
    }

    [Theory]
    [InlineData(80, 20)]   // DEV-02: 20 ml for each 80 sq in, about what is carried over
    [InlineData(320, 80)]  // DEV-01: four rolls take four times as much
    [InlineData(81, 20.25)]
    public void Replenisher_goes_by_80_square_inches(decimal squareInches, decimal millilitres) =>
        Assert.Equal(millilitres, ReplenishmentReading.For(Area.FromSquareInches(squareInches), Volume.FromMillilitres(20)).Millilitres);
}
