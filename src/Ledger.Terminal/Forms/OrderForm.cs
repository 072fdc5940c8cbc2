using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Reordering;

namespace Ledger.Terminal.Forms;

/// <summary>Packs of an item are ordered.</summary>
internal sealed class OrderForm : FormModel
{
    private readonly Holdings _holdings;

    public OrderForm(ILedger ledger, ReorderReading reading)
        : base(ledger)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        Item = new("Item", 16, FieldKind.Choice) { Choices = () => _holdings.Items.Select(known => known.Code) };
        Item.Offer(reading.Item.Code);
        Packs.Offer(reading.Suggestion is { } suggestion ? $"{suggestion.Packs}" : "1");
        Price.Offer(reading.LastPrice?.Pack.Rounded());
        Order.Offer($"{Core.Measures.Dates.Text(ledger.Today)}-{reading.Item.Code}");
        Rows = [[Date, Order], [Item, Packs, Price], [Expected, BackOrdered, Prepaid], [Supplier], [Note]];
    }

    public override string Title => "Order";

    public override IReadOnlyList<string> Purpose =>
    [
        "Packs are ordered. They count as incoming, not as stock, until a receipt names the order.",
        "Without a day they are expected after the item's delivery time.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override FormField First => Packs;

    public FormField Order { get; } = new("Order", 24) { Hint = "A name of your own; the receipt names it." };

    public FormField Item { get; }

    public FormField Packs { get; } = new("Packs", 6, FieldKind.Figure);

    public FormField Price { get; } = new("Price of a pack", 10, FieldKind.Figure);

    public FormField Expected { get; } = new("Expected", 10,
        FieldKind.Date) { Hint = "The day it is expected; empty for the item's delivery time." };

    public FormField BackOrdered { get; } = YesNo.Field("Back-ordered", "Yes when the supplier has none now and sends it later.");

    public FormField Prepaid { get; } = YesNo.Field("Prepaid", "Yes when it is paid already.");

    public FormField Supplier { get; } = new("From", 30);

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers) => new OrderPlacement
    {
        Key = EntryKey,
        Date = answers.Date(Date),
        Order = answers.Needed(Order),
        Supplier = Supplier.Text,
        IsPrepaid = answers.IsYes(Prepaid),
        Note = Note.Text,
        Lines =
        [
            new()
            {
                Item = answers.Needed(Item), Packs = answers.Whole(Packs), Price = answers.Money(Price),
                ExpectedOn = answers.OptionalDate(Expected), IsBackOrdered = answers.IsYes(BackOrdered),
            },
        ],
    };
}
