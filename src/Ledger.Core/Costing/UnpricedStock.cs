using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Costing;

/// <summary>
/// Stock that came without a price: what it cost is unknown, so no figure holds it and every figure that should says
/// so.
/// </summary>
/// <param name="Entry">The number of the entry that it came with.</param>
/// <param name="Item">The item.</param>
/// <param name="Kind">What sort of thing it is.</param>
/// <param name="Used">How much of it was used, discarded or lost in the period.</param>
/// <param name="OnHand">How much of it is on hand at its end, in holders too.</param>
public sealed record UnpricedStock(long Entry, string Item, ItemKind Kind, Quantity Used, Quantity OnHand)
{
    private const string Sign = "?";

    /// <summary>
    /// Behind the figures of a table, what their sign means; the sentences of <see cref="Sentence"/> come before it.
    /// </summary>
    public const string Legend = "A ? stands where something without a price belongs into the figure.";

    /// <summary>How much of it there is, and how its price is said.</summary>
    public string Sentence(MeasureStyle style)
    {
        var parts = new[] { Used.IsZero ? "" : $"{Used.ToText(style)} used",
            OnHand.IsZero ? "" : $"{OnHand.ToText(style)} on hand" };
        return $"{Item}, without a price: {string.Join(", ", parts.Where(part => part.Length > 0))}. What it cost is "
            + "unknown; "
            + $"amend the price of entry {Scaled.ToText(Entry, 0)} when you know it; 0 says that it was a gift.";
    }

    /// <summary>An amount with a sign when something unknown belongs into it: "12.30", "12.30+?", "?".</summary>
    /// <param name="known">What is known of it.</param>
    /// <param name="isComplete">Whether that is all.</param>
    /// <param name="style">How amounts are read.</param>
    public static string Mark(Money known, bool isComplete, MeasureStyle style) => isComplete ? known.Text(style)
        : known == Money.Zero ? Sign : $"{known.Text(style)}+{Sign}";

    /// <summary>The same of an amount that may not be there.</summary>
    public static string Mark(Money? known, bool isComplete, MeasureStyle style) =>
        known is { } amount ? Mark(amount, isComplete, style) : "-";
}
