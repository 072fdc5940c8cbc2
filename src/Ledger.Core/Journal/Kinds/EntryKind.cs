using Ledger.Core.Journal.Entries;

namespace Ledger.Core.Journal.Kinds;

/// <summary>A field and where an entry, or a line, keeps it.</summary>
/// <typeparam name="TEntry">The entry or the line.</typeparam>
/// <param name="Field">The field.</param>
/// <param name="Get">Its value in an entry; null when it does not say it.</param>
public sealed record FieldOf<TEntry>(Field Field, Func<TEntry, object?> Get);

/// <summary>
/// A kind of entry, described once: its form, its command, its CSV file and its JSON are made from this.
/// </summary>
public abstract class EntryKind
{
    /// <summary>The name in the journal and of the command: clearing-test.</summary>
    public required string Name { get; init; }

    /// <summary>The name of its CSV file: clearing_tests.</summary>
    public required string File { get; init; }

    /// <summary>The title of its form.</summary>
    public required string Title { get; init; }

    /// <summary>What it records, in a sentence.</summary>
    public required string Purpose { get; init; }

    /// <summary>What there is to know beside, in sentences; may be empty.</summary>
    public IReadOnlyList<string> Details { get; init; } = [];

    /// <summary>The caution that stands before the act, in a line; empty where it concerns no chemistry.</summary>
    public string Caution { get; init; } = "";

    /// <summary>The words after the command's name in an example.</summary>
    public required string Example { get; init; }

    /// <summary>The words of entries that the example needs before it, each after "record"; none for most.</summary>
    public IReadOnlyList<string> ExampleNeeds { get; init; } = [];

    /// <summary>Whether it stands on a day of its own; definitions stand on the day they are written.</summary>
    public bool IsDated { get; init; } = true;

    /// <summary>
    /// Whether it defines something that has effect from a day on: a setting, a format, an item, a process, a holder.
    /// </summary>
    public abstract bool IsDefinition { get; }

    /// <summary>
    /// Whether it has a place among the entries of its day; what takes back or amends stands with the entry that it is
    /// about.
    /// </summary>
    public bool HasPlace { get; init; } = true;

    /// <summary>
    /// The field whose value names the entry in a file: rows with the same one belong together, or define the same
    /// thing again. Null where the reference alone does.
    /// </summary>
    public Field? NamedBy { get; init; }

    /// <summary>
    /// Whether another entry of the same name takes the place of the one before, as with items and plans. Otherwise the
    /// name is given once.
    /// </summary>
    public bool IsReplaceable { get; init; }

    /// <summary>
    /// The field that takes the user's reference where it is not said itself; null where a reference is only a name for
    /// the entry.
    /// </summary>
    public Field? ReferenceField { get; init; }

    /// <summary>The kind of its lines; null where it has none.</summary>
    public LineKind? Line { get; init; }

    /// <summary>Its own fields in order, without those that every entry has.</summary>
    public abstract IReadOnlyList<Field> Fields { get; }

    /// <summary>Its own fields with those that every entry has.</summary>
    public IReadOnlyList<Field> AllFields => field ??=
        [CommonFields.Date, .. Fields, .. Common];

    /// <summary>What every entry has beside its day: its note, its place in the day, and what its door asks.</summary>
    public IReadOnlyList<Field> Common => field ??=
    [
        .. IsDefinition ? new Field[] { CommonFields.FromDay } : [], CommonFields.Note,
        .. HasPlace ? new Field[] { CommonFields.Before } : [], CommonFields.Anyway, CommonFields.Reference,
    ];

    /// <summary>Whether an entry is of this kind.</summary>
    public abstract bool Describes(Entry entry);

    /// <summary>The values that an entry says.</summary>
    public abstract FieldValues ValuesOf(Entry entry);

    /// <summary>The entry that says the values. Every needed field must be there.</summary>
    public abstract Entry Make(FieldValues values);
}

/// <summary>A kind of entry, with its type.</summary>
/// <typeparam name="TEntry">The entry.</typeparam>
public sealed class EntryKind<TEntry> : EntryKind
    where TEntry : Entry
{
    /// <summary>Its own fields and where an entry keeps them.</summary>
    public required IReadOnlyList<FieldOf<TEntry>> Bound { get; init; }

    /// <summary>Makes an entry of values.</summary>
    public required Func<FieldValues, TEntry> With { get; init; }

    /// <summary>The lines of an entry.</summary>
    public Func<TEntry, IEnumerable<object>> Lines { get; init; } = _ => [];

    /// <inheritdoc/>
    public override IReadOnlyList<Field> Fields => field ??= [.. Bound.Select(bound => bound.Field)];

    /// <inheritdoc/>
    public override bool IsDefinition => typeof(TEntry).IsAssignableTo(typeof(Definition));

    /// <inheritdoc/>
    public override bool Describes(Entry entry) => entry is TEntry;

    /// <inheritdoc/>
    public override FieldValues ValuesOf(Entry entry)
    {
        var values = FieldValues.Of(Bound, (TEntry)entry);
        values.Lines = [.. Lines((TEntry)entry)];
        values.Put(CommonFields.Date, entry.Date);
        values.Put(CommonFields.Note, entry.Note.Length == 0 ? null : entry.Note);
        values.Put(CommonFields.FromDay, entry is Definition { IsForAlways: true } ? new FromDay(null) : null);
        values.Put(CommonFields.Before, entry.Before.Length == 0 ? null : entry.Before);
        values.Put(CommonFields.Anyway, Given.Yes(entry.Anyway));
        values.Put(CommonFields.Reference, entry.Key.Length == 0 ? null : entry.Key);
        return values;
    }

    /// <inheritdoc/>
    public override Entry Make(FieldValues values)
    {
        Entry entry = With(values);
        if (entry is Definition definition && values.Find(CommonFields.FromDay) is { } from)
            entry = from.Day is { } day ? definition with { Date = day } : definition with { IsForAlways = true };
        return entry with { Before = values.Find(CommonFields.Before) ?? "", Anyway = values.Of(CommonFields.Anyway) };
    }
}
