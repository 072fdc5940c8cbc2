using Ledger.Core.Measures;
using NodaTime;

namespace Ledger.Core.Stock;

/// <summary>One delivery of an item.</summary>
/// <param name="Id">The lot's number.</param>
/// <param name="Item">The item's code.</param>
/// <param name="ReceivedOn">The day of the delivery.</param>
/// <param name="Quantity">What was delivered in all.</param>
/// <param name="Cost">The landed cost of all of it: price less discount, with its share of shipping, duty and tax.</param>
/// <param name="Batch">The maker's batch or emulsion number; may be empty.</param>
/// <param name="ExpiresOn">The printed date, if any.</param>
/// <param name="Storage">Where it is kept: freezer, fridge, shelf; may be empty.</param>
public sealed record Lot(
    LotId Id, string Item, LocalDate ReceivedOn, Quantity Quantity, Money Cost, string Batch, LocalDate? ExpiresOn, string Storage)
{
    /// <summary>The speed at which the user exposes it; null for the maker's.</summary>
    public int? Speed { get; init; }

    /// <summary>What one unit of the lot cost, to the nearest millionth.</summary>
    public Money UnitCost => new(Share.Nearest(Cost.Millionths, Quantity.Unit.BasePerUnit(), Quantity.Base));
}
