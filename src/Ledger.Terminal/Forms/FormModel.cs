using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Terminal.Screens;
using Ledger.Terminal.Tables;
using Terminal.Gui.Input;

namespace Ledger.Terminal.Forms;

/// <summary>A form without a screen: its fields, what they come to, and the one step that saves it.</summary>
/// <param name="ledger">The ledger.</param>
internal abstract class FormModel(ILedger ledger)
{
    /// <summary>The entry's key, made when the form opens: saving twice writes once.</summary>
    protected string EntryKey { get; } = Guid.CreateVersion7().ToString();

    /// <summary>The ledger.</summary>
    protected ILedger Ledger => ledger;

    /// <summary>The form's name.</summary>
    public abstract string Title { get; }

    /// <summary>What it records, in sentences.</summary>
    public abstract IReadOnlyList<string> Purpose { get; }

    /// <summary>The fields, row by row.</summary>
    public abstract IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    /// <summary>Keys beside the usual ones.</summary>
    public virtual IReadOnlyList<FormKey> Keys => [];

    /// <summary>The day's field, which most forms have.</summary>
    public FormField Date { get; } = NewDate(ledger);

    /// <summary>The tick that books what the book does not hold; null in forms that draw nothing.</summary>
    public virtual FormField? Difference => null;

    /// <summary>The field the cursor stands in when the form opens.</summary>
    public virtual FormField First => Rows[0][0];

    /// <summary>All fields in order.</summary>
    public IEnumerable<FormField> Fields => Rows.SelectMany(row => row);

    /// <summary>Whether anything was typed.</summary>
    public bool IsTouched => Fields.Any(one => one.IsTouched);

    /// <summary>The user has changed a field; others may be offered anew.</summary>
    public virtual void Edited(FormField field)
    {
    }

    /// <summary>What the form comes to as it stands.</summary>
    public Verdict Judge()
    {
        var answers = new Answers();
        var entry = Read(answers);
        if (answers.Problems.Count > 0)
            return new Incomplete(answers.Problems);
        try
        {
            return ledger.Preview(entry) switch
            {
                Accepted accepted => new Ready(entry, accepted.Posting) { More = More(entry) },
                Refused refused => new Rejected(refused.Refusal),
                _ => throw new InvalidOperationException("a decision is neither for nor against"),
            };
        }
        catch (LedgerUnavailableException trouble)
        {
            return new Incomplete([trouble.Message]);
        }
    }

    /// <summary>Saves it. The sentence says what was written, or why nothing was.</summary>
    public Saving Save()
    {
        try
        {
            return Judge() switch
            {
                Ready ready => Outcome(ledger.Post(ready.Entry)),
                Rejected rejected => Saving.Not(Spoken.Of(rejected.Refusal)),
                Incomplete incomplete => Saving.Not(Words.Sentence(incomplete.Problems[0])),
                _ => Saving.Not("Nothing was written."),
            };
        }
        catch (LedgerUnavailableException trouble)
        {
            return Saving.Not(Words.Sentence(trouble.Message));
        }
    }

    /// <summary>What the form shows of an acceptable entry beside the shelf before and after; nothing for most forms.</summary>
    protected virtual IReadOnlyList<Block> More(Entry entry) => [];

    /// <summary>Makes the entry from the fields.</summary>
    protected abstract Entry Read(Answers answers);

    private static Saving Outcome(PostOutcome outcome) => outcome switch
    {
        Posted { Posting.Entry: Correction } posted => new(true, posted.Number, $"Entry {posted.Number}: {posted.Posting.Summary}."),
        Posted posted => new(true, posted.Number, $"Entry {posted.Number}: {posted.Posting.Summary}. U takes it back."),
        AlreadyPosted already => new(true, already.Number, $"It is in the journal already, as entry {already.Number}."),
        NotPosted refused => Saving.Not(Spoken.Of(refused.Refusal)),
        _ => Saving.Not("Nothing was written."),
    };

    private static FormField NewDate(ILedger ledger)
    {
        var field = new FormField("Date", 10, FieldKind.Date) { Hint = "Up and Down change the day." };
        field.Offer(Dates.Text(ledger.Today));
        return field;
    }
}

/// <summary>What came of saving.</summary>
/// <param name="IsDone">Whether the entry stands in the journal.</param>
/// <param name="Number">Its number.</param>
/// <param name="Sentence">What was written, or why nothing was.</param>
internal sealed record Saving(bool IsDone, long Number, string Sentence)
{
    /// <summary>Nothing was written.</summary>
    public static Saving Not(string why) => new(false, 0, why);
}

/// <summary>A key of a form.</summary>
/// <param name="Key">The function key.</param>
/// <param name="Label">What the key line says.</param>
/// <param name="Meaning">What the help says.</param>
/// <param name="Press">What it does; it gets the field with the cursor and may name the field the cursor goes to.</param>
internal sealed record FormKey(Key Key, string Label, string Meaning, Func<FormField?, FormField?> Press);
