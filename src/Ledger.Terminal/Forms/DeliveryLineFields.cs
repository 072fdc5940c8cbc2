using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Terminal.Forms;

/// <summary>One line of a delivery on the form: packs of one item, what a pack costs, what is printed on them.</summary>
internal sealed class DeliveryLineFields : ILineFields
{
    private readonly Holdings _holdings;

    /// <summary>Opens a line.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="item">The item that is offered; null for none.</param>
    public DeliveryLineFields(ILedger ledger, string? item)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        Item = new("Item", 16, FieldKind.Choice)
        {
            Choices = () => _holdings.Items.Select(known => known.Code),
            Hint = "Up and Down choose; a beginning is enough.",
        };
        Item.Offer(item);
        Order = OpenOrders.Field(ledger, item, "The order that this delivers, whole or in part; empty for none.");
        OfferLast();
        OfferOrdered();
    }

    public FormField Item { get; }

    public FormField Packs { get; } = new("Packs", 8, FieldKind.Figure) { Hint = "A part of a pack, such as 0.5, is an open one." };

    public FormField Price { get; } = new("Price of a pack", 10, FieldKind.Figure);

    public FormField Batch { get; } = new("Batch", 12) { Hint = "The maker's batch or emulsion number, as printed." };

    public FormField Expires { get; } = new("Expiry date", 10, FieldKind.Date) { Hint = "The expiry date printed on the packs; empty for none." };

    public FormField Storage { get; } = new("Kept in", 10, FieldKind.Choice) { Choices = () => ["freezer", "fridge", "shelf"] };

    public FormField Order { get; }

    /// <summary>The rows of a line among others; the order is asked for where one waits.</summary>
    public IReadOnlyList<IReadOnlyList<FormField>> Rows =>
        [[Item, Packs, Price], [Batch, Expires, Storage], .. Order.IsEmpty && !_holdings.Orders.Open.Any() ? NoRow : [[Order]]];

    public FormField First => Item.IsEmpty ? Item : Packs;

    private static IReadOnlyList<IReadOnlyList<FormField>> NoRow => [];

    /// <summary>The item or the order is another: what is known of it is offered.</summary>
    public void Edited(FormField field)
    {
        if (field == Item)
        {
            OfferLast();
            Order.Offer(_holdings.Orders.LinesOf(Item.Text).Select(found => found.Order.Code).FirstOrDefault());
        }

        if (field == Item || field == Order)
            OfferOrdered();
    }

    /// <summary>Offers an order that it delivers.</summary>
    public void OfferOrder(string order)
    {
        Order.Offer(order);
        OfferOrdered();
    }

    /// <summary>The line as a delivery takes it.</summary>
    public DeliveryLine Read(Answers answers) => new()
    {
        Item = answers.Needed(Item),
        Packs = answers.Figure(Packs),
        Price = Price.IsEmpty ? null : answers.Money(Price),
        Batch = Batch.Text,
        ExpiresOn = answers.OptionalDate(Expires),
        Storage = Storage.Text,
        Order = Answers.Optional(Order),
    };

    /// <summary>What was paid for the last pack that is still there, and where it is kept.</summary>
    private void OfferLast()
    {
        var item = _holdings.Item(Item.Text);
        var lot = item is null ? null : LastLot(item);
        Storage.Offer(lot?.Storage);
        Price.Offer(lot?.Cost.PartOf(item!.Pack.Base, lot.Quantity.Base).Rounded());
    }

    /// <summary>What is still to come of the order, at its price.</summary>
    private void OfferOrdered()
    {
        var line = _holdings.Orders.Order(Order.Text)?.LineOf(Item.Text) is { IsOpen: true } open ? open : null;
        Packs.Offer(line is null ? "1" : Scaled.ToText(line.OutstandingPacks, 6));
        if (line is { Price.Millionths: > 0 })
            Price.Offer(line.Price.Rounded());
    }

    private Lot? LastLot(Item item) =>
        _holdings.ContainersOf(item.Code).Select(container => container.Lot).MaxBy(lot => (lot.ReceivedOn, lot.Id.Value));
}
