using CsCheck;

namespace Ledger.Core.Tests.Measures;

public sealed class ShareTests
{
    private static readonly Gen<long> Amount = Gen.OneOf(Gen.Long[0, 1000], Gen.Long[0, long.MaxValue / 2]);

    private static readonly Gen<long[]> Weights = Gen.OneOf(Gen.Long[0, 10],
        Gen.Long[0, 1_000_000_000_000]).Array[1, 12];

    [Fact]
    public void The_parts_add_up_to_the_whole() =>
        Gen.Select(Amount, Weights).Sample((total, weights) => Share.Split(total, weights).Sum() == total);

    [Fact]
    public void Each_part_is_within_one_of_its_quota() => Gen.Select(Amount, Weights).Sample((total, weights) =>
    {
        var parts = Share.Split(total, weights);
        var sum = weights.Aggregate(Int128.Zero, (so, weight) => so + weight);
        for (var i = 0; i < parts.Length; i++)
        {
            var (numerator, denominator) = sum == 0 ? (total, weights.Length) : ((Int128)total * weights[i], sum);
            Assert.InRange(parts[i] * denominator, numerator - denominator + 1, numerator + denominator - 1);
        }
    });

    /// <summary>
    /// The definition: each part is the floor of its quota or one more, and no part with one more had the smaller
    /// remainder.
    /// </summary>
    [Fact]
    public void What_the_floors_leave_goes_to_the_largest_remainders() =>
        Gen.Select(Amount, Weights).Sample((total, weights) =>
        {
            var parts = Share.Split(total, weights);
            var sum = weights.Aggregate(Int128.Zero, (so, weight) => so + weight);
            var quotas = weights.Select(weight => sum == 0
                ? Int128.DivRem(total, weights.Length)
                : Int128.DivRem((Int128)total * weight, sum)).ToList();
            Assert.All(parts.Zip(quotas),
                pair => Assert.True(pair.First == pair.Second.Quotient || pair.First == pair.Second.Quotient + 1));
            for (var i = 0; i < parts.Length; i++)
                for (var j = 0; j < parts.Length; j++)
                    if (parts[i] > quotas[i].Quotient && parts[j] == quotas[j].Quotient)
                        Assert.True(quotas[i].Remainder > quotas[j].Remainder
                            || (quotas[i].Remainder == quotas[j].Remainder && i < j));
        });

    [Fact]
    public void A_larger_weight_never_gets_less() => Gen.Select(Amount, Weights).Sample((total, weights) =>
    {
        var parts = Share.Split(total, weights);
        for (var i = 0; i < parts.Length; i++)
            for (var j = 0; j < parts.Length; j++)
                Assert.True(weights[i] <= weights[j] || parts[i] >= parts[j]);
    });

    [Fact]
    public void Nothing_of_a_weight_gets_nothing_unless_all_weigh_nothing()
    {
        Assert.Equal([0, 10], Share.Split(10, 0, 3));
        Assert.Equal([4, 3, 3], Share.Split(10, 0, 0, 0));
    }

    [Fact]
    public void A_share_without_anyone_to_take_it_is_refused()
    {
        Assert.Empty(Share.Split(0));
        Assert.Throws<ArgumentException>(() => Share.Split(1));
    }

    [Fact]
    public void Negative_totals_and_weights_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Share.Split(-1, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Share.Split(1, 1, -1));
    }

    [Theory]
    [InlineData(10, 1, 3, 3, 4, 3)]
    [InlineData(11, 1, 2, 5, 6, 6)]
    [InlineData(9, 1, 3, 3, 3, 3)]
    [InlineData(-10, 1, 4, -2, -2, -2)]
    [InlineData(-11, 1, 4, -2, -2, -3)]
    [InlineData(-10, 1, 3, -3, -3, -3)]
    [InlineData(0, 5, 7, 0, 0, 0)]
    public void The_three_ways_of_rounding(long total, long part, long whole, long cut, long up, long nearest)
    {
        Assert.Equal(cut, Share.Of(total, part, whole));
        Assert.Equal(up, Share.UpTo(total, part, whole));
        Assert.Equal(nearest, Share.Nearest(total, part, whole));
    }

    [Fact]
    public void The_nearest_is_at_most_half_away() =>
        Gen.Select(Gen.Long[-100_000, 100_000], Gen.Long[0, 1000], Gen.Long[1, 1000]).Sample(
            (total, part, whole) =>
                Int128.Abs(2 * ((Int128)Share.Nearest(total, part, whole) * whole - (Int128)total * part)) <= whole);

    [Fact]
    public void The_largest_amounts_do_not_overflow_on_the_way()
    {
        Assert.Equal(long.MaxValue, Share.Of(long.MaxValue, long.MaxValue, long.MaxValue));
        Assert.Equal(long.MaxValue, Share.Nearest(long.MaxValue, long.MaxValue, long.MaxValue));
        Assert.Equal(long.MaxValue, Share.Split(long.MaxValue, long.MaxValue, long.MaxValue).Sum());
        Assert.Throws<OverflowException>(() => Share.Of(long.MaxValue, 2, 1));
    }

    [Fact]
    public void A_share_of_nothing_whole_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Share.Of(1, 1, 0));
}
