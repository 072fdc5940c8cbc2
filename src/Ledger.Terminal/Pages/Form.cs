namespace Ledger.Terminal.Pages;

/// <summary>A form without a screen: its fields, what they come to, and the one step that saves it.</summary>
internal abstract class Form
{
    /// <summary>The form's name.</summary>
    public abstract string Title { get; }

    /// <summary>What it does, in sentences.</summary>
    public abstract IReadOnlyList<string> Purpose { get; }

    /// <summary>The same as a command, with the demo year; empty where no command does the same.</summary>
    public virtual string Example => "";

    /// <summary>The cautions that stand above the fields, a line each; none where no chemistry is concerned.</summary>
    public virtual IReadOnlyList<string> Cautions => [];

    /// <summary>The fields, row by row. What stands in one may decide which others there are.</summary>
    public abstract IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    /// <summary>Keys beside the usual ones.</summary>
    public virtual IReadOnlyList<FormKey> Keys => [];

    /// <summary>The tick that books what the book does not hold; null in forms that draw nothing.</summary>
    public virtual FormField? Difference => null;

    /// <summary>The key that writes the day of the last entry; null in forms without a day.</summary>
    public virtual FormKey? LastDay => null;

    /// <summary>The tick that answers what is asked about as unlikely; null in forms that record nothing.</summary>
    public virtual FormField? Anyway => null;

    /// <summary>The field the cursor stands in when the form opens.</summary>
    public virtual FormField First => Rows[0][0];

    /// <summary>What the one step is called that the form is filled in for.</summary>
    public virtual string SaveLabel => "Save";

    /// <summary>All fields in order.</summary>
    public IEnumerable<FormField> Fields => Rows.SelectMany(row => row);

    /// <summary>Whether anything was typed that leaving would lose.</summary>
    public virtual bool IsTouched => Fields.Any(one => one.IsTouched);

    /// <summary>
    /// By what it is known again when it was left unsaved: the form, and what it is about; null where it is not kept.
    /// </summary>
    public virtual string? ParkedAs => null;

    /// <summary>What stands in it, to be put back later.</summary>
    public virtual string Content() => "";

    /// <summary>Puts back what stood in it.</summary>
    public virtual void PutBack(string content)
    {
    }

    /// <summary>Keeps what was typed, or that nothing was; false when it cannot be kept.</summary>
    public virtual bool Park() => !IsTouched;

    /// <summary>A form that makes what a field names and the ledger does not know; null where there is none.</summary>
    public virtual Form? Maker(FormField field) => null;

    /// <summary>The ledger may hold something else than when the form was opened.</summary>
    /// <param name="made">What was made for the field.</param>
    /// <param name="field">The field; null when nothing was made.</param>
    public virtual void Renew(Entry? made, FormField? field)
    {
    }

    /// <summary>The user has changed a field; others may be offered again.</summary>
    public virtual void Edited(FormField field)
    {
    }

    /// <summary>What the form comes to as it stands.</summary>
    public abstract Verdict Judge();

    /// <summary>
    /// The same between two keys; null where it takes long to find out, and is to wait until nobody types.
    /// </summary>
    public virtual Verdict? JudgeAtOnce() => Judge();

    /// <summary>Saves it. The sentence says what was written, or why nothing was.</summary>
    public abstract Saving Save();
}

/// <summary>What came of saving.</summary>
/// <param name="IsDone">Whether the entry stands in the journal.</param>
/// <param name="Number">Its number.</param>
/// <param name="Sentence">What was written, or why nothing was.</param>
internal sealed record Saving(bool IsDone, long Number, string Sentence)
{
    /// <summary>What follows at once; null for nothing.</summary>
    public Step? Next { get; init; }

    /// <summary>What was written; null when nothing was, or when it was there already.</summary>
    public Entry? Entry { get; init; }

    /// <summary>Whether U takes it back: what was said last always can be, since all was in order without it.</summary>
    public bool CanBeTakenBack => Entry is not null;

    /// <summary>Nothing was written.</summary>
    public static Saving Not(string why) => new(false, 0, why);
}

/// <summary>A key of a form.</summary>
/// <param name="Key">The function key.</param>
/// <param name="Label">What the key line says.</param>
/// <param name="Meaning">What the help says.</param>
/// <param name="Press">What it does; it gets the field with the cursor and may name the field the cursor goes
/// to.</param>
internal sealed record FormKey(Key Key, string Label, string Meaning, Func<FormField?, FormField?> Press);
