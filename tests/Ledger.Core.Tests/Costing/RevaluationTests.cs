using CsCheck;

namespace Ledger.Core.Tests.Costing;

public sealed class RevaluationTests
{
    private static readonly PlaceId Bath = new(120);
    private static readonly LocalDate Period = new(2025, 7, 1);

    private static readonly Gen<(int Kind, int Quantity, int Cents)[]> Steps =
        Gen.Select(Gen.Int[0, 2], Gen.Int[1, 500], Gen.Int[0, 99_999]).Array[1, 40];

    /// <summary>
    /// OpenStax, Principles of Accounting, Vol. 1, section 10.3 (perpetual): 285 of 585 left. By lot the ledger posts
    /// 7,260 for what was used, first in first out gives 7,200, the moving average 7,253 (7252.941176).
    /// </summary>
    [Theory]
    [InlineData(CostFormula.SpecificLot, "7260.000000", "8895.000000")]
    [InlineData(CostFormula.FirstInFirstOut, "7200.000000", "8955.000000")]
    [InlineData(CostFormula.MovingAverage, "7252.941176", "8902.058824")]
    public void A_published_year_comes_out_by_each_formula(CostFormula formula, string used, string onHand)
    {
        var item = Assert.Single(new Revaluation(OpenStax, formula, Period).Items);
        Assert.Equal((used, onHand), (item.Used.ToString(), item.OnHand.ToString()));
        Assert.Equal(Money.Of(16_155), item.Bought);
        Assert.Equal(Money.Of(7_260), item.PostedAsUsed);
    }

    [Fact]
    public void What_came_before_the_period_is_its_opening()
    {
        var later = new Revaluation(OpenStax, CostFormula.FirstInFirstOut, new(2025, 7, 6));
        var item = Assert.Single(later.Items);
        Assert.Equal((630, 13_005, 4_680), (item.Before.Amount, item.Bought.Amount, item.Used.Amount));
        Assert.True(later.Reconciles);
        var untouched = Assert.Single(new Revaluation(OpenStax, CostFormula.FirstInFirstOut, new(2026, 1, 1)).Items);
        Assert.Equal((8_955, 0, 8_955), (untouched.Before.Amount, untouched.Used.Amount, untouched.OnHand.Amount));
    }

    [Fact]
    public void What_is_mixed_costs_what_was_poured_into_it()
    {
        StockMove[] moves =
        [
            Move(1, 1, "powder", 1, 100, 10, Places.Supplier), Move(2, 2, "powder", 2, 100, 30, Places.Supplier),
            Move(3, 3, "powder", 2, -100, 30, Places.Mixing), Move(3, 3, "stock", 3, 1000, 30, Places.Mixing),
            Move(4, 4, "stock", 3, -500, 15, Places.UsedUp),
        ];
        var reading = new Revaluation(moves, CostFormula.FirstInFirstOut, Period);
        Assert.True(reading.Reconciles);
        Assert.Equal(
            [("powder", -10, 30), ("stock", 10, 5)],
            reading.Items.Select(item => (item.Item, item.Mixed.Amount, item.OnHand.Amount)));
    }

    /// <summary>
    /// An entry dated before what it used had come takes it at what was posted; nothing is lost, and nothing breaks.
    /// </summary>
    [Theory]
    [InlineData(CostFormula.SpecificLot)]
    [InlineData(CostFormula.FirstInFirstOut)]
    [InlineData(CostFormula.MovingAverage)]
    public void What_was_used_before_it_came_is_made_good_when_it_comes(CostFormula formula)
    {
        StockMove[] moves =
        [
            Move(1, 1, "fen80", 1, 5, 50, Places.Supplier), Move(2, 2, "fen80", 1, -8, 90, Places.FiledNegatives),
            Move(3, 3, "fen80", 1, 2, 20, Places.LostOrGained), Move(4, 4, "fen80", 1, 10, 110, Places.Supplier),
            Move(5, 5, "fen80", 1, -9, 95, Places.FiledNegatives),
        ];
        var reading = new Revaluation(moves, formula, Period);
        Assert.True(reading.Reconciles);
        Assert.Equal(0, Assert.Single(reading.Items).OnHand.Millionths);
    }

    [Fact]
    public void Every_item_reconciles_by_every_formula() => Steps.Sample(steps =>
    {
        var held = 0;
        var moves = new List<StockMove>();
        foreach (var ((kind, quantity, cents), i) in steps.Select((step, i) => (step, i)))
        {
            var isIn = kind == 0 || held < quantity;
            held += isIn ? quantity : -quantity;
            var other = isIn ? Places.Supplier : kind == 1 ? Bath : Places.Discarded;
            moves.Add(Move(i, 1 + i / 2, "fen80", i, isIn ? quantity : -quantity, cents * 0.01m, other));
        }

        foreach (var formula in new[] { CostFormula.FirstInFirstOut, CostFormula.MovingAverage })
            Assert.True(new Revaluation(moves, formula, Period.PlusDays(7)).Reconciles);
    }, iter: 300);

    private static IReadOnlyList<StockMove> OpenStax =>
    [
        Move(1, 1, "fen80", 1, 150, 150 * 21, Places.Supplier),
        Move(2, 5, "fen80", 1, -120, 120 * 21, Places.FiledNegatives),
        Move(3, 10, "fen80", 2, 225, 225 * 27, Places.Supplier),
        Move(4, 15, "fen80", 1, -20, 20 * 21, Places.FiledNegatives),
        Move(4, 15, "fen80", 2, -160, 160 * 27, Places.FiledNegatives),
        Move(5, 25, "fen80", 3, 210, 210 * 33, Places.Supplier),
    ];

    private static StockMove Move(long entry, int day, string item, long lot, long change,
        decimal value, PlaceId other) =>
        new(entry, Period.PlusDays(day - 1), item, ItemKind.Film, new(lot), change, Money.Of(value), other);
}
