using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Costing;

/// <summary>
/// The stock of one item under a cost formula. Keeps quantity and value of each layer, never a rounded average, so that
/// what was used and what is on hand always add up to what was bought.
/// </summary>
/// <param name="formula">The formula.</param>
public sealed class CostFlow(CostFormula formula)
{
    private readonly List<Layer> _layers = [];

    /// <summary>What the stock on hand is worth.</summary>
    public Money OnHand => new(_layers.Sum(layer => layer.Value.Millionths));

    /// <summary>How much is on hand, in base units.</summary>
    public long Quantity => _layers.Sum(layer => layer.Quantity);

    /// <summary>
    /// How much can be used when a lot is named, which matters to <see cref="CostFormula.SpecificLot"/> only.
    /// </summary>
    public long QuantityOf(LotId lot) => _layers.Where(layer => IsEligible(layer, lot)).Sum(layer => layer.Quantity);

    /// <summary>A delivery.</summary>
    public void Receive(LotId lot, long quantity, Money cost) => _layers.Add(new(lot, quantity, cost));

    /// <summary>The cost of using so much; the lot matters to <see cref="CostFormula.SpecificLot"/> only.</summary>
    /// <exception cref="InvalidOperationException">More is used than is on hand; nothing has changed.</exception>
    public Money Use(LotId lot, long quantity)
    {
        if (quantity > QuantityOf(lot))
            throw new InvalidOperationException("more is used than is on hand");
        return formula == CostFormula.MovingAverage ? UseAverage(quantity) : UseLayers(lot, quantity);
    }

    private bool IsEligible(Layer layer, LotId lot) => formula != CostFormula.SpecificLot || layer.Lot == lot;

    private Money UseLayers(LotId lot, long quantity)
    {
        var cost = Money.Zero;
        for (var i = 0; i < _layers.Count && quantity > 0; i++)
        {
            var layer = _layers[i];
            if (!IsEligible(layer, lot))
                continue;
            var taken = Math.Min(layer.Quantity, quantity);
            var share = layer.Value.PartOf(taken, layer.Quantity);
            _layers[i] = layer with { Quantity = layer.Quantity - taken, Value = layer.Value - share };
            cost += share;
            quantity -= taken;
        }

        _layers.RemoveAll(layer => layer.Quantity == 0);
        return cost;
    }

    private Money UseAverage(long quantity)
    {
        var pool = new Layer(default, Quantity, OnHand);
        var cost = quantity == 0 ? Money.Zero : pool.Value.PartOf(quantity, pool.Quantity);
        _layers.Clear();
        _layers.Add(pool with { Quantity = pool.Quantity - quantity, Value = pool.Value - cost });
        return cost;
    }

    private sealed record Layer(LotId Lot, long Quantity, Money Value);
}
