using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Reordering;

namespace Ledger.Terminal.Forms;

/// <summary>Packs of one or several items are ordered.</summary>
internal sealed class OrderForm : FormModel
{
    private readonly IReadOnlyList<ReorderReading> _readings;
    private readonly FormLines<OrderLineFields> _lines;

    /// <summary>Opens the form.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="readings">The items, the most pressing first, with what is suggested of each.</param>
    /// <param name="item">The item of the first line.</param>
    public OrderForm(ILedger ledger, IReadOnlyList<ReorderReading> readings, string item)
        : base(ledger)
    {
        _readings = readings;
        _lines = new(() => new(readings, NextDue()));
        _lines.Add(new(readings, item));
        Order.Offer($"{Core.Measures.Dates.Text(ledger.Today)}-{item}");
    }

    public override string Title => "Order";

    public override IReadOnlyList<string> Purpose =>
    [
        "Packs are ordered. They are on order, not stock, until a delivery names the order.",
        "Without a day they are expected after the item's delivery time.",
        "One order may hold several items: F4 adds a line, first for what else should be ordered now.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows => _lines.All is [var only]
        ?
        [
            [Date, Order], [only.Item, only.Packs, only.Price], [only.Expected, only.BackOrdered, Prepaid], [Supplier], [Note],
        ]
        : [[Date, Order], .. _lines.Rows, [Supplier, Prepaid], [Note]];

    public override IReadOnlyList<FormKey> Keys => _lines.Keys;

    public override FormField First => _lines.All[0].First;

    /// <summary>The lines.</summary>
    public IReadOnlyList<OrderLineFields> Lines => _lines.All;

    public FormField Order { get; } = new("Order", 24) { Hint = "A name of your own; the delivery names it." };

    public FormField Prepaid { get; } = YesNoField.Field("Prepaid", "Yes when it is paid already.");

    public FormField Supplier { get; } = new("From", 30);

    public FormField Note { get; } = new("Note", 50);

    public override void Edited(FormField field) => _lines.Of(field)?.Edited(field);

    protected override Entry Read(Answers answers) => new OrderPlacement
    {
        Key = EntryKey,
        Date = answers.Date(Date),
        Order = answers.Needed(Order),
        Supplier = Supplier.Text,
        IsPrepaid = answers.IsYes(Prepaid),
        Note = Note.Text,
        Lines = _lines.Read(answers, (line, own) => line.Read(own)),
    };

    private string? NextDue() => _readings
        .FirstOrDefault(reading => reading.Suggestion is { IsNow: true } && !_lines.Have(reading.Item.Code))?.Item.Code;
}
