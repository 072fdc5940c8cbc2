using Ledger.Core.Journal.Entries;

namespace Ledger.Core.Journal.Kinds;

/// <summary>Reads what a door was given into an entry, or lists everything in it that could not be read.</summary>
public sealed class EntryReading
{
    private readonly ReadingTerms _terms;
    private readonly List<FieldProblem> _problems = [];

    private EntryReading(ReadingTerms terms) => _terms = terms;

    /// <summary>The entry; null when anything could not be read.</summary>
    public Entry? Entry { get; private init; }

    /// <summary>What was read, as far as it could be.</summary>
    public FieldValues Values { get; private init; } = new();

    /// <summary>What could not be read.</summary>
    public IReadOnlyList<FieldProblem> Problems { get; private init; } = [];

    /// <summary>Reads an entry.</summary>
    /// <param name="kind">Its kind.</param>
    /// <param name="text">What was given. An empty date is today; the door gives a reference, its own where the user
    /// gave none.</param>
    /// <param name="terms">What the reading needs to know.</param>
    public static EntryReading Read(EntryKind kind, EntryText text, ReadingTerms terms)
    {
        var reading = new EntryReading(terms);
        var values = reading.Fields(kind.AllFields, text, line: 0);
        if (kind.ReferenceField is { } named && !values.Has(named) && text[CommonFields.Reference].Length > 0)
            values.Put(named, text[CommonFields.Reference]);
        if (text.Key.Length > 0)
            values.Put(CommonFields.Reference, text.Key);
        var isTyped = terms.IsTyped && values.Has(CommonFields.Date);
        if (!values.Has(CommonFields.Date))
            values.Put(CommonFields.Date, terms.Today);
        if (kind.Line is { } line)
            reading.Lines(line, text, values);
        return reading._problems.Count > 0
            ? new(terms) { Values = values, Problems = reading._problems }
            : new(terms) { Values = values, Entry = kind.Make(values) with { IsTyped = isTyped } };
    }

    /// <summary>Reads a line alone; null, and what could not be read, when anything could not.</summary>
    public static object? Line(LineKind kind, EntryText text, ReadingTerms terms, ICollection<FieldProblem> problems)
    {
        var reading = new EntryReading(terms);
        var values = reading.Fields(kind.Fields, text, line: 0);
        foreach (var problem in reading._problems)
            problems.Add(problem);
        return reading._problems.Count == 0 ? kind.Make(values) : null;
    }

    /// <summary>The values of fields as far as they can be read: what a form knows while it is filled in.</summary>
    /// <param name="fields">The fields of an entry or of a line.</param>
    /// <param name="text">What was given.</param>
    /// <param name="terms">What the reading needs to know.</param>
    public static FieldValues Known(IReadOnlyList<Field> fields, EntryText text, ReadingTerms terms) =>
        new EntryReading(terms).Fields(fields, text, line: 0);

    private void Lines(LineKind kind, EntryText text, FieldValues values)
    {
        var lines = new List<object>();
        for (var i = 0; i < text.Lines.Count; i++)
        {
            var before = _problems.Count;
            var read = Fields(kind.Fields, text.Lines[i], text.Lines.Count > 1 ? i + 1 : 0);
            if (_problems.Count == before)
                lines.Add(kind.Make(read));
        }

        if (text.Lines.Count == 0 && kind.IsNeeded)
            _problems.Add(new(null, 0, "", $"one line at least: {kind.Help}") { Lines = kind });
        values.Lines = lines;
    }

    private FieldValues Fields(IReadOnlyList<Field> fields, EntryText text, int line)
    {
        var values = new FieldValues();
        foreach (var field in fields)
        {
            var found = text[field].Trim();
            if (found.Length > 0)
            {
                var parsed = field.Notation.ReadBoxed(found, values, _terms);
                if (parsed.IsRead)
                    values.Put(field, parsed.Value);
                else
                    _problems.Add(new(field, line, found, parsed.Accepted));
            }
            else if (field.IsNeeded)
                _problems.Add(new(field, line, "", field.Help));
        }

        return values;
    }
}
