using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Forms;

/// <summary>
/// An entry is amended: the form of its kind, filled in with what it says now. What is different when it is saved is
/// amended.
/// </summary>
internal sealed class AmendForm : KindForm
{
    private readonly JournalEntry _entry;
    private readonly EntryKind _kind;
    private readonly EntryText _before;
    private readonly EntryText _typedBefore;
    private EntryText _typed;
    private readonly FormField _reason = new("Why", 30,
        FieldKind.Text) { Hint = "why it is amended: mistyped, found out later" };

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
        _typed = _typedBefore = EntryWriting.Write(_kind, said, Terms);
        if (before is not null)
            text[CommonFields.Before] = Scaled.ToText(before.Number, 0);
        FillIn(Own, text);
        ClearLines();
        foreach (var line in text.Lines)
            FillIn(AddLine(), line);
    }

    public override string Title => $"Amend entry {_entry.Number}: {_entry.Summary}";

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows => [.. base.Rows, [_reason]];

    protected override string About => $"amending {_entry.Key}";

    protected override bool AsksPlace => true;

    /// <summary>Nothing is offered: what stands there is what was said.</summary>
    protected override void OfferAll()
    {
    }

    protected override Entry? Read(ICollection<string> problems)
    {
        if (base.Read(problems) is not { } after)
            return null;
        _typed = EntryWriting.Write(_kind, after, Terms);
        var changes = Changes(_before, EntryWriting.Write(_kind, after, Terms with { IsTyped = false }));
        if (changes.Count == 0)
        {
            problems.Add("nothing is different yet: change what is wrong, then save");
            return null;
        }

        return new Amendment
        {
            Key = EntryKey, Date = Ledger.Today, Number = _entry.Number, Reference = _entry.Key,
            Changes = changes, Reason = _reason.Text,
        };
    }

    /// <summary>What the entry said stands beside what it says now.</summary>
    protected override IReadOnlyList<Block> More(Posting posting) =>
        [Block.Facts("What it said -> what it says now", Changes(_typedBefore, _typed).Select(Beside))];

    private List<FieldChange> Changes(EntryText before, EntryText after) =>
        [.. Amending.Between(_kind, before, after)
            .Where(change => _kind.IsDated || change.Line > 0 || change.Field != CommonFields.Date.Name
                || Own.Find(CommonFields.FromDay.Name) is { IsEmpty: false })];

    private (string Label, string? Text) Beside(FieldChange change)
    {
        if (change.Field.Length == 0)
            return ($"Line {change.Line}",
                $"{LinePhrase.Write(_kind.Line!, _typedBefore.Lines[change.Line - 1])} -> taken away");
        var isOwn = change.Line == 0;
        var field = (isOwn ? _kind.AllFields : _kind.Line!.Fields).First(one => one.Name == change.Field);
        var before = isOwn ? _typedBefore[field] : change.Line <= _typedBefore.Lines.Count
            ? _typedBefore.Lines[change.Line - 1][field]
            : "";
        var label = isOwn || _typed.Lines.Count == 1
            ? LabelOf(field)
            : $"Line {change.Line} {LabelOf(field).ToLowerInvariant()}";
        return (label, $"{OrNothing(before)} -> {OrNothing(change.Value)}");
    }

    private static string OrNothing(string text) => text.Length > 0 ? text : "(nothing)";

    private static void FillIn(FieldBoxes boxes, EntryText text)
    {
        foreach (var (name, box) in boxes.Named)
            box.Put(text[name], isTouched: false, isGiven: false);
    }
}
