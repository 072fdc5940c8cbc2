using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.Terminal.Forms;

/// <summary>A sealed box or bottle is opened.</summary>
internal sealed class OpeningForm : FormModel
{
    private readonly Holdings _holdings;

    public OpeningForm(ILedger ledger, string what)
        : base(ledger)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        What = new("What", 16, FieldKind.Choice)
        {
            Choices = () =>
            [
                .. _holdings.Containers.Where(container => container.IsSealed).Select(container => container.Code),
                .. _holdings.Items.Select(item => item.Code),
            ],
            Hint = "A box or bottle; or an item, for the sealed one that is reached for first.",
        };
        What.Offer(what);
        Rows = [[Date, What], [Batch, Envelopes], [Note]];
    }

    public override string Title => "Open";

    public override IReadOnlyList<string> Purpose =>
    [
        "A sealed box or bottle is opened. Its life since opening begins on that day.",
        "A large box of film is opened into its inner envelopes: a box of 100 into 4, each of them sealed until it is opened itself.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public FormField What { get; }

    public FormField Batch { get; } = new("Batch", 12) { Hint = "With an item: the next sealed one of this batch." };

    public FormField Envelopes { get; } = new("envelopes", 4, FieldKind.Figure) { Hint = "How many inner envelopes; empty when the sheets lie in the box." };

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers) => new Opening
    {
        Key = EntryKey,
        Date = answers.Date(Date),
        Container = answers.Needed(What),
        Batch = Batch.Text.Trim(),
        Envelopes = Envelopes.IsEmpty ? null : answers.Whole(Envelopes),
        Note = Note.Text,
    };
}
