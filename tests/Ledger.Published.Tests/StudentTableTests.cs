namespace Ledger.Published.Tests;

/// <summary>
/// The quantiles behind the range in which a bath's clearing time is expected to reach its limit, against printed
/// tables.
/// </summary>
public sealed class StudentTableTests
{
    /// <summary>Upper critical values: the chance of less, by degrees of freedom.</summary>
    [Published(
        "NIST/SEMATECH e-Handbook of Statistical Methods, National Institute of Standards and Technology, section "
            + "1.3.6.7.2: upper critical values of Student's t distribution",
                Columns = "0.90, 0.95, 0.975, 0.99, 0.995")]
    private const string Critical = """
        degrees | 0.90  | 0.95  | 0.975  | 0.99   | 0.995
        1       | 3.078 | 6.314 | 12.706 | 31.821 | 63.657
        2       | 1.886 | 2.920 | 4.303  | 6.965  | 9.925
        3       | 1.638 | 2.353 | 3.182  | 4.541  | 5.841
        4       | 1.533 | 2.132 | 2.776  | 3.747  | 4.604
        5       | 1.476 | 2.015 | 2.571  | 3.365  | 4.032
        6       | 1.440 | 1.943 | 2.447  | 3.143  | 3.707
        7       | 1.415 | 1.895 | 2.365  | 2.998  | 3.499
        8       | 1.397 | 1.860 | 2.306  | 2.896  | 3.355
        9       | 1.383 | 1.833 | 2.262  | 2.821  | 3.250
        10      | 1.372 | 1.812 | 2.228  | 2.764  | 3.169
        11      | 1.363 | 1.796 | 2.201  | 2.718  | 3.106
        12      | 1.356 | 1.782 | 2.179  | 2.681  | 3.055
        13      | 1.350 | 1.771 | 2.160  | 2.650  | 3.012
        14      | 1.345 | 1.761 | 2.145  | 2.624  | 2.977
        15      | 1.341 | 1.753 | 2.131  | 2.602  | 2.947
        16      | 1.337 | 1.746 | 2.120  | 2.583  | 2.921
        17      | 1.333 | 1.740 | 2.110  | 2.567  | 2.898
        18      | 1.330 | 1.734 | 2.101  | 2.552  | 2.878
        19      | 1.328 | 1.729 | 2.093  | 2.539  | 2.861
        20      | 1.325 | 1.725 | 2.086  | 2.528  | 2.845
        21      | 1.323 | 1.721 | 2.080  | 2.518  | 2.831
        22      | 1.321 | 1.717 | 2.074  | 2.508  | 2.819
        23      | 1.319 | 1.714 | 2.069  | 2.500  | 2.807
        24      | 1.318 | 1.711 | 2.064  | 2.492  | 2.797
        25      | 1.316 | 1.708 | 2.060  | 2.485  | 2.787
        26      | 1.315 | 1.706 | 2.056  | 2.479  | 2.779
        27      | 1.314 | 1.703 | 2.052  | 2.473  | 2.771
        28      | 1.313 | 1.701 | 2.048  | 2.467  | 2.763
        29      | 1.311 | 1.699 | 2.045  | 2.462  | 2.756
        30      | 1.310 | 1.697 | 2.042  | 2.457  | 2.750
        40      | 1.303 | 1.684 | 2.021  | 2.423  | 2.704
        """;

    [Fact]
    public void Critical_values_agree_with_the_handbook() => Assert.All(Table.Read(Critical), row =>
    {
        foreach (var below in new[] { "0.90", "0.95", "0.975", "0.99", "0.995" })
            Printed.Agrees(row, below, (decimal)StudentT.Quantile(
                2 * double.Parse(below, System.Globalization.CultureInfo.InvariantCulture) - 1, row.Count("degrees")));
    });

    /// <summary>
    /// Factors of an interval that holds a share of the distribution; the odd shares are one, two and three standard
    /// deviations.
    /// </summary>
    [Published(
        "Taylor, B. N. and Kuyatt, C. E.: Guidelines for Evaluating and Expressing the Uncertainty of NIST Measurement "
            + "Results, NIST Technical Note 1297, National Institute of Standards and Technology, 1994, table B.1",
                Columns = "68.27, 95.45, 99.73")]
    private const string Intervals = """
        degrees | 68.27 | 95.45 | 99.73
        1       | 1.84  | 13.97 | 235.80
        2       | 1.32  | 4.53  | 19.21
        3       | 1.20  | 3.31  | 9.22
        4       | 1.14  | 2.87  | 6.62
        5       | 1.11  | 2.65  | 5.51
        6       | 1.09  | 2.52  | 4.90
        7       | 1.08  | 2.43  | 4.53
        8       | 1.07  | 2.37  | 4.28
        9       | 1.06  | 2.32  | 4.09
        10      | 1.05  | 2.28  | 3.96
        11      | 1.05  | 2.25  | 3.85
        12      | 1.04  | 2.23  | 3.76
        13      | 1.04  | 2.21  | 3.69
        14      | 1.04  | 2.20  | 3.64
        15      | 1.03  | 2.18  | 3.59
        16      | 1.03  | 2.17  | 3.54
        17      | 1.03  | 2.16  | 3.51
        18      | 1.03  | 2.15  | 3.48
        19      | 1.03  | 2.14  | 3.45
        20      | 1.03  | 2.13  | 3.42
        """;

    [Fact]
    public void Intervals_agree_with_the_technical_note() => Assert.All(Table.Read(Intervals), row =>
    {
        foreach (var (percent, deviations) in new[] { ("68.27", 1), ("95.45", 2), ("99.73", 3) })
            Printed.Agrees(row, percent, (decimal)StudentT.Quantile(
                1 - 2 * MathNet.Numerics.Distributions.Normal.CDF(0, 1, -deviations), row.Count("degrees")));
    });
}
