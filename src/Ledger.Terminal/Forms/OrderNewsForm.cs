using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.Terminal.Forms;

/// <summary>What becomes of an order before it comes.</summary>
internal sealed class OrderNewsForm : FormModel
{
    public OrderNewsForm(ILedger ledger, string item)
        : base(ledger)
    {
        Order = OpenOrders.Field(ledger, item);
        Item.Offer(item);
        Rows = [[Date, Order], [Item], [Expected, BackOrdered], [Packs, Price], [Note]];
    }

    public override string Title => "News of an order";

    public override IReadOnlyList<string> Purpose =>
        ["What is new: another day, that it is back-ordered, other packs or price. What is left empty stays as it was."];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override FormField First => Expected;

    public FormField Order { get; }

    public FormField Item { get; } = new("Item", 16) { Hint = "Empty for all that is still to come of the order." };

    public FormField Expected { get; } = new("Expected now", 10, FieldKind.Date);

    public FormField BackOrdered { get; } = new("Back-ordered", 4, FieldKind.Choice) { Choices = () => ["yes", "no"],
        Hint = "Empty when nothing was said." };

    public FormField Packs { get; } = new("Packs in all", 6, FieldKind.Figure) { Hint = "How many are ordered now, those that came counted in." };

    public FormField Price { get; } = new("Price of a pack", 10, FieldKind.Figure);

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers) => new OrderChange
    {
        Key = EntryKey,
        Date = answers.Date(Date),
        Order = answers.Needed(Order),
        Item = Answers.Optional(Item),
        ExpectedOn = answers.OptionalDate(Expected),
        IsBackOrdered = BackOrdered.IsEmpty ? null : answers.IsYes(BackOrdered),
        Packs = Packs.IsEmpty ? null : answers.Whole(Packs),
        Price = Price.IsEmpty ? null : answers.Money(Price),
        Note = Note.Text,
    };
}
