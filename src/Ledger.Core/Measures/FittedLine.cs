namespace Ledger.Core.Measures;

/// <summary>A straight line through points by least squares, with what the points say about its uncertainty.</summary>
public sealed record FittedLine
{
    private readonly double _meanX;
    private readonly double _meanY;
    private readonly double _spread;

    private FittedLine(int count, double meanX, double meanY, double spread, double slope, double residual)
    {
        (Count, _meanX, _meanY, _spread, Slope, ResidualDeviation) = (count, meanX, meanY, spread, slope, residual);
    }

    /// <summary>How many points it goes through.</summary>
    public int Count { get; }

    /// <summary>The slope.</summary>
    public double Slope { get; }

    /// <summary>The height at zero.</summary>
    public double Intercept => _meanY - Slope * _meanX;

    /// <summary>
    /// The standard deviation of the points from the line, with two degrees of freedom less than there are points.
    /// </summary>
    public double ResidualDeviation { get; }

    /// <summary>The standard deviation of the slope.</summary>
    public double SlopeDeviation => ResidualDeviation / Math.Sqrt(_spread);

    /// <summary>The standard deviation of the height at zero.</summary>
    public double InterceptDeviation => ResidualDeviation * Math.Sqrt(1.0 / Count + _meanX * _meanX / _spread);

    /// <summary>
    /// The line through the points, or null when there are fewer than three or all stand at the same x.
    /// </summary>
    public static FittedLine? Through(IReadOnlyList<(double X, double Y)> points)
    {
        if (points.Count < 3)
            return null;
        var (meanX, meanY) = (points.Average(point => point.X), points.Average(point => point.Y));
        var spread = points.Sum(point => (point.X - meanX) * (point.X - meanX));
        if (spread <= 0)
            return null;
        var slope = points.Sum(point => (point.X - meanX) * (point.Y - meanY)) / spread;
        var squares = points.Sum(point =>
        {
            var off = point.Y - meanY - slope * (point.X - meanX);
            return off * off;
        });
        return new(points.Count, meanX, meanY, spread, slope, Math.Sqrt(squares / (points.Count - 2)));
    }

    /// <summary>The height of the line.</summary>
    public double At(double x) => _meanY + Slope * (x - _meanX);

    /// <summary>
    /// Where the line reaches a height, with the range in which it does so with the given confidence (Fieller's
    /// theorem). Null when it does not rise surely enough for the range to have an end.
    /// </summary>
    public (double At, double Least, double Most)? Reaches(double height, double confidence = 0.95)
    {
        if (Slope <= 0)
            return null;
        var t = StudentT.Quantile(confidence, Count - 2) * ResidualDeviation;
        var (rise, certain) = (height - _meanY, Slope * Slope - t * t / _spread);
        if (certain <= 0)
            return null;
        var inside = rise * rise / _spread + certain / Count;
        var off = t * Math.Sqrt(Math.Max(0, inside));
        var middle = Slope * rise;
        return (_meanX + rise / Slope, _meanX + (middle - off) / certain, _meanX + (middle + off) / certain);
    }
}
