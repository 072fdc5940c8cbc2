using CsCheck;

namespace Ledger.Core.Tests.Costing;

public sealed class CostFlowTests
{
    private static readonly Gen<(int Lot, long Quantity, long Cost, bool IsUse)[]> Events =
        Gen.Select(Gen.Int[1, 4], Gen.Long[1, 1000], Gen.Long[0, 1_000_000_000], Gen.Bool).Array[1, 40];

    [Theory]
    [InlineData(CostFormula.SpecificLot)]
    [InlineData(CostFormula.FirstInFirstOut)]
    [InlineData(CostFormula.MovingAverage)]
    public void What_was_used_and_what_is_on_hand_are_what_was_bought(CostFormula formula) => Events.Sample(events =>
    {
        var flow = new CostFlow(formula);
        var held = new Dictionary<int, long>();
        var (bought, used, quantity) = (Money.Zero, Money.Zero, 0L);
        foreach (var (lot, amount, cost, isUse) in events)
        {
            if (!isUse)
            {
                flow.Receive(new(lot), amount, new(cost));
                held[lot] = held.GetValueOrDefault(lot) + amount;
                (bought, quantity) = (bought + new Money(cost), quantity + amount);
            }
            else if (formula == CostFormula.SpecificLot ? held.GetValueOrDefault(lot) >= amount : quantity >= amount)
            {
                used += flow.Use(new(lot), amount);
                held[lot] = held.GetValueOrDefault(lot) - amount;
                quantity -= amount;
            }

            Assert.Equal(bought, used + flow.OnHand);
            Assert.Equal(quantity, flow.Quantity);
        }

        if (formula != CostFormula.SpecificLot && quantity > 0)
            used += flow.Use(default, quantity);
        Assert.True(formula == CostFormula.SpecificLot || (used == bought && flow.OnHand == Money.Zero));
    });

    [Theory]
    [InlineData(CostFormula.SpecificLot)]
    [InlineData(CostFormula.FirstInFirstOut)]
    [InlineData(CostFormula.MovingAverage)]
    public void More_than_is_on_hand_is_refused_and_changes_nothing(CostFormula formula)
    {
        var flow = new CostFlow(formula);
        flow.Receive(new(1), 5, Money.Of(10));
        flow.Receive(new(2), 5, Money.Of(20));
        Assert.Throws<InvalidOperationException>(() => flow.Use(new(1), 11));
        Assert.Equal(10, flow.Quantity);
        Assert.Equal(Money.Of(30), flow.OnHand);
    }

    [Fact]
    public void A_lot_pays_only_for_itself()
    {
        var flow = new CostFlow(CostFormula.SpecificLot);
        flow.Receive(new(1), 5, Money.Of(10));
        flow.Receive(new(2), 5, Money.Of(20));
        Assert.Throws<InvalidOperationException>(() => flow.Use(new(1), 6));
        Assert.Equal(Money.Of(12), flow.Use(new(2), 3));
        Assert.Equal(Money.Of(18), flow.OnHand);
    }

    [Fact]
    public void Formulas_agree_when_every_unit_cost_the_same() => Gen.Long[1, 100].Array[1, 6].Sample(packs =>
    {
        var costs = Enum.GetValues<CostFormula>().Select(formula =>
        {
            var flow = new CostFlow(formula);
            foreach (var pack in packs)
                flow.Receive(new LotId(1), pack, Money.Of(pack * 3));
            return flow.Use(new(1), (packs.Sum() + 1) / 2);
        }).Distinct();
        Assert.Single(costs);
    });
}
