namespace Ledger.Core.Tests.Measures;

public sealed class ScaledTests
{
    [Fact]
    public void What_is_finer_than_a_base_unit_is_not_rounded_but_refused()
    {
        Assert.Equal(31_250, Scaled.ToBase(31.25m, 1000));
        Assert.Null(Scaled.ToBase(31.2505m, 1000));
        Assert.Null(Scaled.ToBase(0.5m, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Scaled.ToBaseExactly(0.0001m, 1000));
    }

    [Theory]
    [InlineData("9223372036854775")]
    [InlineData("-9223372036854775")]
    public void The_largest_amount_is_held(string units)
    {
        var value = decimal.Parse(units, System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(value * 1000, Scaled.ToBase(value, 1000)!.Value);
        Assert.Null(Scaled.ToBase(value * 10, 1000));
        Assert.Null(Scaled.ToBase(decimal.MaxValue, 1000));
    }

    [Theory]
    [InlineData(31_250, "31.25")]
    [InlineData(31_000, "31")]
    [InlineData(0, "0")]
    [InlineData(-500, "-0.5")]
    [InlineData(1, "0.001")]
    public void Trailing_zeros_are_not_written(long value, string text) =>
        Assert.Equal(text, Scaled.InUnits(value, 1000));

    [Fact]
    public void Nothing_is_never_written_as_less_than_nothing() => Assert.Equal("0", Scaled.ToText(-0.001m, 2));

    [Fact]
    public void Halves_are_rounded_away_from_nothing()
    {
        Assert.Equal("0.13", Scaled.ToText(0.125m, 2));
        Assert.Equal("-0.13", Scaled.ToText(-0.125m, 2));
    }
}
