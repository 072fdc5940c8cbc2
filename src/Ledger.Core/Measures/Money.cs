namespace Ledger.Core.Measures;

/// <summary>An amount of the ledger's currency in whole millionths of its unit. Differences may be negative.</summary>
/// <param name="Millionths">The amount in millionths.</param>
public readonly record struct Money(long Millionths) : IComparable<Money>
{
    /// <summary>Millionths in one unit of the currency.</summary>
    public const long PerUnit = 1_000_000;

    /// <summary>Nothing.</summary>
    public static Money Zero => default;

    /// <summary>The amount in units of the currency.</summary>
    public decimal Amount => (decimal)Millionths / PerUnit;

    /// <summary>The amount, at most six decimals.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Finer than a millionth.</exception>
    public static Money Of(decimal amount) => new(Scaled.ToBaseExactly(amount, PerUnit));

    /// <summary>The amount times a rate of exchange, rounded to the nearest millionth.</summary>
    public Money At(decimal rate) => new(decimal.ToInt64(Math.Round(Millionths * rate, MidpointRounding.AwayFromZero)));

    /// <summary>The sum.</summary>
    public static Money operator +(Money left, Money right) => new(left.Millionths + right.Millionths);

    /// <summary>The difference.</summary>
    public static Money operator -(Money left, Money right) => new(left.Millionths - right.Millionths);

    /// <summary>
    /// The share that falls on <paramref name="part"/> of <paramref name="whole"/>, rounded down; the rest stays
    /// behind.
    /// </summary>
    public Money PartOf(long part, long whole) => part == whole ? this : new(Share.Of(Millionths, part, whole));

    /// <summary>The amount per one of a count, for display; null when the count is zero.</summary>
    public Money? Per(long count) => count == 0 ? null : new(Share.Nearest(Millionths, 1, count));

    /// <summary>
    /// How many percent of another amount, halves rounded away from zero; null when that is nothing or less.
    /// </summary>
    public decimal? PercentOf(Money whole, int decimals) =>
        whole <= Zero ? null : Math.Round(100m * Millionths / whole.Millionths, decimals,
            MidpointRounding.AwayFromZero);

    /// <inheritdoc/>
    public int CompareTo(Money other) => Millionths.CompareTo(other.Millionths);

    /// <summary>Whether the left is less.</summary>
    public static bool operator <(Money left, Money right) => left.Millionths < right.Millionths;

    /// <summary>Whether the left is more.</summary>
    public static bool operator >(Money left, Money right) => left.Millionths > right.Millionths;

    /// <summary>Whether the left is not more.</summary>
    public static bool operator <=(Money left, Money right) => left.Millionths <= right.Millionths;

    /// <summary>Whether the left is not less.</summary>
    public static bool operator >=(Money left, Money right) => left.Millionths >= right.Millionths;

    /// <summary>The exact amount with six decimals: "7.598000".</summary>
    public override string ToString() => Amount.ToString("0.000000", CultureInfo.InvariantCulture);

    /// <summary>The amount to the nearest whole one of so many decimals, halves away from zero: what is read.</summary>
    /// <param name="decimals">The decimals of the currency, from 0 to 6.</param>
    public Money ToNearest(int decimals) => Of(Math.Round(Amount, decimals, MidpointRounding.AwayFromZero));

    /// <summary>The same as text: "7.60" in a currency of two decimals, "8" in one of none.</summary>
    /// <param name="style">How the ledger's currency is counted.</param>
    public string Text(MeasureStyle style) => ToNearest(style.MoneyDecimals).Amount.ToString(
        $"F{style.MoneyDecimals}", CultureInfo.InvariantCulture);
}
