using Ledger.Core.Measures;

namespace Ledger.Core.Stock;

/// <summary>An item will cost more from a day on.</summary>
/// <param name="Item">The item's code.</param>
/// <param name="From">The first day of the new price.</param>
/// <param name="Thousandths">By how much, in thousandths of the old price: 60 for 6 percent.</param>
public sealed record PriceRise(string Item, LocalDate From, int Thousandths)
{
    /// <summary>"6 %".</summary>
    public string PercentText => $"{Scaled.ToText(Thousandths / 10m, 1)} %";

    /// <summary>What is saved on an amount that is paid before the rise.</summary>
    public Money SavedOn(Money price) => new(Share.Nearest(price.Millionths, Thousandths, 1000));
}
