using Ledger.Core.Measures;

namespace Ledger.Core.Costing;

/// <summary>What a delivery cost on the shelf.</summary>
/// <param name="Price">The price of one pack.</param>
/// <param name="Packs">How many packs.</param>
/// <param name="Discount">Taken off for all of them.</param>
/// <param name="Shipping">This line's share of the shipping.</param>
/// <param name="Duty">This line's share of duty and tax.</param>
/// <param name="Rate">What one unit of the delivery's currency is worth in the ledger's; 1 when they are the
/// same.</param>
public sealed record LandedCost(Money Price, decimal Packs, Money Discount, Money Shipping, Money Duty, decimal Rate)
{
    /// <summary>(packs × price − discount + shipping + duty) × rate, to the nearest millionth.</summary>
    /// <exception cref="OverflowException">The amount is too large to hold.</exception>
    public Money Total => Paid.At(Rate);

    /// <summary>The same in the delivery's own currency.</summary>
    /// <exception cref="OverflowException">The amount is too large to hold.</exception>
    public Money Paid => Price.At(Packs) - Discount + Shipping + Duty;
}
