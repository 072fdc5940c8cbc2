namespace Ledger.Published.Tests;

/// <summary>
/// How finely currencies are counted, against the list of the standard as a public data set prints it. What the list of
/// 2012 says otherwise than today's (UGX, CLF), and codes that have gone since, are left out.
/// </summary>
public sealed class CurrencyTests
{
    private const string Source = "ISO 4217, list one, as of 2012: data set currency-codes (Open Knowledge "
        + "Foundation), data/codes-all.csv, column MinorUnit";

    [Fact]
    [Published(Source, Values = 16)]
    public void No_decimals() => Have(0, 16, "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UYI VND VUV XAF XOF XPF");

    [Fact]
    [Published(Source, Values = 7)]
    public void Three_decimals() => Have(3, 7, "BHD IQD JOD KWD LYD OMR TND");

    [Fact]
    [Published(Source, Values = 124)]
    public void Two_decimals() => Have(
        2, 124,
        """
            AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BRL BSD BTN BWP BZD CAD CDF CHF CNY COP CRC CUP CVE
            CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR JMD KES KGS KHR
            KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MUR MVR MWK MXN MYR MZN NAD NGN NIO NOK NPR NZD PAB PEN
            PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SOS SRD SSP SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS
            UAH USD UYU UZS WST XCD YER ZAR
        """);

    /// <summary>The smallest amount of it can be paid, a tenth of that cannot.</summary>
    private static void Have(int decimals, int count, string codes)
    {
        var all = codes.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(count, all.Distinct().Count());
        Assert.All(all, code =>
        {
            Assert.Equal(decimals, Currencies.MinorUnits(code));
            var smallest = new Money(Enumerable.Repeat(10L, 6 - decimals).Aggregate(1L,
                (product, ten) => product * ten));
            Assert.True(Currencies.CanPay(smallest, code));
            Assert.False(Currencies.CanPay(new(smallest.Millionths / 10), code));
        });
    }
}
