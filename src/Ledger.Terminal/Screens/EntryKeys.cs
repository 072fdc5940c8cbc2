using Ledger.Terminal.Forms;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Screens;

/// <summary>
/// The keys of what is there by an entry: putting the entry right, taking it back, and showing all entries about it.
/// </summary>
/// <param name="ledger">The ledger.</param>
/// <param name="about">What a row is; null for one that no entry is about.</param>
internal sealed class EntryKeys(ILedger ledger, Func<int, Subject?> about)
{
    /// <summary>Puts the entry right that the row is there by.</summary>
    /// <param name="meaning">What the help says.</param>
    public ScreenAction PutRight(string meaning) =>
        ScreenAction.Of(KeyTable.Amend, meaning, row => OnEntry(row, entry => Amending(ledger, entry)));

    /// <summary>Takes the entry back that the row is there by.</summary>
    /// <param name="meaning">What the help says.</param>
    public ScreenAction TakeBack(string meaning) =>
        ScreenAction.Quiet(KeyTable.Undo, meaning, row => OnEntry(row, entry => new UndoForm(ledger, entry)));

    /// <summary>Shows what was recorded about the row, where any of it is amended or taken back.</summary>
    public ScreenAction Entries { get; } = ScreenAction.Quiet(
        KeyTable.Entries, "shows every entry about it; there, any of them is amended or taken back",
        row => row < 0 || about(row) is not { } subject ? null : new TableStep(new JournalModel(ledger, subject)));

    /// <summary>
    /// The form in which an entry is amended; for an undo or an amendment the one that takes it back.
    /// </summary>
    public static Form Amending(ILedger ledger, JournalEntry entry) =>
        ledger.Said(entry.Number) is { } said and not (Undo or Amendment)
            ? new AmendForm(ledger, entry, said)
            : new UndoForm(ledger, entry);

    private Step? OnEntry(int row, Func<JournalEntry, Form> form) => row < 0 || about(row) is not { } subject ? null
        : ledger.EntryOf(subject) is { } entry ? new FormStep(form(entry))
        : new MessageStep(
            $"{subject.Name} was written down by an earlier version, which did not keep the entry. It stays as it is.");
}
