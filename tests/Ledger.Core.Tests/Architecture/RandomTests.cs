using System.Text.RegularExpressions;
using CsCheck;

namespace Ledger.Core.Tests.Architecture;

/// <summary>A test of random cases that fails can be repeated.</summary>
public sealed partial class RandomTests
{
    [Fact]
    public void A_random_test_that_fails_prints_the_seed_that_repeats_it()
    {
        var failed = Assert.Throws<CsCheckException>(() => Gen.Int[1, 1_000_000].Array[3].Sample(_ => false,
            iter: 1, threads: 1));
        var seed = Seed().Match(failed.Message).Groups["seed"].Value;
        Assert.Equal(Drawn(seed), Drawn(seed));
        Assert.Contains($"[{string.Join(", ", Drawn(seed))}]", failed.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void No_test_draws_without_a_seed() => Findings.None(
        from file in Repository.Files("tests")
        from line in file.Code
        where Unrepeatable().IsMatch(line.Text)
        select $"{file}:{line.Number}: {line.Text.Trim()}");

    private static int[] Drawn(string seed)
    {
        int[] drawn = [];
        Assert.Throws<CsCheckException>(() => Gen.Int[1, 1_000_000].Array[3].Sample(
            numbers =>
            {
                drawn = numbers;
                return false;
            },
            seed: seed, iter: 1, threads: 1));
        return drawn;
    }

    [GeneratedRegex("seed: \"(?<seed>[^\"]+)\"", RegexOptions.ExplicitCapture)]
    private static partial Regex Seed();

    [GeneratedRegex(@"\bnew Random\((?!\d|seed)|\bRandom\.Shared\b(?!"")")]
    private static partial Regex Unrepeatable();
}
