using CsCheck;

namespace Ledger.Core.Tests.Measures;

/// <summary>What a measure writes is read back as the same measure, whatever the thread's culture.</summary>
public sealed class RoundTripTests
{
    [Fact]
    public void A_decimal_comma_is_really_in_force()
    {
        using var comma = new CommaCulture();
        Assert.Equal("1,5", 1.5m.ToString(CultureInfo.CurrentCulture));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_dilution(bool decimalComma) => Everywhere(decimalComma, () =>
        Gens.Dilution.Sample(dilution => Assert.Equal(dilution, Dilution.Parse(dilution.Text))));

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_format(bool decimalComma) => Everywhere(decimalComma, () =>
        Gens.Format.Sample(format => Assert.Equal(format, Format.Parse(format.Code))));

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_date(bool decimalComma) => Everywhere(decimalComma, () =>
        Gens.Date.Sample(date => Assert.Equal(date, Dates.Parse(Dates.Text(date)))));

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Money(bool decimalComma) => Everywhere(decimalComma, () =>
        Gens.Money.Sample(money => Assert.Equal(money, Core.Measures.Money.Of(Number(money.ToString())))));

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_quantity(bool decimalComma) => Everywhere(decimalComma, () => Gens.Quantity.Sample(quantity =>
    {
        var words = quantity.ToString().Split(' ');
        var unit = Units.Named(words[1]) ?? Units.Named(words[1].TrimEnd('s'));
        Assert.Equal(quantity, Quantity.Of(Number(words[0]), unit!.Value));
    }));

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_volume(bool decimalComma) => Everywhere(decimalComma, () => Gens.Volume.Sample(volume =>
        Assert.Equal(volume,
            Volume.FromMillilitres(Number(volume.ToString().Replace(" ml", "", StringComparison.Ordinal))))));

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void An_area_through_its_exact_square_inches(bool decimalComma) => Everywhere(decimalComma, () =>
        Gens.Area.Sample(area => Assert.Equal(area, Area.FromSquareInches(area.SquareInches))));

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Base_units(bool decimalComma) => Everywhere(decimalComma, () =>
        Gen.Long[-1_000_000_000_000, 1_000_000_000_000].Sample(value =>
            Assert.Equal(value, Scaled.ToBase(Number(Scaled.InUnits(value, 1000)), 1000))));

    private static void Everywhere(bool decimalComma, Action check)
    {
        if (!decimalComma)
        {
            check();
            return;
        }

        using var comma = new CommaCulture();
        check();
    }

    private static decimal Number(string text) =>
        decimal.Parse(text, NumberStyles.Number, CultureInfo.InvariantCulture);
}
