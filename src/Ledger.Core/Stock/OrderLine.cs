using Ledger.Core.Measures;

namespace Ledger.Core.Stock;

/// <summary>One item of an order.</summary>
/// <param name="Item">The item's code.</param>
/// <param name="Packs">How many packs were ordered.</param>
/// <param name="Ordered">What they hold.</param>
/// <param name="Price">The price of a pack.</param>
/// <param name="ExpectedOn">The day it is expected; null when nobody said.</param>
/// <param name="IsBackOrdered">Whether the supplier has none and sends it when there is some again.</param>
/// <param name="Delivered">What has come.</param>
/// <param name="IsCancelled">Whether what had not come by then was cancelled.</param>
public sealed record OrderLine(
    string Item, long Packs, Quantity Ordered, Money Price, LocalDate? ExpectedOn, bool IsBackOrdered,
    Quantity Delivered, bool IsCancelled)
{
    /// <summary>What is still to come.</summary>
    public Quantity Outstanding =>
        IsCancelled || Delivered >= Ordered ? Ordered with { Base = 0 } : Ordered - Delivered;

    /// <summary>The same in packs; a part of one where a part has come.</summary>
    public decimal OutstandingPacks => (decimal)Outstanding.Base * Packs / Ordered.Base;

    /// <summary>Whether something is still to come.</summary>
    public bool IsOpen => !Outstanding.IsZero;

    /// <summary>Whether some of it has come and some not.</summary>
    public bool IsPartDelivered => IsOpen && !Delivered.IsZero;

    /// <summary>Whether it should have come by now.</summary>
    public bool IsLate(LocalDate today) => IsOpen && ExpectedOn < today;

    /// <summary>How it stands, in words: "part delivered, back-ordered, late".</summary>
    public string State(LocalDate today)
    {
        if (!IsOpen)
            return IsCancelled ? Delivered.IsZero ? "cancelled" : "part delivered, rest cancelled" : "delivered";
        var states = new[] { (IsPartDelivered, "part delivered"), (IsBackOrdered, "back-ordered"),
            (IsLate(today), "late") }
            .Where(state => state.Item1).Select(state => state.Item2).ToList();
        return states.Count == 0 ? "on order" : string.Join(", ", states);
    }
}
