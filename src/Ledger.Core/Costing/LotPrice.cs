using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Costing;

/// <summary>What one delivery of an item cost on the shelf.</summary>
/// <param name="Item">The item.</param>
/// <param name="Date">The day it came.</param>
/// <param name="Lot">Its lot.</param>
/// <param name="Quantity">What came.</param>
/// <param name="Cost">What all of it cost, in the ledger's currency.</param>
/// <param name="Currency">The currency it was paid in; null for the ledger's own.</param>
public sealed record LotPrice(string Item, LocalDate Date, LotId Lot, Quantity Quantity, Money Cost, string? Currency)
{
    /// <summary>Whether a price was said; otherwise what it cost is unknown.</summary>
    public bool IsPriced { get; init; } = true;

    /// <summary>What all of it cost, to be read.</summary>
    public string CostText(MeasureStyle style) => UnpricedStock.Mark(Cost, IsPriced, style);

    /// <summary>What one sheet, millilitre, gram or piece cost, to the nearest millionth.</summary>
    public Money PerUnit => new(Share.Nearest(Cost.Millionths, Quantity.Unit.BasePerUnit(), Quantity.Base));

    /// <summary>
    /// The same to be read: in the currency's digits, or as finely as it takes when a unit costs a part of one.
    /// </summary>
    public string PerUnitText(MeasureStyle style) => !IsPriced ? UnpricedStock.Mark(PerUnit, IsPriced, style)
        : PerUnit == PerUnit.ToNearest(style.MoneyDecimals) ? PerUnit.Text(style) : Scaled.ToText(PerUnit.Amount, 6);

    /// <summary>
    /// By how many percent a unit costs more than at another delivery; null when that one was free, or one of the two
    /// is unknown.
    /// </summary>
    public decimal? PercentMoreThan(LotPrice earlier) =>
        !IsPriced || !earlier.IsPriced ? null : (PerUnit - earlier.PerUnit).PercentOf(earlier.PerUnit, 1);
}
