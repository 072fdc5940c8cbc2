using CsCheck;

namespace Ledger.Core.Tests.Measures;

public sealed class AreaTests
{
    [Fact]
    public void It_is_never_less_than_nothing()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Area.FromHundredths(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Area.FromSquareInches(-1));
        Assert.Equal(Area.Zero, Area.Unit80.LessUsed(Area.Unit80 * 2));
    }

    [Fact]
    public void A_weighted_load_is_never_understated() =>
        Gen.Select(Gens.Area, Gen.Int[100, 10_000]).Sample((area, weight) =>
        {
            var exact = (Int128)area.Hundredths * weight;
            Assert.InRange((Int128)area.Weighted(weight).Hundredths * 1000, exact, exact + 999);
        });

    [Fact]
    public void Conventional_film_weighs_its_area() => Gens.Area.Sample(area => area.Weighted(1000) == area);

    [Fact]
    public void A_load_sheet_by_sheet_is_never_less_than_the_load_at_once() =>
        Gen.Select(Gens.Format, Gen.Int[1, 50], Gen.Int[100, 10_000]).Sample(
            (format, sheets, weight) => format.Area.Weighted(weight) * sheets
                >= (format.Area * sheets).Weighted(weight));

    [Fact]
    public void What_is_used_and_what_is_left_are_the_whole() =>
        Gen.Select(Gens.Area, Gens.Area).Sample((whole, used) =>
            used > whole || whole.LessUsed(used) + used == whole);

    [Fact]
    public void It_prints_in_the_users_units()
    {
        Assert.Equal("320 sq in", (Area.Unit80 * 4).ToString());
        Assert.Equal("2064.5 cm²", (Area.Unit80 * 4).ToText(new(UsesSquareCentimetres: true)));
    }
}
