using Ledger.Core.Measures;
using Ledger.Core.Reordering;
using Ledger.Core.Stock;

namespace Ledger.App.Commands.Show;

/// <summary>What is to come of each item, and what is planned to go.</summary>
/// <param name="view">The day and the ledger.</param>
internal sealed class StockAhead(View view)
{
    private readonly IReadOnlyDictionary<string, Quantity> _reserved = KnownDemand.Reserved(view.Holdings);

    /// <summary>What is on order.</summary>
    public Quantity Incoming(Item item) => view.Holdings.Orders.Incoming(item);

    /// <summary>What all open plans will use.</summary>
    public Quantity Reserved(Item item) => _reserved.GetValueOrDefault(item.Code, item.Of(0));

    /// <summary>The same in words: "25 sheets on order", "44 sheets planned"; nothing where there is nothing to say.</summary>
    public IEnumerable<string> InWords(Item item)
    {
        if (Incoming(item) is { IsZero: false } incoming)
            yield return $"{incoming.ToText(view.Style)} on order";
        if (Reserved(item) is { IsZero: false } reserved)
            yield return $"{reserved.ToText(view.Style)} planned";
    }
}
