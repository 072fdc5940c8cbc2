using Ledger.Core.Baths;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Terminal.Forms;

/// <summary>Fresh solution or replenisher goes into a bath.</summary>
internal sealed class TopUpForm : FormModel
{
    private readonly Holdings _holdings;

    public TopUpForm(ILedger ledger, string? bath)
        : base(ledger)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        Bath = new("Bath", 10, FieldKind.Choice)
        {
            Choices = () => _holdings.Baths.Select(one => one.Code),
            Hint = "The bath that is topped up.",
        };
        Bath.Offer(bath ?? _holdings.Baths.FirstOrDefault()?.Code);
        Item = new("Made from", 16, FieldKind.Choice)
        {
            Choices = () => _holdings.Items.Where(item => item.Kind == ItemKind.Chemical).Select(item => item.Code),
            Hint = "The item of the fresh solution or replenisher.",
        };
        Jug = JugField.Of(_holdings);
        Jug.Offer(null);
        Rows = [[Date, Bath], [Added, Item, Dilution], [Amount, Bled, Jug], [Difference], [Note]];
        Edited(Bath);
    }

    public override string Title => "Top up";

    public override IReadOnlyList<string> Purpose =>
    [
        "Fresh solution goes into a bath: replenisher for a developer, working solution for what the film has carried away.",
        "The capacity stays what it was, because what the film left in the bath is still there.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override FormField First => Added;

    public FormField Bath { get; }

    public FormField Item { get; }

    public FormField Added { get; } = new("Added, ml", 8, FieldKind.Figure)
    {
        Hint = "The fresh solution; what is due is offered for a replenished one.",
    };

    public FormField Dilution { get; } = new("Dilution", 10) { Hint = "Empty for the bath's own; 1+0 for a ready replenisher." };

    public FormField Amount { get; } = new("Measured out", 8, FieldKind.Figure)
    {
        Hint = "In the item's unit; empty for what the dilution asks.",
    };

    public FormField Bled { get; } = new("Poured off, ml", 8, FieldKind.Figure) { Hint = "Used solution poured off first to make room." };

    public FormField Jug { get; }

    public override FormField Difference { get; } = new("Book the difference", 4, FieldKind.Tick)
    {
        Hint = "When the bottle holds more than the book says.",
    };

    public FormField Note { get; } = new("Note", 50);

    public override void Edited(FormField field)
    {
        if (field != Bath || _holdings.Bath(Bath.Text) is not { } bath)
            return;
        Item.Offer(bath.Item);
        Added.Offer(new BathReading(bath, _holdings.AsOf).Replenishment is { } due && due.Due > default(Volume)
            ? Scaled.ToText(due.Due.Millilitres, 3) : null);
    }

    protected override Entry Read(Answers answers)
    {
        var item = Answers.Optional(Item);
        return new TopUp
        {
            Key = EntryKey,
            Date = answers.Date(Date),
            Bath = answers.Needed(Bath),
            Added = answers.Needed(Added).Length == 0 ? default : answers.Volume(Added) ?? default,
            Item = item,
            Dilution = answers.Dilution(Dilution),
            Amount = answers.Quantity(Amount, item is null ? Unit.Millilitre : _holdings.Item(item)?.Unit ?? Unit.Millilitre),
            Bled = answers.Volume(Bled) ?? default,
            Jug = Answers.Optional(Jug),
            BooksDifference = Difference.IsTicked,
            Note = Note.Text,
        };
    }
}
