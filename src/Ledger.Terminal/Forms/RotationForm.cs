using Ledger.Core.Baths;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.Terminal.Forms;

/// <summary>Two-bath fixing goes on by one step.</summary>
internal sealed class RotationForm : FormModel
{
    private readonly Holdings _holdings;

    public RotationForm(ILedger ledger, string? bath)
        : base(ledger)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        Bath = new("Pair of", 10, FieldKind.Choice)
        {
            Choices = () => Pairs.Select(first => first.Code),
            Hint = "Either bath of the pair.",
        };
        Bath.Offer(FirstOf(bath)?.Code ?? Pairs.FirstOrDefault()?.Code);
        NewBath.Offer(_holdings.Bath(Bath.Text) is { } first && _holdings.SecondAfter(first) is { } second
            ? NextName.After(second.Code, name => ledger.Bath(name, ledger.Today) is not null) : null);
        Jug = JugField.Of(_holdings);
        Rows = [[Date, Bath, NewBath], [Volume, Dilution, Amount], [Jug], [Reason], [Difference], [Note]];
    }

    public override string Title => "Rotate";

    public override IReadOnlyList<string> Purpose =>
    [
        "The first bath of a pair is poured out, the second moves up, and a new one is mixed that stands second. "
        + "Each keeps its own mixing date.",
        "A pair is rotated so often only, then both are mixed anew: the setting rotation-ceiling.",
        "Used fixer holds silver: local rules and the maker's safety data sheet say where it may go. Wear gloves and eye protection.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override FormField First => NewBath;

    public FormField Bath { get; }

    public FormField NewBath { get; } = new("New bath", 10) { Hint = "A name of its own, never used before." };

    public FormField Volume { get; } = new("Made, ml", 8, FieldKind.Figure) { Hint = "Empty for as much as before." };

    public FormField Dilution { get; } = new("Dilution", 10) { Hint = "Empty for the same as before." };

    public FormField Amount { get; } = new("Measured out", 8, FieldKind.Figure)
    {
        Hint = "In the item's unit; empty for what the dilution asks.",
    };

    public FormField Jug { get; }

    public FormField Reason { get; } = new("Reason", 30, FieldKind.Choice)
    {
        Choices = () => ["rotated", "its capacity is used", "clearing takes twice as long", "too old"],
        Hint = "Why the first bath goes; empty for: rotated.",
    };

    public override FormField Difference { get; } = new("Book the difference", 4, FieldKind.Tick)
    {
        Hint = "When the bottle holds more than the book says.",
    };

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers) => new Rotation
    {
        Key = EntryKey,
        Date = answers.Date(Date),
        Bath = Answers.Optional(Bath),
        NewBath = answers.Needed(NewBath),
        WorkingVolume = answers.Volume(Volume),
        Dilution = answers.Dilution(Dilution),
        Amount = answers.Quantity(Amount, _holdings.Item(_holdings.Bath(Bath.Text)?.Item ?? "")?.Unit ?? Unit.Millilitre),
        Jug = Answers.Optional(Jug),
        Reason = Answers.Optional(Reason) ?? "rotated",
        BooksDifference = Difference.IsTicked,
        Note = Note.Text,
    };

    private IEnumerable<Bath> Pairs => _holdings.WorkingBaths.Where(bath => _holdings.SecondAfter(bath) is not null);

    private Bath? FirstOf(string? named) =>
        named is null || _holdings.Bath(named) is not { } bath ? null
        : _holdings.IsSecond(bath) ? _holdings.Bath(bath.PairedWith!)
        : _holdings.SecondAfter(bath) is null ? null : bath;
}
