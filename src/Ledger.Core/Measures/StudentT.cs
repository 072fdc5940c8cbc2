namespace Ledger.Core.Measures;

/// <summary>
/// Student's distribution for a whole number of degrees of freedom: how far a line through few points can be trusted.
/// </summary>
public static class StudentT
{
    /// <summary>The share of the distribution between -t and t (Abramowitz and Stegun, 26.7.3 and 26.7.4).</summary>
    /// <param name="t">Zero or more.</param>
    /// <param name="degrees">Degrees of freedom, from 1 on.</param>
    public static double Within(double t, int degrees)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(degrees, 1);
        var angle = Math.Atan(t / Math.Sqrt(degrees));
        var (sine, cosine) = Math.SinCos(angle);
        var isOdd = degrees % 2 == 1;
        var (sum, term) = (0.0, isOdd ? cosine : 1.0);
        for (var power = isOdd ? 1 : 0; power <= degrees - 2; power += 2)
        {
            sum += term;
            term *= cosine * cosine * (power + 1) / (power + 2);
        }

        return isOdd ? (angle + sine * sum) * 2 / Math.PI : sine * sum;
    }

    /// <summary>The t within which a share of the distribution lies: 0.95 for what is usually stated.</summary>
    public static double Quantile(double share, int degrees)
    {
        var (low, high) = (0.0, 1.0);
        while (Within(high, degrees) < share)
            high *= 2;
        for (var i = 0; i < 200 && low < high; i++)
        {
            var middle = low + (high - low) / 2;
            if (middle <= low || middle >= high)
                break;
            (low, high) = Within(middle, degrees) < share ? (middle, high) : (low, middle);
        }

        return high;
    }
}
