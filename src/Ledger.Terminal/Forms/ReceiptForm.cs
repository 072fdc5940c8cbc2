using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Terminal.Forms;

/// <summary>A delivery: what came, how many packs, what they cost, what is printed on them.</summary>
internal sealed class ReceiptForm : FormModel
{
    private readonly Holdings _holdings;

    public ReceiptForm(ILedger ledger, string? item)
        : base(ledger)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        Item = new("Item", 16, FieldKind.Choice)
        {
            Choices = () => _holdings.Items.Select(known => known.Code),
            Hint = "Up and Down choose; a beginning is enough.",
        };
        Item.Offer(item);
        Order = OpenOrders.Field(ledger, item, "The order that this delivers, whole or in part; empty for none.");
        Rows = [[Date, Item, Packs], [Price, Discount], [Shipping, Duty], [Currency, Rate], [Batch, Expires, Storage], [Order], [Note]];
        OfferLast();
        OfferOrdered();
    }

    public override string Title => "Receipt";

    public override IReadOnlyList<string> Purpose =>
    [
        "A delivery of packs of one item. Every pack becomes a box, bottle or packet of its own with its own dates.",
        "Price less discount, with its share of shipping, duty and tax, is carried to every sheet and millilitre.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override FormField First => Item.IsEmpty ? Item : Packs;

    public FormField Item { get; }

    public FormField Packs { get; } = new("Packs", 8, FieldKind.Figure) { Hint = "A part of a pack, such as 0.5, is an open one." };

    public FormField Price { get; } = new("Price of a pack", 10, FieldKind.Figure);

    public FormField Discount { get; } = new("Discount on all", 10, FieldKind.Figure);

    public FormField Shipping { get; } = new("Shipping share", 10, FieldKind.Figure);

    public FormField Duty { get; } = new("Duty and tax", 10, FieldKind.Figure);

    public FormField Currency { get; } = new("Currency", 5) { Hint = "Three letters, such as EUR; empty for the ledger's own." };

    public FormField Rate { get; } = new("Rate", 10, FieldKind.Figure)
    {
        Hint = "What one unit of that currency is worth in the ledger's own, when they differ.",
    };

    public FormField Batch { get; } = new("Batch", 12) { Hint = "The maker's batch or emulsion number, as printed." };

    public FormField Expires { get; } = new("Printed date", 10, FieldKind.Date) { Hint = "The date printed on the packs; empty for none." };

    public FormField Storage { get; } = new("Kept in", 10, FieldKind.Choice) { Choices = () => ["freezer", "fridge", "shelf"] };

    public FormField Order { get; }

    public FormField Note { get; } = new("Note", 50);

    public override void Edited(FormField field)
    {
        if (field == Order)
            OfferOrdered();
        if (field != Item)
            return;
        OfferLast();
        Order.Offer(_holdings.Orders.LinesOf(Item.Text).Select(found => found.Order.Code).FirstOrDefault());
        OfferOrdered();
    }

    protected override Entry Read(Answers answers) => new Receipt
    {
        Key = EntryKey,
        Date = answers.Date(Date),
        Item = answers.Needed(Item),
        Packs = answers.Figure(Packs),
        Price = answers.Money(Price),
        Discount = answers.Money(Discount),
        Shipping = answers.Money(Shipping),
        Duty = answers.Money(Duty),
        Currency = Answers.Optional(Currency)?.ToUpperInvariant(),
        Rate = answers.OptionalFigure(Rate),
        Batch = Batch.Text,
        ExpiresOn = answers.OptionalDate(Expires),
        Storage = Storage.Text,
        Order = Answers.Optional(Order),
        Note = Note.Text,
    };

    /// <summary>What was paid for the last pack that is still there, and where it is kept.</summary>
    private void OfferLast()
    {
        if (_holdings.Item(Item.Text) is not { } item || LastLot(item) is not { } lot)
            return;
        Storage.Offer(lot.Storage);
        Price.Offer(lot.Cost.PartOf(item.Pack.Base, lot.Quantity.Base).Rounded());
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
