using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.Terminal.Forms;

/// <summary>An announced price rise of an item.</summary>
internal sealed class PriceRiseForm : FormModel
{
    public PriceRiseForm(ILedger ledger, string item)
        : base(ledger)
    {
        var items = ledger.HoldingsOn(ledger.Today).Items.Select(known => known.Code).ToList();
        Item = new("Item", 16, FieldKind.Choice) { Choices = () => items };
        Item.Offer(item);
        Rows = [[Date, Item], [Percent, From], [Note]];
    }

    public override string Title => "Price rise";

    public override IReadOnlyList<string> Purpose =>
        ["A price will rise: until then, Reorder and Today say what it pays to buy before, at your present rate of use."];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override FormField First => Percent;

    public FormField Item { get; }

    public FormField Percent { get; } = new("Percent more", 6, FieldKind.Figure);

    public FormField From { get; } = new("From", 10, FieldKind.Date) { Hint = "The first day of the new price, such as 2026-05-01." };

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
