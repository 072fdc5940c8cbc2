using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Terminal.Gui.Input;

namespace Ledger.Terminal.Forms;

/// <summary>Holders were cleaned.</summary>
internal sealed class CleaningForm : FormModel
{
    private readonly Holdings _holdings;

    public CleaningForm(ILedger ledger, string? holder)
        : base(ledger)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        Holders = new("Holders", 44) { Choices = () => Dirty, Hint = "F3 adds the next one that is not clean." };
        Holders.Offer(holder ?? Dirty.FirstOrDefault());
        Rows = [[Date, Bagged], [Holders], [Note]];
    }

    public override string Title => "Cleaning";

    public override IReadOnlyList<string> Purpose =>
        ["Holders were cleaned, and perhaps put into bags. A holder counts as clean until it is emptied."];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override IReadOnlyList<FormKey> Keys =>
        [new(Key.F3, "Next holder", "adds the next holder that is not clean", _ => NamesField.AddNext(Holders, Dirty, " "))];

    public override FormField First => Holders;

    public FormField Holders { get; }

    public FormField Bagged { get; } = YesNoField.Field("Bagged", "Yes when they went into bags.");

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers) => new Cleaning
    {
        Key = EntryKey,
        Date = answers.Date(Date),
        Holders = answers.Names(Holders),
        IsBagged = answers.IsYes(Bagged),
        Note = Note.Text,
    };

    private IEnumerable<string> Dirty =>
        _holdings.Film.Holders.Where(holder => holder.CleanBeforeLoad is not null).Select(holder => holder.Code);
}
