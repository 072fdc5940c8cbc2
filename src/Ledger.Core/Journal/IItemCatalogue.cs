using Ledger.Core.Keeping;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal;

/// <summary>
/// The items of a ledger, looked up when they are asked for: whoever asks for one of thousands does not wait for the
/// others.
/// </summary>
public interface IItemCatalogue
{
    /// <summary>
    /// The formats that its items are read with; the holdings that look items up keep their formats here.
    /// </summary>
    FormatTable Formats { get; }

    /// <summary>The highest number of an item so far.</summary>
    long LastItem { get; }

    /// <summary>The item of that code, or null.</summary>
    CataloguedItem? Item(string code);

    /// <summary>All items, or those of a kind, in any order.</summary>
    IReadOnlyList<CataloguedItem> Items(ItemKind? kind);

    /// <summary>The names of all items, in any order.</summary>
    IReadOnlyList<ItemName> Names();
}

/// <summary>An item with what is remembered of it beside its definition.</summary>
/// <param name="Item">The item as it is defined now.</param>
/// <param name="LastContainer">The running number that its last container had; 0 when it never had one.</param>
/// <param name="EarlierFormulas">How long each earlier formula version of it keeps.</param>
public sealed record CataloguedItem(
    Item Item, long LastContainer, IReadOnlyList<(string Formula, KeepingLimits Limits)> EarlierFormulas);
