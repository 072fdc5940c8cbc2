using CsCheck;

namespace Ledger.Core.Tests.Measures;

public sealed class MoneyTests
{
    [Fact]
    public void It_is_held_to_the_millionth_and_read_to_the_hundredth()
    {
        var money = Money.Of(7.598m);
        Assert.Equal(7_598_000, money.Millionths);
        Assert.Equal("7.598000", money.ToString());
        Assert.Equal("7.60", money.Text(MeasureStyle.Metric));
        Assert.Equal("-7.60", (Money.Zero - money).Text(MeasureStyle.Metric));
        Assert.Equal("8", money.Text(MeasureStyle.Metric with { MoneyDecimals = 0 }));
        Assert.Equal("7.598", money.Text(MeasureStyle.Metric with { MoneyDecimals = 3 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => Money.Of(0.0000001m));
    }

    [Fact]
    public void A_part_and_the_rest_are_the_whole() =>
        Gen.Select(Gen.Long[0, 1_000_000_000], Gen.Long[1, 1000], Gen.Long[0, 1000]).Sample(
            (amount, whole, part) =>
            {
                var money = new Money(amount);
                var taken = money.PartOf(Math.Min(part, whole), whole);
                Assert.True(taken >= Money.Zero && taken <= money);
                Assert.Equal(money, taken + (money - taken));
            });

    [Fact]
    public void Drawing_one_by_one_loses_nothing() =>
        Gen.Select(Gen.Long[0, 1_000_000_000], Gen.Long[1, 60]).Sample((amount, count) =>
        {
            var (left, drawn) = (new Money(amount), Money.Zero);
            for (var there = count; there > 0; there--)
            {
                var cost = left.PartOf(1, there);
                (left, drawn) = (left - cost, drawn + cost);
            }

            Assert.Equal(Money.Zero, left);
            Assert.Equal(new Money(amount), drawn);
        });

    [Fact]
    public void An_average_of_nothing_is_not_known()
    {
        Assert.Null(Money.Of(10).Per(0));
        Assert.Equal(Money.Of(3.333333m), Money.Of(10).Per(3));
        Assert.Equal(Money.Of(-3.333333m), Money.Of(-10).Per(3));
    }

    [Fact]
    public void A_rate_of_exchange_rounds_to_the_nearest_millionth()
    {
        Assert.Equal(Money.Of(9.23m), Money.Of(10).At(0.923m));
        Assert.Equal(new Money(1), new Money(1).At(0.5m));
        Assert.Throws<OverflowException>(() => new Money(long.MaxValue).At(2));
    }
}
