namespace Ledger.Core.Measures;

/// <summary>
/// How finely the currencies of the world are counted: the minor units of ISO 4217, list one (SIX Financial
/// Information, the maintenance agency). What is not listed is not known, and nothing is assumed of it.
/// </summary>
public static class Currencies
{
    private static readonly HashSet<string> Whole = Set(
        "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF");

    private static readonly HashSet<string> Hundredths = Set(
        """
        AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CNY COP
        CRC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR
        IRR JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MYR MZN
        NAD NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP
        STN SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD UYU UZS VED VES WST XCD YER ZAR ZMW
        """);

    private static readonly HashSet<string> Thousandths = Set("BHD IQD JOD KWD LYD OMR TND");
    private static readonly HashSet<string> TenThousandths = Set("CLF UYW");

    /// <summary>
    /// The decimals of a currency's smallest amount: 2 for EUR, 0 for JPY, 3 for KWD; null for an unknown code.
    /// </summary>
    public static int? MinorUnits(string code) =>
        Hundredths.Contains(code) ? 2
        : Whole.Contains(code) ? 0
        : Thousandths.Contains(code) ? 3
        : TenThousandths.Contains(code) ? 4
        : null;

    /// <summary>Whether an amount can be paid in a currency; one of an unknown currency always can.</summary>
    public static bool CanPay(Money amount, string code)
    {
        var smallest = Money.PerUnit;
        for (var i = MinorUnits(code) ?? 6; i > 0; i--)
            smallest /= 10;
        return amount.Millionths % smallest == 0;
    }

    private static HashSet<string> Set(string codes) =>
        codes.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).ToHashSet(StringComparer.Ordinal);
}
