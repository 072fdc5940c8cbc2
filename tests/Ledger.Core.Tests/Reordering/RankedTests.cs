using CsCheck;
using Ledger.Core.Reordering;

namespace Ledger.Core.Tests.Reordering;

public sealed class RankedTests
{
    [Fact]
    public void The_value_at_a_rank_is_that_of_the_sorted_values() =>
        Gen.Select(Gen.OneOf(Gen.Long[0, 5], Gen.Long[-1_000_000, 1_000_000]).Array[1, 300], Gen.Int[0, 299]).Sample((values, at) =>
        {
            var (rank, sorted) = (at % values.Length, values.Order().ToArray());
            return Ranked.At(values, rank) == sorted[rank] && values.Order().SequenceEqual(sorted);
        });

    [Theory]
    [InlineData("7")]
    [InlineData("1 2 3 4 5 6 7 8 9")]
    [InlineData("9 8 7 6 5 4 3 2 1")]
    [InlineData("0 0 0 0 0 0 0 0 0")]
    [InlineData("0 1 0 1 0 1 0 1 0")]
    public void Sorted_turned_and_equal_values_have_every_rank(string text)
    {
        var values = text.Split(' ').Select(value => long.Parse(value, System.Globalization.CultureInfo.InvariantCulture)).ToArray();
        Assert.Equal(values.Order(), Enumerable.Range(0, values.Length).Select(rank => Ranked.At([.. values], rank)));
    }
}
