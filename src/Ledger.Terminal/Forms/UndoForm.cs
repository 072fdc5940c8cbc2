namespace Ledger.Terminal.Forms;

/// <summary>An entry is taken back: an undo names it, and both stay in the journal.</summary>
/// <param name="ledger">The ledger.</param>
/// <param name="entry">The entry.</param>
internal sealed class UndoForm(ILedger ledger, JournalEntry entry)
    : KindForm(ledger, "undo", ("entry", Scaled.ToText(entry.Number, 0)))
{
    public override string Title => $"Undo entry {entry.Number}: {entry.Summary}";
}
