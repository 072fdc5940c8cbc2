using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.Terminal.Forms;

/// <summary>What is really there is counted or measured.</summary>
internal sealed class CountForm : FormModel
{
    private readonly Holdings _holdings;

    public CountForm(ILedger ledger, string what)
        : base(ledger)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        What = new("What", 16, FieldKind.Choice)
        {
            Choices = () =>
            [
                .. _holdings.Items.Select(item => item.Code), .. _holdings.Containers.Select(container => container.Code),
                .. DiscardForm.FilmPlaces(_holdings),
            ],
            Hint = "A box or bottle, an item for all of them, a holder side, an exposed box.",
        };
        What.Offer(what);
        Rows = [[Date, What], [Found], [Reason], [Note]];
    }

    public override string Title => "Count";

    public override IReadOnlyList<string> Purpose =>
        ["What is really there, counted or measured. The difference from the book is posted with its reason, and nothing else changes."];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override FormField First => Found;

    public FormField What { get; }

    public FormField Found { get; } = new("Really there", 10, FieldKind.Figure) { Hint = "In the item's unit." };

    public FormField Reason { get; } = new("Reason", 20, FieldKind.Choice)
    {
        Choices = () => ["dregs", "spill", "evaporation", "miscounted", "not recorded"],
        Hint = "Up and Down offer the usual reasons.",
    };

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers)
    {
        var what = answers.Needed(What);
        var unit = DiscardForm.UnitOf(_holdings, what);
        answers.Needed(Found);
        return new StockCount
        {
            Key = EntryKey,
            Date = answers.Date(Date),
            What = what,
            Found = answers.Quantity(Found, unit) ?? new(0, unit),
            Reason = answers.Needed(Reason),
            Note = Note.Text,
        };
    }
}
