using Ledger.Core.Measures;

namespace Ledger.Core.Stock;

/// <summary>
/// What a list says of an item of which nothing was ever there: lists of thousands hold no more of each.
/// </summary>
/// <param name="Code">Its code.</param>
/// <param name="Name">Its name.</param>
/// <param name="Kind">What sort of thing it is.</param>
/// <param name="Unit">What it is counted in.</param>
/// <param name="IsMixed">Whether it is a stock solution, which is mixed and not bought.</param>
public sealed record ItemName(string Code, string Name, ItemKind Kind, Unit Unit, bool IsMixed)
{
    /// <summary>The same of an item that is known whole.</summary>
    public static ItemName Of(Item item) =>
        new(item.Code, item.Name, item.Kind, item.Unit, item.StockOf is not null);
}
