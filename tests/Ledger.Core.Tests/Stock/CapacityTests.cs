using CsCheck;

namespace Ledger.Core.Tests.Stock;

public sealed class CapacityTests
{
    [Fact]
    public void It_grows_with_the_volume()
    {
        var capacity = new Capacity(Area.FromSquareInches(2000), "own");
        Assert.Equal(3000m, capacity.Of(Volume.FromMillilitres(1500)).SquareInches);
        Assert.Equal(Area.Zero, capacity.Of(default));
    }

    [Fact]
    public void It_is_never_rounded_up() =>
        Gen.Select(Gens.Area, Gen.Long[0, 10_000_000]).Sample((perLitre, microlitres) =>
        {
            var exact = (Int128)perLitre.Hundredths * microlitres;
            var area = (Int128)new Capacity(perLitre, "own").Of(Volume.FromMicrolitres(microlitres)).Hundredths
                * 1_000_000;
            Assert.InRange(area, exact - 999_999, exact);
        });

    [Fact]
    public void The_single_places_have_names_and_are_not_on_hand()
    {
        PlaceId[] places = [Places.Supplier, Places.FiledNegatives, Places.Rejects, Places.UsedUp,
            Places.LostOrGained, Places.Discarded];
        Assert.Equal(places.Length, places.Select(Places.Name).Distinct().Count());
        Assert.DoesNotContain(places, place => place.IsOnHand);
        Assert.True(new PlaceId(Places.FirstFree).IsOnHand);
        Assert.Throws<ArgumentOutOfRangeException>(() => Places.Name(new(Places.FirstFree)));
    }
}
