using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Journal.Kinds;
using Ledger.Core.Measures;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Forms;

/// <summary>An entry is put right: the form of its kind, filled in with what it says now. What is different when it is saved is amended.</summary>
internal sealed class AmendForm : KindForm
{
    private readonly JournalEntry _entry;
    private readonly EntryKind _kind;
    private readonly EntryText _before;
    private readonly FormField _reason = new("Why", 30, FieldKind.Text) { Hint = "why it is put right: mistyped, found out later" };

    /// <param name="ledger">The ledger.</param>
    /// <param name="entry">The entry.</param>
    /// <param name="said">What it says now.</param>
    /// <param name="before">The entry that it is to come before in its day; null to leave it where it is.</param>
    public AmendForm(ILedger ledger, JournalEntry entry, Entry said, JournalEntry? before = null)
        : base(ledger, EntryKinds.Of(said).Name)
    {
        (_entry, _kind) = (entry, EntryKinds.Of(said));
        _before = EntryWriting.Write(_kind, said, Terms with { IsTyped = false });
        _reason.Begin("mistyped");
        var text = EntryWriting.Write(_kind, said, Terms);
        if (before is not null)
            text[CommonFields.Before] = Scaled.ToText(before.Number, 0);
        FillIn(Own, text);
        ClearLines();
        foreach (var line in text.Lines)
            FillIn(AddLine(), line);
    }

    /// <inheritdoc/>
    public override string Title => $"Put entry {_entry.Number} right: {_entry.Summary}";

    /// <inheritdoc/>
    public override IReadOnlyList<IReadOnlyList<FormField>> Rows => [.. base.Rows, [_reason]];

    /// <inheritdoc/>
    protected override string About => $"amending {_entry.Key}";

    /// <inheritdoc/>
    protected override bool AsksPlace => true;

    /// <summary>Nothing is offered: what stands there is what was said.</summary>
    protected override void OfferAll()
    {
    }

    /// <inheritdoc/>
    protected override Entry? Read(ICollection<string> problems)
    {
        if (base.Read(problems) is not { } after)
            return null;
        var changes = Amending.Between(_kind, _before, EntryWriting.Write(_kind, after, Terms with { IsTyped = false }))
            .Where(change => _kind.IsDated || change.Line > 0 || change.Field != CommonFields.Date.Name).ToList();
        if (changes.Count == 0)
        {
            problems.Add("nothing is different yet: change what is wrong, then save");
            return null;
        }

        return new Amendment
        {
            Key = EntryKey, Date = Ledger.Today, Number = _entry.Number, Reference = _entry.Key, Changes = changes, Reason = _reason.Text,
        };
    }

    private static void FillIn(FieldBoxes boxes, EntryText text)
    {
        foreach (var (name, box) in boxes.Named)
            box.Put(text[name], isTouched: false, isGiven: false);
    }
}
