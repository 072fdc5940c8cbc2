using Ledger.Core.Journal;
using Ledger.Core.Stock;

namespace Ledger.App.Commands.Record;

/// <summary>Finds the item behind a name that may be its own code or that of one of its containers.</summary>
internal static class Stock
{
    /// <summary>The item; null for a holder or a box of exposed ones, which hold sheets of it.</summary>
    public static Item? ItemOf(string what, Holdings holdings) =>
        holdings.Item(what) ?? (holdings.Container(what) is { } container ? holdings.Item(container.Lot.Item) : null);
}
