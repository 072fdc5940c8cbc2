namespace Ledger.Core.Tests.Costing;

/// <summary>Percentages are rounded once, and halves away from zero, as every other figure is.</summary>
public sealed class PercentTests
{
    private const string Figures = """
        part    | of   | decimals | percent
        1.25    | 1000 | 2        | 0.13
        -1.25   | 1000 | 2        | -0.13
        2.5     | 1000 | 1        | 0.3
        2.4999  | 1000 | 1        | 0.2
        44.46   | 1000 | 1        | 4.4
        1000    | 1000 | 1        | 100
        """;

    [Fact]
    public void Halves_go_away_from_zero() => Assert.All(Table.Read(Figures), row => Assert.Equal(
        row.Number("percent"),
        Money.Of(row.Number("part")).PercentOf(Money.Of(row.Number("of")), (int)row.Number("decimals"))));

    [Fact]
    public void Of_nothing_there_is_no_share() => Assert.Null(Money.Of(1).PercentOf(Money.Zero, 2));

    [Fact]
    public void The_share_of_a_part_of_the_costs_is_rounded_so()
    {
        var slice = new CostSlice(
            "S1", new("S1", 0, 0, 0, Money.Zero, Money.Zero, Money.Zero), Money.Of(1.25m),
            Money.Of(998.75m), Money.Zero, Money.Zero);
        Assert.Equal((0.13m, 0.1m), (slice.Percent(slice.Film, 2), slice.Percent(slice.Film, 1)));
    }

    [Theory]
    [InlineData(1000, 1002.5, 0.3)]
    [InlineData(1000, 997.5, -0.3)]
    public void A_dearer_delivery_is_told_so(double earlier, double later, double percent) =>
        Assert.Equal((decimal)percent, Price(later).PercentMoreThan(Price(earlier)));

    private static LotPrice Price(double cost) =>
        new("fen80", new LocalDate(2026, 1, 1), new LotId(1), new(1, Unit.Sheet), Money.Of((decimal)cost), null);
}
