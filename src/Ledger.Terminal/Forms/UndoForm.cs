using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.Terminal.Forms;

/// <summary>An entry is taken back: an undo names it, and both stay in the journal.</summary>
internal sealed class UndoForm : FormModel
{
    private readonly JournalEntry _entry;

    public UndoForm(ILedger ledger, JournalEntry entry)
        : base(ledger)
    {
        _entry = entry;
        Reason.Offer("mistake");
        Rows = [[Reason], [Note]];
    }

    public override string Title => $"Take back entry {_entry.Number}: {_entry.Summary}";

    public override IReadOnlyList<string> Purpose =>
    [
        "An undo takes the entry back on the entry's own day, with a reason. Nothing is deleted: both stay in the journal.",
        "What came after it may depend on it; then the later entries are taken back first.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public FormField Reason { get; } = new("Reason", 30) { Hint = "Enter twice takes it back." };

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers) => new Undo
    {
        Key = EntryKey,
        Date = Ledger.Today,
        Number = _entry.Number,
        Reason = answers.Needed(Reason),
        Note = Note.Text,
    };
}
