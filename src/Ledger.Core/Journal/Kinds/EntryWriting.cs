using Ledger.Core.Journal.Entries;

namespace Ledger.Core.Journal.Kinds;

/// <summary>Writes an entry as the text of its fields, so that reading it again gives the same entry.</summary>
public static class EntryWriting
{
    /// <summary>The texts of an entry.</summary>
    public static EntryText Write(EntryKind kind, Entry entry, ReadingTerms terms)
    {
        var values = kind.ValuesOf(entry);
        var text = new EntryText();
        Fill(text, kind.AllFields, values, terms);
        if (kind.Line is { } line)
            foreach (var one in values.Lines)
                text.Lines.Add(Line(line, one, terms));
        return text;
    }

    /// <summary>The texts of a line.</summary>
    public static EntryText Line(LineKind kind, object line, ReadingTerms terms)
    {
        var text = new EntryText();
        Fill(text, kind.Fields, kind.ValuesOf(line), terms);
        return text;
    }

    /// <summary>The text of one field's value; empty when it was not said.</summary>
    public static string Text(this FieldValues values, Field field, ReadingTerms terms) =>
        values.Boxed(field) is { } value ? field.Notation.WriteBoxed(value, terms) : "";

    private static void Fill(EntryText text, IReadOnlyList<Field> fields, FieldValues values, ReadingTerms terms)
    {
        foreach (var field in fields)
            text[field] = values.Text(field, terms);
    }
}
