using Ledger.Core.Journal;

namespace Ledger.Terminal.Forms;

/// <summary>A field that names an open order.</summary>
internal static class OpenOrders
{
    /// <summary>The field, with the earliest order that waits for the item.</summary>
    public static FormField Field(ILedger ledger, string? item, string hint = "Up and Down choose among the open orders.")
    {
        var orders = ledger.HoldingsOn(ledger.Today).Orders;
        var field = new FormField("Order", 24, FieldKind.Choice) { Choices = () => orders.Open.Select(order => order.Code), Hint = hint };
        if (item is not null)
            field.Offer(orders.LinesOf(item).Select(found => found.Order.Code).FirstOrDefault());
        return field;
    }
}
