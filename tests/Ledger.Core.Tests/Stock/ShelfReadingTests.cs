namespace Ledger.Core.Tests.Stock;

public sealed class ShelfReadingTests
{
    [Fact]
    public void What_is_past_its_day_is_on_hand_but_not_usable()
    {
        var opened = Some.Today.PlusDays(-541);
        var reading = new ShelfReading(
            Some.Syrup,
            [Some.Bottle(100, held: 64, value: 2.688m, opened: opened),
                Some.Bottle(101, held: 500, value: 21, opened: Some.Earlier)],
            Some.Today);
        Assert.Equal("564 ml", reading.OnHand.ToString());
        Assert.Equal("64 ml", reading.Expired.ToString());
        Assert.Equal("500 ml", reading.Usable.ToString());
        Assert.Equal(Money.Of(23.688m), reading.Value);
        Assert.Equal([true, false], reading.Containers.Select(container => container.IsPast));
        Assert.Equal(new(opened.PlusDays(540), KeepingRule.SinceOpening), reading.Containers[0].GoodUntil);
    }

    [Theory]
    [InlineData(499, true)]
    [InlineData(500, false)]
    [InlineData(501, false)]
    public void Less_than_the_minimum_calls_for_an_order(int held, bool isBelow)
    {
        var item = Some.Syrup with { MinimumOnHand = Quantity.Of(500, Unit.Millilitre) };
        Assert.Equal(isBelow, new ShelfReading(item, [Some.Bottle(held: held)], Some.Today).IsBelowMinimum);
    }

    [Fact]
    public void Stock_past_its_day_does_not_count_towards_the_minimum()
    {
        var item = Some.Syrup with { MinimumOnHand = Quantity.Of(500, Unit.Millilitre) };
        Assert.True(new ShelfReading(item, [Some.Bottle(opened: Some.Today.PlusDays(-541))],
            Some.Today).IsBelowMinimum);
    }

    [Fact]
    public void An_empty_shelf_holds_nothing()
    {
        var reading = new ShelfReading(Some.Syrup, [], Some.Today);
        Assert.True(reading.OnHand.IsZero);
        Assert.Equal(Money.Zero, reading.Value);
        Assert.False(reading.IsBelowMinimum);
    }

    [Fact]
    public void A_lots_unit_cost_is_that_of_one_millilitre()
    {
        Assert.Equal(Money.Of(0.042m), Some.Lot().UnitCost);
        Assert.Equal(Money.Of(6.77m),
            (Some.Lot() with { Quantity = Quantity.Of(50, Unit.Sheet), Cost = Money.Of(338.5m) }).UnitCost);
    }
}
