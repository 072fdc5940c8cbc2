using Ledger.Core.Journal.Entries;

namespace Ledger.Core.Journal.Kinds;

/// <summary>What an entry says once it was put right, and what is different between two versions of it.</summary>
public static class Amending
{
    /// <summary>Puts the changes into the texts of an entry.</summary>
    /// <param name="kind">The kind of the entry that is put right.</param>
    /// <param name="text">Its texts; they are changed.</param>
    /// <param name="changes">What is to be said.</param>
    /// <param name="problems">What is no field of the kind.</param>
    public static void Apply(EntryKind kind, EntryText text, IReadOnlyList<FieldChange> changes, ICollection<FieldProblem> problems)
    {
        foreach (var change in changes.Where(change => change.Field.Length > 0))
            if (change.Line == 0)
                Set(text, kind.AllFields, change, problems);
            else if (kind.Line is not { } line || change.Line > text.Lines.Count + 1)
                problems.Add(new(null, change.Line, change.Field, text.Lines.Count == 0 ? "a field without a line" : $"a line up to {text.Lines.Count + 1}"));
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

    /// <summary>The changes that make one version of an entry into another.</summary>
    public static IReadOnlyList<FieldChange> Between(EntryKind kind, EntryText before, EntryText after)
    {
        var changes = Differences(kind.AllFields.Where(field => field != CommonFields.Reference), before, after, 0).ToList();
        for (var i = 0; i < after.Lines.Count; i++)
            changes.AddRange(Differences(kind.Line!.Fields, i < before.Lines.Count ? before.Lines[i] : new(), after.Lines[i], i + 1));
        for (var i = after.Lines.Count; i < before.Lines.Count; i++)
            changes.Add(new(i + 1, "", ""));
        return changes;
    }

    private static IEnumerable<FieldChange> Differences(IEnumerable<Field> fields, EntryText before, EntryText after, int line) =>
        fields.Where(field => before[field] != after[field]).Select(field => new FieldChange(line, field.Name, after[field]));

    private static void Set(EntryText text, IReadOnlyList<Field> fields, FieldChange change, ICollection<FieldProblem> problems)
    {
        var named = fields.FirstOrDefault(field =>
            field.Name.Equals(change.Field, StringComparison.OrdinalIgnoreCase) || field.JsonName.Equals(change.Field, StringComparison.OrdinalIgnoreCase));
        if (named is null || named == CommonFields.Reference)
            problems.Add(new(
                null, change.Line, change.Field,
                $"one of the fields {string.Join(", ", fields.Where(field => field != CommonFields.Reference).Select(field => field.Name))}"));
        else
            text[named] = change.Value;
    }
}
