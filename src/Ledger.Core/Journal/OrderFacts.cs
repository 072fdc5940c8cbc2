using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal;

/// <summary>An order was placed.</summary>
/// <param name="Order">The order, of which nothing has come yet.</param>
public sealed record OrderPlaced(Order Order) : PostedFact;

/// <summary>A line of an order changed; what is null stays as it was.</summary>
/// <param name="Order">The order's name.</param>
/// <param name="Item">The item of the line.</param>
/// <param name="ExpectedOn">The day it is expected now.</param>
/// <param name="IsBackOrdered">Whether it is back-ordered now.</param>
/// <param name="IsCancelled">Whether what has not come is cancelled.</param>
public sealed record OrderLineChanged(string Order, string Item, LocalDate? ExpectedOn, bool? IsBackOrdered,
    bool IsCancelled) : PostedFact
{
    /// <summary>How many packs are ordered now, and what they hold.</summary>
    public (long Packs, Quantity Hold)? Ordered { get; init; }

    /// <summary>What a pack costs now.</summary>
    public Money? Price { get; init; }
}

/// <summary>A delivery belongs to a line of an order.</summary>
/// <param name="Order">The order's name.</param>
/// <param name="Item">The item of the line.</param>
/// <param name="Quantity">What came.</param>
public sealed record OrderDelivered(string Order, string Item, Quantity Quantity) : PostedFact;

/// <summary>An item will cost more from a day on.</summary>
/// <param name="Rise">The item, the day, and by how much.</param>
public sealed record PriceRiseAnnounced(PriceRise Rise) : PostedFact;

/// <summary>The user orders an item in this way now.</summary>
/// <param name="Terms">The terms.</param>
public sealed record OrderTermsSet(OrderTerms Terms) : PostedFact;
