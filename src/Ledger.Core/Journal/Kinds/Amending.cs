using Ledger.Core.Journal.Entries;

namespace Ledger.Core.Journal.Kinds;

/// <summary>What an entry says once it was amended, and what is different between two versions of it.</summary>
public static class Amending
{
    /// <summary>Puts the changes into the texts of an entry.</summary>
    /// <param name="kind">The kind of the entry that is amended.</param>
    /// <param name="text">Its texts; they are changed.</param>
    /// <param name="changes">What is to be said.</param>
    /// <param name="problems">What is no field of the kind.</param>
    public static void Apply(EntryKind kind, EntryText text, IReadOnlyList<FieldChange> changes,
        ICollection<FieldProblem> problems)
    {
        foreach (var change in changes.Where(change => change.Field.Length > 0)
            .Select(change => Placed(change, kind, text)))
            if (change.Line == 0)
                Set(text, kind.AllFields, change, problems);
            else if (kind.Line is not { } line || change.Line > text.Lines.Count + 1)
                problems.Add(new(null, change.Line, change.Field,
                    text.Lines.Count == 0 ? "a field without a line" : $"a line up to {text.Lines.Count + 1}"));
            else
            {
                if (change.Line > text.Lines.Count)
                    text.Lines.Add(new());
                Set(text.Lines[change.Line - 1], line.Fields, change, problems);
            }

        foreach (var gone in changes.Where(change => change.Field.Length == 0).OrderByDescending(change => change.Line))
            if (gone.Line > text.Lines.Count)
                problems.Add(new(null, gone.Line, "", $"a line up to {text.Lines.Count}"));
            else
                text.Lines.RemoveAt(gone.Line - 1);
    }

    /// <summary>
    /// Changes as somebody typed them, each value as a document has it: in the column's unit, with a date in full.
    /// </summary>
    /// <param name="said">The entry as it holds now.</param>
    /// <param name="changes">What was typed.</param>
    /// <param name="typed">The terms of somebody who types.</param>
    /// <param name="problems">What could not be read.</param>
    public static IReadOnlyList<FieldChange> Typed(
        Entry said, IReadOnlyList<FieldChange> changes, ReadingTerms typed, ICollection<FieldProblem> problems)
    {
        var kind = EntryKinds.Of(said);
        var terms = typed with { IsTyped = false };
        var text = EntryWriting.Write(kind, said, terms);
        var read = new List<FieldChange>();
        foreach (var change in changes.Select(change => Placed(change, kind, text)))
        {
            var (fields, within) = change.Line > 0 && kind.Line is { } line
                ? (line.Fields, change.Line <= text.Lines.Count ? text.Lines[change.Line - 1] : new())
                : (kind.AllFields, text);
            var field = Named(fields, change.Field);
            if (field is null || change.Value.Length == 0)
            {
                read.Add(change);
                continue;
            }

            var parsed = field.Notation.ReadBoxed(change.Value, EntryReading.Known(fields, within, terms), typed);
            if (parsed.IsRead)
                read.Add(change with { Value = field.Notation.WriteBoxed(parsed.Value, terms) });
            else
                problems.Add(new(field, change.Line, change.Value, parsed.Accepted));
        }

        return read;
    }

    /// <summary>What stands where a change would say something else; empty for nothing.</summary>
    public static string Value(EntryKind kind, EntryText text, FieldChange change)
    {
        var (fields, within) = change.Line == 0 ? (kind.AllFields, text)
            : (kind.Line?.Fields ?? [], change.Line <= text.Lines.Count ? text.Lines[change.Line - 1] : new());
        return change.Field.Length > 0 && Named(fields, change.Field) is { } field ? within[field] : "";
    }

