namespace Ledger.Published.Tests;

/// <summary>The arithmetic of replenishment: so much for each 80 sq in.</summary>
public sealed class ReplenishmentTests
{
    [Theory]
    [InlineData(80, 20)]   // common practice, no source: about what is carried over
    [InlineData(320, 80)]  // common practice, no source: four rolls take four times as much
    [InlineData(81, 20.25)]
    public void Replenisher_goes_by_80_square_inches(decimal squareInches, decimal millilitres) =>
        Assert.Equal(millilitres,
            ReplenishmentReading.For(Area.FromSquareInches(squareInches), Volume.FromMillilitres(20)).Millilitres);
}
