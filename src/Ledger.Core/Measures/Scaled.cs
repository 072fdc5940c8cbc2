namespace Ledger.Core.Measures;

/// <summary>
/// Turns what people write (31.25) into whole base units (31 250) and back, without ever rounding in silence.
/// </summary>
public static class Scaled
{
    /// <summary>
    /// The base units in <paramref name="value"/>, or null when it is finer than one base unit or too large to hold.
    /// </summary>
    public static long? ToBase(decimal value, long basePerUnit)
    {
        if (Math.Abs(value) > long.MaxValue / basePerUnit)
            return null;
        var scaled = value * basePerUnit;
        return scaled == decimal.Truncate(scaled) ? (long)scaled : null;
    }

    /// <summary>As <see cref="ToBase"/> for values from code, where a finer one is a mistake of the program.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> does not fit base units.</exception>
    public static long ToBaseExactly(decimal value, long basePerUnit) =>
        ToBase(value, basePerUnit)
        ?? throw new ArgumentOutOfRangeException(nameof(value), value, $"finer than 1/{basePerUnit} or too large");

    /// <summary>The value in units, without trailing zeros: 31250 at 1000 gives "31.25".</summary>
    public static string InUnits(long value, long basePerUnit) =>
        ToText((decimal)value / basePerUnit, 6);

    /// <summary>
    /// The number with at most <paramref name="decimals"/> decimals and no trailing zeros, in the invariant culture.
    /// </summary>
    public static string ToText(decimal value, int decimals) =>
        Math.Round(value, decimals, MidpointRounding.AwayFromZero).ToString("0.######", CultureInfo.InvariantCulture);

    /// <summary>
    /// The same number without trailing zeros (0.60 is 0.6), so that it is written one way, however it was typed or
    /// computed. Dividing by one with many decimals drops them.
    /// </summary>
    public static decimal Plain(decimal value) => value / 1.000000000000000000000000000000m;

    /// <summary>The number in full, without trailing zeros, in the invariant culture.</summary>
    public static string? PlainText(decimal? value) =>
        value is { } known ? Plain(known).ToString(CultureInfo.InvariantCulture) : null;
}
