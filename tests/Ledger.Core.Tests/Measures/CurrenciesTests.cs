namespace Ledger.Core.Tests.Measures;

public sealed class CurrenciesTests
{
    /// <summary>ISO 4217, list one.</summary>
    [Theory]
    [InlineData("EUR", 2)]
    [InlineData("USD", 2)]
    [InlineData("GBP", 2)]
    [InlineData("JPY", 0)]
    [InlineData("KRW", 0)]
    [InlineData("KWD", 3)]
    [InlineData("TND", 3)]
    [InlineData("UYW", 4)]
    [InlineData("XQQ", null)]
    [InlineData("", null)]
    public void Minor_units_are_those_of_the_standard(string code, int? units) =>
        Assert.Equal(units, Currencies.MinorUnits(code));

    [Theory]
    [InlineData("EUR", "7.59", true)]
    [InlineData("EUR", "7.598", false)]
    [InlineData("JPY", "760", true)]
    [InlineData("JPY", "760.5", false)]
    [InlineData("KWD", "7.598", true)]
    [InlineData("KWD", "7.5985", false)]
    [InlineData("XQQ", "7.598321", true)]
    public void An_amount_can_be_paid_when_it_is_not_finer_than_that(string code, string amount, bool canPay) =>
        Assert.Equal(canPay,
            Currencies.CanPay(Money.Of(decimal.Parse(amount, System.Globalization.CultureInfo.InvariantCulture)),
                code));
}
