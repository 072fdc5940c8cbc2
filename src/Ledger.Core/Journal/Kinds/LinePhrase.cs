namespace Ledger.Core.Journal.Kinds;

/// <summary>
/// A line of an entry as words: "4 fen80 N 25ml from fen80/3: mill at dawn". Needed fields come first, each by its position; then every word
/// goes to the field that it introduces, or to the first open one that can read it; behind a colon and a blank stands the note.
/// </summary>
public static class LinePhrase
{
    private const string NoteField = "note";

    /// <summary>How a line is written, for help: COUNT FILM [GROUP] [FATE] [from BOX] [: NOTE].</summary>
    public static string Pattern(LineKind kind) => string.Join(' ', kind.Fields.Where(field => field.Name != NoteField).Select(field =>
        field.IsNeeded && field.Keyword is null ? field.Notation.Placeholder
            : $"[{(field.Keyword is { } word ? word + " " : "")}{field.Notation.Placeholder}]"))
        + (kind.Fields.Any(field => field.Name == NoteField) ? " [: NOTE]" : "");

    /// <summary>The texts of the line's fields; a word that fits nowhere is a problem.</summary>
    public static EntryText Read(LineKind kind, string phrase, ReadingTerms terms, ICollection<FieldProblem> problems)
    {
        var text = new EntryText();
        var (words, note) = Split(phrase);
        if (note.Length > 0)
            text[NoteField] = note;
        var at = 0;
        foreach (var field in kind.Fields.Where(field => field.IsNeeded && field.Keyword is null))
            if (at < words.Length)
                text[field] = Take(field, words, ref at);
        while (at < words.Length)
            if (Introduced(kind, words[at]) is { } field && at + 1 < words.Length)
            {
                at++;
                text[field] = Take(field, words, ref at);
            }
            else if (Open(kind, text, words, at, terms) is { } open)
                text[open] = Take(open, words, ref at);
            else
            {
                problems.Add(new(null, 0, words[at], $"a line written as {Pattern(kind)}"));
                break;
            }

        return text;
    }

    private static Field? Introduced(LineKind kind, string word) =>
        kind.Fields.FirstOrDefault(field => field.Keyword is { } keyword && keyword.Equals(word, StringComparison.OrdinalIgnoreCase));

    /// <summary>The first field without a value that can read the word: those with words or figures of their own before any text.</summary>
    private static Field? Open(LineKind kind, EntryText text, string[] words, int at, ReadingTerms terms) => kind.Fields
        .Where(field => field is { IsNeeded: false, Keyword: null } && field.Name != NoteField && text[field].Length == 0)
        .OrderBy(field => field.Notation.Shape == Shape.Text)
        .FirstOrDefault(field => Reads(field, Longest(field, words, at), terms) || Reads(field, words[at], terms));

    private static bool Reads(Field field, string word, ReadingTerms terms) => field.Notation.ReadBoxed(word, new(), terms).IsRead
        && (field.Notation.Shape != Shape.Number || word.Any(char.IsAsciiLetter));

    /// <summary>As many words as the field's value has: "wash aid", "4 sheets".</summary>
    private static string Take(Field field, string[] words, ref int at)
    {
        var longest = Longest(field, words, at);
        at += longest.Count(c => c == ' ') + 1;
        return longest;
    }

    private static string Longest(Field field, string[] words, int at)
    {
        foreach (var name in field.Notation.Words.Where(name => name.Contains(' ', StringComparison.Ordinal)))
        {
            var length = name.Split(' ').Length;
            var found = string.Join(' ', words.Skip(at).Take(length));
            if (found.Equals(name, StringComparison.OrdinalIgnoreCase))
                return found;
        }

        return field.Notation.Shape == Shape.Number && at + 1 < words.Length && char.IsAsciiDigit(words[at][^1])
            && Measures.Measurement.Read($"1{words[at + 1]}", out _) is { Unit: not null }
            ? $"{words[at]} {words[at + 1]}" : words[at];
    }

    private static (string[] Words, string Note) Split(string phrase)
    {
        var colon = -1;
        for (var i = 0; i < phrase.Length && colon < 0; i++)
            if (phrase[i] == ':' && (i + 1 == phrase.Length || char.IsWhiteSpace(phrase[i + 1])))
                colon = i;
        var words = colon < 0 ? phrase : phrase[..colon];
        return (words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries), colon < 0 ? "" : phrase[(colon + 1)..].Trim());
    }
}
