using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.Terminal.Forms;

/// <summary>A supplier announces that an item will cost more.</summary>
internal sealed class PriceRiseForm : FormModel
{
    private readonly Holdings _holdings;

    public PriceRiseForm(ILedger ledger, string item)
        : base(ledger)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        Item = new("Item", 16, FieldKind.Choice) { Choices = () => _holdings.Items.Select(known => known.Code) };
        Item.Offer(item);
        From.Offer(Dates.Text(ledger.Today));
        Rows = [[Date, Item], [Percent, From], [Note]];
    }

    public override string Title => "Price rise";

    public override IReadOnlyList<string> Purpose =>
        ["A supplier announces that an item will cost more. Today reminds you of it in time, and says how many packs to buy before."];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override FormField First => Percent;

    public FormField Item { get; }

    public FormField Percent { get; } = new("Percent", 6, FieldKind.Figure) { Hint = "By how many percent." };

    public FormField From { get; } = new("from", 10, FieldKind.Date) { Hint = "The first day of the new price." };

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers) => new PriceRiseNotice
    {
        Key = EntryKey,
        Date = answers.Date(Date),
        Item = answers.Needed(Item),
        Percent = answers.Figure(Percent),
        From = answers.Date(From),
        Note = Note.Text,
    };
}
