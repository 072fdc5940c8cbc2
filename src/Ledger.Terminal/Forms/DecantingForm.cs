using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.Terminal.Forms;

/// <summary>A bottle is filled into smaller ones.</summary>
internal sealed class DecantingForm : FormModel
{
    private readonly Holdings _holdings;

    public DecantingForm(ILedger ledger, string from)
        : base(ledger)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        From = new("From", 16, FieldKind.Choice)
        {
            Choices = () =>
            [
                .. _holdings.Containers.Where(bottle => bottle.Held.Unit == Unit.Millilitre).Select(bottle => bottle.Code),
                .. _holdings.Items.Where(item => item.Unit == Unit.Millilitre).Select(item => item.Code),
            ],
            Hint = "The bottle that is emptied, or an item for the one that is reached for first.",
        };
        From.Offer(from);
        Rows = [[Date, From], [Count, Size, Last], [Names], [Note]];
    }

    public override string Title => "Decant";

    public override IReadOnlyList<string> Purpose =>
    [
        "A bottle is filled into smaller ones, full to the brim where possible. Each begins a life of its own; "
        + "volume and cost are shared exactly.",
        "Label every bottle, and never use one that looks like a bottle for food or drink. Wear gloves and eye protection.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override FormField First => Count;

    public FormField From { get; }

    public FormField Count { get; } = new("Bottles", 5, FieldKind.Figure) { Hint = "How many of them." };

    public FormField Size { get; } = new("Each holds, ml", 8, FieldKind.Figure) { Hint = "What one holds when it is full." };

    public FormField Last { get; } = new("In the last, ml", 8, FieldKind.Figure) { Hint = "Empty for what is left, at most a full one." };

    public FormField Names { get; } = new("Names", 40)
    {
        Hint = "What is written on them, with blanks between; empty for running numbers.",
    };

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers)
    {
        var (count, size) = (answers.Whole(Count), answers.Quantity(Size, Unit.Millilitre));
        answers.Needed(Size);
        var last = answers.Quantity(Last, Unit.Millilitre);
        var names = Names.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (count is < 1 or > 200)
            answers.Problem("Bottles: from 1 to 200");
        if (names.Length > 0 && names.Length != count)
            answers.Problem($"Names: {names.Length} names for {count} bottles");
        return new Decanting
        {
            Key = EntryKey,
            Date = answers.Date(Date),
            From = answers.Needed(From),
            Bottles =
            [
                .. Enumerable.Range(0, Math.Clamp(count, 0, 200)).Select(i => new FilledBottle(
                    size ?? new(0, Unit.Millilitre), i == count - 1 ? last : null, names.ElementAtOrDefault(i))),
            ],
            Note = Note.Text,
        };
    }
}
