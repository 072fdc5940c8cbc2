using CsCheck;

namespace Ledger.Core.Tests.Measures;

public sealed class VolumeTests
{
    [Fact]
    public void It_is_never_less_than_nothing()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Volume.FromMicrolitres(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Volume.FromMillilitres(-0.001m));
        Assert.Throws<ArgumentOutOfRangeException>(() => Volume.FromMillilitres(1) - Volume.FromMillilitres(2));
    }

    [Fact]
    public void It_is_not_finer_than_a_microlitre() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Volume.FromMillilitres(0.0001m));

    [Theory]
    [InlineData(31.25, 5, 30)]
    [InlineData(31.25, 1, 31)]
    [InlineData(32.5, 5, 35)]
    [InlineData(31.25, 0.5, 31.5)]
    [InlineData(1, 10, 0)]
    public void A_graduate_measures_the_nearest_mark(decimal millilitres, decimal step, decimal measured) =>
        Assert.Equal(Volume.FromMillilitres(measured),
            Volume.FromMillilitres(millilitres).RoundedTo(Volume.FromMillilitres(step)));

    [Fact]
    public void The_nearest_mark_is_at_most_half_a_step_away() =>
        Gen.Select(Gens.Volume, Gen.Long[1, 100_000]).Sample((volume, step) =>
            Math.Abs(volume.RoundedTo(Volume.FromMicrolitres(step)).Microlitres - volume.Microlitres) * 2 <= step);

    [Fact]
    public void It_is_compared_by_what_it_holds() => Gen.Select(Gens.Volume, Gens.Volume).Sample((one, other) =>
    {
        Assert.Equal(one.Microlitres < other.Microlitres, one < other);
        Assert.Equal(one > other, other < one);
        Assert.Equal(one <= other, !(one > other));
        Assert.Equal(one >= other, !(one < other));
        Assert.Equal(one == other, one.CompareTo(other) == 0);
    });

    [Fact]
    public void It_prints_in_the_users_units()
    {
        Assert.Equal("1250.5 ml", Volume.FromMillilitres(1250.5m).ToString());
        Assert.Equal("42.27 fl oz", Volume.FromMillilitres(1250).ToText(new(UsesFluidOunces: true)));
    }
}
