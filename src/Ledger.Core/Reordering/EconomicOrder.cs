namespace Ledger.Core.Reordering;

/// <summary>The order quantity at which ordering and keeping cost the least together: √(2 D S ÷ H).</summary>
/// <param name="YearlyDemand">What a year uses.</param>
/// <param name="OrderCost">What an order costs, however large it is.</param>
/// <param name="HoldingCost">What keeping one unit for a year costs.</param>
public sealed record EconomicOrder(double YearlyDemand, double OrderCost, double HoldingCost)
{
    /// <summary>The quantity.</summary>
    public double Quantity => Math.Sqrt(2 * YearlyDemand * OrderCost / HoldingCost);

    /// <summary>What ordering and keeping cost in a year when each order has a quantity.</summary>
    public double YearlyCost(double quantity) => OrderCost * YearlyDemand / quantity + HoldingCost * quantity / 2;
}
