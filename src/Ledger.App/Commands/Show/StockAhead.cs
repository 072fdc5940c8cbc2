namespace Ledger.App.Commands.Show;

/// <summary>What is to come of each item, and what is planned to go.</summary>
/// <param name="view">The day and the ledger.</param>
internal sealed class StockAhead(View view)
{
    private readonly IReadOnlyDictionary<string, Quantity> _planned = PlannedDemand.Together(view.Holdings);

    /// <summary>What is on order.</summary>
    public Quantity OnOrder(Item item) => view.Holdings.Orders.OnOrder(item);

    /// <summary>What all open plans will use.</summary>
    public Quantity Planned(Item item) => _planned.GetValueOrDefault(item.Code, item.Of(0));

    /// <summary>
    /// The same in words: "25 sheets on order", "44 sheets planned"; nothing where there is nothing to say.
    /// </summary>
    public IEnumerable<string> InWords(Item item)
    {
        if (OnOrder(item) is { IsZero: false } onOrder)
            yield return $"{onOrder.ToText(view.Style)} on order";
        if (Planned(item) is { IsZero: false } planned)
            yield return $"{planned.ToText(view.Style)} planned";
    }
}
