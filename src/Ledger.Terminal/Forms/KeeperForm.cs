using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.Terminal.Forms;

/// <summary>A negative is named a keeper.</summary>
internal sealed class KeeperForm : FormModel
{
    public KeeperForm(ILedger ledger, string? negative)
        : base(ledger)
    {
        Negative.Offer(negative);
        Rows = [[Date, Negative], [Note]];
    }

    public override string Title => "Keeper";

    public override IReadOnlyList<string> Purpose =>
        ["A negative turns out to be worth printing. It is named by its number, or by its sheet's: #12."];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override FormField First => Negative;

    public FormField Negative { get; } = new("Negative", 14) { Hint = "Such as 2025-014, or #12." };

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers) => new KeeperNaming
    {
        Key = EntryKey,
        Date = answers.Date(Date),
        Negative = answers.Needed(Negative),
        Note = Note.Text,
    };
}
