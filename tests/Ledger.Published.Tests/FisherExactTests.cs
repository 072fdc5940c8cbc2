using MathNet.Numerics.Distributions;

namespace Ledger.Published.Tests;

/// <summary>Fisher's exact test against his own figures and the library's hypergeometric distribution.</summary>
public class FisherExactTests
{
    /// <summary>
    /// R. A. Fisher, The Design of Experiments, Oliver and Boyd, 1935, chapter II: of eight cups three of the four are
    /// told right; 17 of the 70 ways are as
    /// good or better. The same table in A. Agresti, Categorical Data Analysis, Wiley, 1990, pages 61-62.
    /// </summary>
    [Fact]
    [Published("Fisher, R. A.: The Design of Experiments, Oliver and Boyd 1935, chapter II; Agresti, A.: Categorical "
        + "Data Analysis, Wiley 1990, p. 61-62",
        Values = 2)]
    public void The_lady_tasting_tea()
    {
        Assert.Equal(17.0 / 70, FisherExact.Worse(3, 4, 1, 4), 12);
        Assert.Equal(34.0 / 70, FisherExact.Different(3, 4, 1, 4), 12);
        Assert.Equal(1.0 / 70, FisherExact.Worse(4, 4, 0, 4), 12);
    }

    /// <summary>
    /// R. A. Fisher, Statistical Methods for Research Workers, 5th edition, Oliver and Boyd, 1934, section 21.02:
    /// convictions of like-sex twins of criminals,
    /// 10 of 13 and 2 of 17; the chance is 619 / 1330665. Two-sided 0.0005367 in the documentation of fisher.test of R
    /// (R Core Team).
    /// </summary>
    [Fact]
    [Published("Fisher, R. A.: Statistical Methods for Research Workers, 5th ed., Oliver and Boyd 1934, section 21.02; "
        + "R Core Team: fisher.test", Values = 2)]
    public void The_twins_of_criminals()
    {
        Assert.Equal(619.0 / 1330665, FisherExact.Worse(10, 13, 2, 17), 12);
        Assert.Equal(0.0005367, FisherExact.Different(10, 13, 2, 17), 7);
    }

    [Fact]
    public void Every_small_table_and_large_ones_agree_with_the_hypergeometric_distribution_of_a_library()
    {
        var compared = 0;
        foreach (var (all, otherAll) in new[] { (1, 1), (4, 7), (12, 30), (25, 3), (60, 400), (900, 4000) })
            for (var bad = 0; bad <= all; bad += Math.Max(1, all / 7))
                for (var otherBad = 0; otherBad <= otherAll; otherBad += Math.Max(1, otherAll / 5))
                {
                    var distribution = new Hypergeometric(all + otherAll, bad + otherBad, all);
                    var (least, most) = (Math.Max(0, bad + otherBad - otherAll), Math.Min(all, bad + otherBad));
                    var chances = Enumerable.Range(least, most - least + 1).Select(distribution.ProbabilityLn).ToList();
                    var seen = distribution.ProbabilityLn(bad);
                    var worse = chances.Skip(bad - least).Sum(Math.Exp);
                    var different = chances.Where(chance => chance <= seen + 1e-7).Sum(Math.Exp);
                    Assert.True(Math.Abs(worse - FisherExact.Worse(bad, all, otherBad, otherAll)) <= 1e-8 * Math.Max(
                        worse, 1e-8), $"{bad}/{all} {otherBad}/{otherAll}");
                    Assert.True(Math.Abs(different - FisherExact.Different(bad, all, otherBad, otherAll)) <= 1e-7,
                        $"{bad}/{all} {otherBad}/{otherAll}");
                    compared++;
                }

        Assert.True(compared > 100, $"only {compared} tables");
    }

    [Theory]
    [InlineData(0.6, "as likely as not")]
    [InlineData(0.3, "1 time in 3")]
    [InlineData(0.25, "once in 4")]
    [InlineData(0.0245, "once in 40")]
    [InlineData(0.004, "once in 250")]
    [InlineData(0.0004651809, "once in 2100")]
    [InlineData(1e-12, "once in 1000000")]
    public void A_chance_is_said_as_once_in_so_many_never_rarer_than_it_is(double chance, string words) =>
        Assert.Equal(words, FisherExact.InWords(chance));

    [Fact]
    public void Counts_that_cannot_be_are_refused() => Assert.Throws<ArgumentOutOfRangeException>(() =>
        FisherExact.Worse(5, 4, 0, 1));
}
