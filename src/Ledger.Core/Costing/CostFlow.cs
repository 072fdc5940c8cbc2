using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Costing;

/// <summary>
/// The stock of one item under a cost formula. Keeps quantity and value of each layer, never a rounded average, so that what was used and
/// what is on hand always add up to what was bought.
/// </summary>
/// <param name="formula">The formula.</param>
public sealed class CostFlow(CostFormula formula)
{
    private readonly List<Layer> _layers = [];

    /// <summary>What the stock on hand is worth.</summary>
    public Money OnHand => new(_layers.Sum(layer => layer.Value.Millionths));

    /// <summary>How much is on hand, in base units.</summary>
    public long Quantity => _layers.Sum(layer => layer.Quantity);

    /// <summary>A delivery.</summary>
    public void Receive(LotId lot, long quantity, Money cost) => _layers.Add(new(lot, quantity, cost));

    /// <summary>The cost of using so much; the lot matters to <see cref="CostFormula.SpecificLot"/> only.</summary>
    /// <exception cref="InvalidOperationException">More is used than is on hand.</exception>
    public Money Use(LotId lot, long quantity) => formula switch
    {
        CostFormula.MovingAverage => UseAverage(quantity),
        CostFormula.FirstInFirstOut => UseLayers(_ => true, quantity),
        _ => UseLayers(layer => layer.Lot == lot, quantity),
    };

    private Money UseLayers(Func<Layer, bool> eligible, long quantity)
    {
        var cost = Money.Zero;
        for (var i = 0; i < _layers.Count && quantity > 0; i++)
        {
            var layer = _layers[i];
            if (!eligible(layer) || layer.Quantity == 0)
                continue;
            var taken = Math.Min(layer.Quantity, quantity);
            var share = layer.Value.PartOf(taken, layer.Quantity);
            _layers[i] = layer with { Quantity = layer.Quantity - taken, Value = layer.Value - share };
            cost += share;
            quantity -= taken;
        }

        return quantity == 0 ? cost : throw new InvalidOperationException("more is used than is on hand");
    }

    private Money UseAverage(long quantity)
    {
        var pool = new Layer(default, Quantity, OnHand);
        if (quantity > pool.Quantity)
            throw new InvalidOperationException("more is used than is on hand");
        var cost = quantity == 0 ? Money.Zero : pool.Value.PartOf(quantity, pool.Quantity);
        _layers.Clear();
        _layers.Add(pool with { Quantity = pool.Quantity - quantity, Value = pool.Value - cost });
        return cost;
    }

    private sealed record Layer(LotId Lot, long Quantity, Money Value);
}
