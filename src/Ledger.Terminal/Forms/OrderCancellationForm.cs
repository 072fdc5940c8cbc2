using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.Terminal.Forms;

/// <summary>What has not come of an order is cancelled.</summary>
internal sealed class OrderCancellationForm : FormModel
{
    public OrderCancellationForm(ILedger ledger, string item)
        : base(ledger)
    {
        Order = OpenOrders.Field(ledger, item);
        Item.Offer(item);
        Rows = [[Date, Order], [Item], [Reason], [Note]];
    }

    public override string Title => "Cancel an order";

    public override IReadOnlyList<string> Purpose => ["What has not come is cancelled and no longer incoming. What came stays."];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override FormField First => Reason;

    public FormField Order { get; }

    public FormField Item { get; } = new("Item", 16) { Hint = "Empty for all that is still to come of the order." };

    public FormField Reason { get; } = new("Reason", 20, FieldKind.Choice) { Choices = () =>
        ["too late", "found elsewhere", "no longer made"] };

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers) => new OrderCancellation
    {
        Key = EntryKey,
        Date = answers.Date(Date),
        Order = answers.Needed(Order),
        Item = Answers.Optional(Item),
        Reason = answers.Needed(Reason),
        Note = Note.Text,
    };
}
