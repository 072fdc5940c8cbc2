using MathNet.Numerics;

namespace Ledger.Published.Tests;

/// <summary>The line through clearing tests against a certified data set and a library of statistics.</summary>
public sealed class FittedLineTests
{
    /// <summary>NIST StRD, data set Norris (calibration of ozone monitors): y and x.</summary>
    private static readonly (double X, double Y)[] _norris =
    [
        (0.2, 0.1), (337.4, 338.8), (118.2, 118.1), (884.6, 888.0), (10.1, 9.2), (226.5, 228.1),
        (666.3, 668.5), (996.3, 998.5), (448.6, 449.1), (777.0, 778.9), (558.2, 559.2), (0.4, 0.3),
        (0.6, 0.1), (775.5, 778.1), (666.9, 668.8), (338.0, 339.3), (447.5, 448.9), (11.6, 10.8),
        (556.0, 557.7), (228.1, 228.3), (995.8, 998.0), (887.6, 888.8), (120.2, 119.6), (0.3, 0.3), (0.3, 0.6),
        (556.8, 557.6), (339.1, 339.3), (887.2, 888.0), (999.0, 998.5), (779.0, 778.9), (11.1, 10.2),
        (118.3, 117.6), (229.2, 228.9), (669.1, 668.4), (448.9, 449.2), (0.5, 0.2),
    ];

    [Fact]
    [Published("NIST Statistical Reference Datasets (StRD), linear regression, data set Norris: 5 certified values",
        Values = 5)]
    public void The_certified_line_is_met_to_eleven_digits()
    {
        var line = FittedLine.Through(_norris)!;
        Near(-0.262323073774029, line.Intercept);
        Near(1.00211681802045, line.Slope);
        Near(0.232818234301152, line.InterceptDeviation);
        Near(0.429796848199937e-03, line.SlopeDeviation);
        Near(0.884796396144373, line.ResidualDeviation);
    }

    [Fact]
    public void A_library_draws_the_same_lines()
    {
        var random = new Random(4711);
        for (var round = 0; round < 200; round++)
        {
            var points = Enumerable.Range(0, random.Next(3, 12))
                .Select(i => (X: i * 100 + random.NextDouble() * 50, Y: 1 + i * random.NextDouble())).ToArray();
            var line = FittedLine.Through(points)!;
            var (intercept, slope) = Fit.Line([.. points.Select(point => point.X)],
                [.. points.Select(point => point.Y)]);
            Assert.Equal(intercept, line.Intercept, 1e-9);
            Assert.Equal(slope, line.Slope, 1e-9);
        }
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(0.9)]
    [InlineData(0.95)]
    [InlineData(0.99)]
    public void A_library_has_the_same_quantiles_of_t(double share)
    {
        for (var degrees = 1; degrees <= 40; degrees++)
            Near(LibraryQuantile(share, degrees), StudentT.Quantile(share, degrees), 1e-8);
    }

    [Fact]
    public void The_range_in_which_the_limit_is_reached_ends_where_the_lines_band_does()
    {
        // At both ends of the range the height lies exactly t standard errors off the line.
        (double X, double Y)[] points = [(0, 1), (300, 1.2), (600, 1.35), (900, 1.7)];
        var line = FittedLine.Through(points)!;
        var (at, least, most) = line.Reaches(2)!.Value;
        Assert.InRange(at, least, most);
        Assert.Equal(2, line.At(at), 1e-12);
        foreach (var end in new[] { least, most })
            Assert.Equal(Math.Abs(2 - line.At(end)), LibraryQuantile(0.95, 2) * Deviation(line, points, end), 1e-9);
    }

    private static double Deviation(FittedLine line, (double X, double Y)[] points, double x)
    {
        var mean = points.Average(point => point.X);
        var spread = points.Sum(point => Math.Pow(point.X - mean, 2));
        return line.ResidualDeviation * Math.Sqrt(1.0 / points.Length + Math.Pow(x - mean, 2) / spread);
    }

    private static void Near(double expected, double actual, double relative = 1e-11) =>
        Assert.InRange(Math.Abs(actual / expected - 1), 0, relative);

    /// <summary>The library's quantile, two-sided.</summary>
    private static double LibraryQuantile(double share, int degrees) =>
        MathNet.Numerics.Distributions.StudentT.InvCDF(0, 1, degrees, (1 + share) / 2);
}
