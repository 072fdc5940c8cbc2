using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Costing;

/// <summary>So much of a lot that came into the stock or left it.</summary>
/// <param name="Entry">The entry's number.</param>
/// <param name="Date">Its day.</param>
/// <param name="Item">The item.</param>
/// <param name="Kind">What sort of thing it is.</param>
/// <param name="Lot">Its lot.</param>
/// <param name="Change">In base units; negative when it left.</param>
/// <param name="Value">What the ledger posted for it, never negative.</param>
/// <param name="Other">The single place it came from or went to, or the bath it was poured into.</param>
public sealed record StockMove(
    long Entry, LocalDate Date, string Item, ItemKind Kind, LotId Lot, long Change, Money Value, PlaceId Other)
{
    /// <summary>Whether the item is a developer.</summary>
    public bool IsDeveloper { get; init; }
}
