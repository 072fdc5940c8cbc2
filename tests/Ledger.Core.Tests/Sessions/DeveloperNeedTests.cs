using CsCheck;

namespace Ledger.Core.Tests.Sessions;

public sealed class DeveloperNeedTests
{
    [Fact]
    public void It_is_never_less_than_either_demand() =>
        Gen.Select(Gens.Dilution, Gens.Volume, Gens.Volume, Gen.Long[0, 10_000_000_000])
            .Sample((dilution, working, minimum, area) =>
            {
                var need = DeveloperNeed.Of(dilution, working, minimum, Area.FromHundredths(area));
                Assert.True(need.Concentrate >= need.ByDilution && need.Concentrate >= need.ByArea);
                Assert.True((Int128)need.ByArea.Microlitres * Area.Unit80.Hundredths
                    >= (Int128)minimum.Microlitres * area);
                Assert.Equal(need.IsEnough, need.Concentrate == need.ByDilution);
            });

    [Fact]
    public void Without_a_minimum_the_dilution_decides()
    {
        var need = DeveloperNeed.Of(Dilution.Parse("1+49"), Volume.FromMillilitres(1250), null, Area.Unit80 * 100);
        Assert.Equal("25 ml", need.Concentrate.ToString());
        Assert.True(need.IsEnough);
    }

    [Fact]
    public void A_thin_dilution_is_cured_by_more_of_it()
    {
        var dilution = Dilution.Parse("1+99");
        var need = DeveloperNeed.Of(dilution, Volume.FromMillilitres(1250), Volume.FromMillilitres(6), Area.Unit80 * 4);
        Assert.False(need.IsEnough);
        Assert.Equal("2400 ml", need.CureVolume(dilution).ToString());
        Assert.True(DeveloperNeed.Of(dilution, need.CureVolume(dilution), Volume.FromMillilitres(6),
            Area.Unit80 * 4).IsEnough);
    }
}
