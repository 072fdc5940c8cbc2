using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Rules;

/// <summary>
/// The currency of a delivery: the first one names the ledger's; a later one in another needs the day's rate.
/// </summary>
internal static class DeliveryCurrency
{
    public static void RequireRate(decimal? rate) =>
        Require.That(rate is null or (> 0 and < 1_000_000), "the rate must be more than 0 and less than a million");

    public static void Use(string? currency, decimal? rate, Draft draft)
    {
        if (currency is null)
            return;
        var settings = draft.Holdings.Settings;
        if (settings.Currency.Length == 0)
        {
            Require.That(
                rate is null or 1,
                $"the ledger has no currency yet, so a rate for {currency} means nothing; set the currency first");
            var named = settings.With("currency", currency);
            Require.That(named is not null,
                $"\"{currency}\" is not a currency code; write three capital letters, such as EUR");
            draft.Add(new SettingChanged("currency", currency, named!, IsImplied: true));
        }
        else if (currency == settings.Currency)
            Require.That(rate is null or 1,
                $"the ledger is kept in {currency}, so a delivery in {currency} needs no rate");
        else
            Require.That(
                rate is not null,
                $"the ledger is kept in {settings.Currency}; a delivery in {currency} needs the rate, "
                + $"the {settings.Currency} for one {currency}");
    }

    /// <summary>
    /// Nobody is billed half a cent: an amount that is finer was mistyped, or shared by hand and rounded.
    /// </summary>
    public static void RequirePayable(string? currency, Draft draft,
        params ReadOnlySpan<(Money Amount, string What)> amounts)
    {
        var code = currency ?? draft.Holdings.Settings.Currency;
        var isNothing = true;
        foreach (var (amount, what) in amounts)
        {
            isNothing &= amount == Money.Zero;
            Require.That(
                Currencies.CanPay(amount, code),
                $"{what}, {Scaled.ToText(amount.Amount, 6)}, is finer than {code} is counted, which has "
                    + $"{Decimals(code)}");
        }

        if (code.Length == 0 && !isNothing)
            draft.Remark(
                "the ledger has no currency yet: the setting currency names it, and amounts that are finer than it is "
                    + "counted are refused then");
    }

    private static string Decimals(string code) => Currencies.MinorUnits(code) switch
    {
        null or 0 => "no decimals",
        1 => "1 decimal",
        var decimals => $"{decimals} decimals",
    };
}
