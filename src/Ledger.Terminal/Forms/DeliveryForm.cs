using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Terminal.Screens;
using Ledger.Terminal.Tables;

namespace Ledger.Terminal.Forms;

/// <summary>A delivery: what came, how many packs, what they cost, what is printed on them; one line or more.</summary>
internal sealed class DeliveryForm : FormModel
{
    private readonly Holdings _holdings;
    private readonly FormLines<DeliveryLineFields> _lines;

    public DeliveryForm(ILedger ledger, string? item)
        : base(ledger)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        _lines = new(NextLine);
        _lines.Add(new(ledger, item));
    }

    public override string Title => "Delivery";

    public override IReadOnlyList<string> Purpose =>
    [
        "What arrived in one go. Every pack becomes a box, bottle or packet of its own with its own dates.",
        "Price less discount, with its share of shipping, duty and tax, is carried to every sheet and millilitre.",
        "Several items that were paid together are lines of one delivery: F4 adds one. The discount, the shipping, duty and tax of the "
        + "whole delivery stand once and are shared by the value of the lines, which add up to what was paid, to the last millionth.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows => _lines.All is [var only]
        ?
        [
            [Date, only.Item, only.Packs], [only.Price, Discount], [Shipping, Duty], [Currency, Rate],
            [only.Batch, only.Expires, only.Storage], [only.Order], [Reference], [Note],
        ]
        : [[Date, Reference], [Discount, Shipping, Duty], [Currency, Rate], .. _lines.Rows, [Note]];

    public override IReadOnlyList<FormKey> Keys => _lines.Keys;

    public override FormField First => _lines.All[0].First;

    /// <summary>The lines.</summary>
    public IReadOnlyList<DeliveryLineFields> Lines => _lines.All;

    public FormField Reference { get; } = new("Reference", 24) { Hint = "The invoice's number, or a name of your own; empty for none." };

    public FormField Discount { get; } = new("Discount on all", 10, FieldKind.Figure);

    public FormField Shipping { get; } = new("Shipping", 10, FieldKind.Figure);

    public FormField Duty { get; } = new("Duty and tax", 10, FieldKind.Figure);

    public FormField Currency { get; } = new("Currency", 5) { Hint = "Three letters, such as EUR; empty for the ledger's own." };

    public FormField Rate { get; } = new("Rate", 10, FieldKind.Figure)
    {
        Hint = "What one unit of that currency is worth in the ledger's own, when they differ.",
    };

    public FormField Note { get; } = new("Note", 50);

    public override void Edited(FormField field) => _lines.Of(field)?.Edited(field);

    protected override Entry Read(Answers answers) => new Delivery
    {
        Key = Answers.Optional(Reference) ?? EntryKey,
        Reference = Answers.Optional(Reference) ?? "",
        Date = answers.Date(Date),
        Lines = _lines.Read(answers, (line, own) => line.Read(own)),
        Discount = answers.Money(Discount),
        Shipping = answers.Money(Shipping),
        Duty = answers.Money(Duty),
        Currency = Answers.Optional(Currency)?.ToUpperInvariant(),
        Rate = answers.OptionalFigure(Rate),
        Note = Note.Text,
    };

    protected override IReadOnlyList<Block> More(Posting posting) => LandedBlocks.Of(posting, _holdings.Settings);

    /// <summary>When the line before names an order, what else is still to come of it.</summary>
    private DeliveryLineFields NextLine()
    {
        var order = _holdings.Orders.Order(_lines.All[^1].Order.Text);
        var next = order?.Lines.FirstOrDefault(line => line.IsOpen && !_lines.Have(line.Item));
        var added = new DeliveryLineFields(Ledger, next?.Item);
        if (next is not null)
            added.OfferOrder(order!.Code);
        return added;
    }
}
