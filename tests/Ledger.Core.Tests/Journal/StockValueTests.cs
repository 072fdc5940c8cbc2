namespace Ledger.Core.Tests.Journal;

public sealed class StockValueTests
{
    private static readonly ItemMove[] Moves =
        [Move(1, 10, 100), Move(2, 10, 200), Move(2, -4, -80), Move(1, -10, -100)];

    [Theory]
    [InlineData(CostFormula.SpecificLot, 120)]
    [InlineData(CostFormula.FirstInFirstOut, 120)]
    [InlineData(CostFormula.MovingAverage, 90)]
    public void The_same_moves_are_worth_what_the_formula_says(CostFormula formula, decimal value) =>
        Assert.Equal(Money.Of(value), StockValue.Of(Moves, formula));

    [Fact]
    public void Moves_that_take_out_what_has_not_come_yet_have_no_value() => Assert.Null(
        StockValue.Of([Move(1, 10, 100), Move(2, -1, -20), Move(2, 10, 200)], CostFormula.FirstInFirstOut));

    [Fact]
    public void Nothing_is_worth_nothing() => Assert.Equal(Money.Zero, StockValue.Of([], CostFormula.MovingAverage));

    private static ItemMove Move(long lot, long change, decimal value) =>
        new(1, Some.Today, "", "fen80/1", new LotId(lot), change, Money.Of(value));
}
