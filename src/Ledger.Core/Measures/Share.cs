namespace Ledger.Core.Measures;

/// <summary>Exact proportions of whole numbers. Nothing is created or lost by rounding.</summary>
public static class Share
{
    /// <summary>
    /// The whole part of <paramref name="total"/> × <paramref name="part"/> ÷ <paramref name="whole"/>, computed
    /// without overflow.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="whole"/> is not positive.</exception>
    public static long Of(long total, long part, long whole)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(whole);
        return checked((long)((Int128)total * part / whole));
    }

    /// <summary>As <see cref="Of"/>, rounded up: for loads on a bath, which must never be understated.</summary>
    public static long UpTo(long total, long part, long whole)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(whole);
        var (quotient, remainder) = Int128.DivRem((Int128)total * part, whole);
        return checked((long)(remainder > 0 ? quotient + 1 : quotient));
    }

    /// <summary>As <see cref="Of"/>, rounded to the nearest whole, halves up.</summary>
    public static long Nearest(long total, long part, long whole)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(whole);
        var (quotient, remainder) = Int128.DivRem((Int128)total * part * 2 + whole, (Int128)whole * 2);
        return checked((long)(remainder < 0 ? quotient - 1 : quotient));
    }

    /// <summary>
    /// Splits <paramref name="total"/> by weight with the method of the largest remainder (Hamilton): each part is the
    /// floor of its quota, and the units left over go, one each, to the largest fractional parts; ties go to the
    /// earlier part. The parts always add up to <paramref name="total"/>. When every weight is zero the parts are as
    /// equal as they can be.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">A weight or the total is negative.</exception>
    /// <exception cref="ArgumentException">There is something to split and nobody to take it.</exception>
    public static long[] Split(long total, params ReadOnlySpan<long> weights)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(total);
        if (total > 0 && weights.IsEmpty)
            throw new ArgumentException("there is nobody to take a share", nameof(weights));
        Int128 sum = 0;
        foreach (var weight in weights)
        {
            ArgumentOutOfRangeException.ThrowIfNegative(weight, nameof(weights));
            sum += weight;
        }

        if (weights.Length == 1)
            return [total];
        var parts = new long[weights.Length];
        var remainders = new Int128[weights.Length];
        var left = total;
        for (var i = 0; i < parts.Length; i++)
        {
            var (numerator, denominator) = sum == 0 ? (total, parts.Length) : ((Int128)total * weights[i], sum);
            var (quotient, remainder) = Int128.DivRem(numerator, denominator);
            parts[i] = (long)quotient;
            remainders[i] = remainder;
            left -= parts[i];
        }

        foreach (var i in Enumerable.Range(0, parts.Length).OrderByDescending(i => remainders[i]).Take((int)left))
            parts[i]++;
        return parts;
    }
}