    /// <summary>The changes that make one version of an entry into another.</summary>
    public static IReadOnlyList<FieldChange> Between(EntryKind kind, EntryText before, EntryText after)
    {
        var changes = Differences(kind.AllFields.Where(field => field != CommonFields.Reference),
            before, after, 0).ToList();
        for (var i = 0; i < after.Lines.Count; i++)
            changes.AddRange(Differences(kind.Line!.Fields, i < before.Lines.Count ? before.Lines[i] : new(),
                after.Lines[i], i + 1));
        for (var i = after.Lines.Count; i < before.Lines.Count; i++)
            changes.Add(new(i + 1, "", ""));
        return changes;
    }

    /// <summary>
    /// What a second telling of an entry says otherwise. What it only leaves out it does not deny, and letters of
    /// either case are the same; other lines take the place of those that were there.
    /// </summary>
    /// <param name="kind">The kind of the entry.</param>
    /// <param name="said">What it says.</param>
    /// <param name="told">What is told of it again.</param>
    /// <param name="denied">The places in which nothing is to stand.</param>
    public static IReadOnlyList<FieldChange> Otherwise(
        EntryKind kind, EntryText said, EntryText told, IReadOnlyList<FieldChange> denied)
    {
        var after = Overlaid(kind.AllFields.Where(field => IsTold(field, kind)), said, told);
        for (var i = 0; i < told.Lines.Count; i++)
            after.Lines.Add(Overlaid(kind.Line!.Fields, i < said.Lines.Count ? said.Lines[i] : new(), told.Lines[i]));
        if (told.Lines.Count == 0)
            foreach (var line in said.Lines)
                after.Lines.Add(line);
        foreach (var field in kind.AllFields.Where(field => !IsTold(field, kind)))
            after[field] = said[field];
        foreach (var place in denied)
            (place.Line == 0 ? after : after.Lines[place.Line - 1])[place.Field] = "";
        return Between(kind, said, after);
    }

    /// <summary>
    /// An answer to what was asked is no part of what is told, nor a place in the day, nor the day of a definition,
    /// which a file need not name.
    /// </summary>
    private static bool IsTold(Field field, EntryKind kind) =>
        field != CommonFields.Anyway && field != CommonFields.Before
            && field != CommonFields.Reference && (field != CommonFields.Date || kind.IsDated);

    private static EntryText Overlaid(IEnumerable<Field> fields, EntryText said, EntryText told)
    {
        var text = new EntryText();
        foreach (var field in fields)
            text[field] = told[field].Length == 0 || told[field].Equals(said[field], StringComparison.OrdinalIgnoreCase)
                ? said[field]
                : told[field];
        return text;
    }

    private static IEnumerable<FieldChange> Differences(IEnumerable<Field> fields, EntryText before,
        EntryText after, int line) =>
        fields.Where(field => before[field] != after[field])
            .Select(field => new FieldChange(line, field.Name, after[field]));

    /// <summary>A field of the only line needs no line's number.</summary>
    private static FieldChange Placed(FieldChange change, EntryKind kind, EntryText text) =>
        change.Line == 0 && Named(kind.AllFields, change.Field) is null && text.Lines.Count == 1
            && kind.Line is { } line
            && Named(line.Fields, change.Field) is not null ? change with { Line = 1 } : change;

    private static Field? Named(IEnumerable<Field> fields, string name) => fields.FirstOrDefault(field =>
        field.Name.Equals(name, StringComparison.OrdinalIgnoreCase)
            || field.JsonName.Equals(name, StringComparison.OrdinalIgnoreCase));

    private static void Set(EntryText text, IReadOnlyList<Field> fields, FieldChange change,
        ICollection<FieldProblem> problems)
    {
        var named = Named(fields, change.Field);
        if (named is null || named == CommonFields.Reference)
            problems.Add(new(
                null, change.Line, change.Field,
                "one of the fields "
                    + $"{string.Join(", ", fields.Where(field => field != CommonFields.Reference)
                        .Select(field => field.Name))}"));
        else
            text[named] = change.Value;
    }
}
