namespace Ledger.Core.Journal.Kinds;

/// <summary>
/// A line of an entry as words: "4 fen80 N 25ml from fen80/3: mill at dawn". Needed fields come first, each by its
/// position; then a word goes to the field that it introduces, or to the first open one that can read it; behind a
/// colon and a blank stands the line's note.
/// </summary>
public sealed class LinePhrase
{
    private const string Colon = ":";

    /// <summary>No name and no figure: only a field that takes any text reads it.</summary>
    private const string Anything = "qqq qqq";

    private readonly LineKind _kind;
    private readonly ReadingTerms _terms;
    private readonly string[] _words;
    private readonly EntryText _text = new();
    private readonly FieldValues _read = new();
    private int _at;

    private LinePhrase(LineKind kind, string words, ReadingTerms terms) =>
        (_kind, _terms, _words) = (kind, terms, words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    /// <summary>How a line is written, for help: COUNT FILM [FATE] [group GROUP] [from BOX] [: NOTE].</summary>
    public static string Pattern(LineKind kind) =>
        string.Join(' ', kind.Fields.GroupBy(field => field.Keyword ?? field.Name).Select(group =>
        {
            var field = group.First();
            var value = string.Join('|', group.Select(one => one.Notation.Placeholder).Distinct());
            return IsPositional(field) ? value
                : field.Keyword is { } word && !field.MayLackKeyword ? $"[{word} {value}]" : $"[{value}]";
        }));

    /// <summary>The texts of the line's fields. A word that fits nowhere is a problem.</summary>
    public static EntryText Read(LineKind kind, string phrase, ReadingTerms terms, ICollection<FieldProblem> problems)
    {
        var colon = ColonAt(phrase);
        var line = new LinePhrase(kind, colon < 0 ? phrase : phrase[..colon], terms);
        if (colon >= 0 && kind.Fields.FirstOrDefault(field => field.Keyword == Colon) is { } note)
            line._text[note] = phrase[(colon + 1)..].Trim();
        if (line.Misplaced() is { } word)
            problems.Add(new(null, 0, word, $"a line written as {Pattern(kind)}"));
        return line._text;
    }

    /// <summary>A line as the words that are read as the same line.</summary>
    public static string Write(LineKind kind, EntryText line)
    {
        var words = new List<string>();
        foreach (var field in kind.Fields.Where(field => line[field].Length > 0 && field.Keyword != Colon)
            .OrderBy(field => !IsPositional(field)))
            words.Add(IsPositional(field) || field.Keyword is null ? line[field] : $"{field.Keyword} {line[field]}");
        var note = kind.Fields.FirstOrDefault(field => field.Keyword == Colon) is { } noted && line[noted].Length > 0
            ? $" : {line[noted]}"
            : "";
        return string.Join(' ', words) + note;
    }

    /// <summary>
    /// What may stand behind the words of a line that is being written: the names and words of the field whose turn it
    /// is, and from there on those of all that are open, with the words that introduce them. Nothing where the words so
    /// far fit nowhere, or where the note has begun.
    /// </summary>
    public static IReadOnlyList<string> Next(LineKind kind, string begun, ReadingTerms terms, Holdings holdings)
    {
        if (ColonAt(begun) >= 0)
            return [];
        var words = new LinePhrase(kind, begun, terms);
        if (words._words is [.. var before, var last])
        {
            var line = new LinePhrase(kind, string.Join(' ', before), terms);
            if (line.Introduced(last) is { Count: > 0 } introduced)
                return [.. introduced.SelectMany(one => line.Choices(one, holdings)).Distinct()];
        }

        return words.Misplaced() is null ? [.. words.Following(holdings)] : [];
    }

    /// <summary>The fields that a word introduces behind the words of the line.</summary>
    private List<Field> Introduced(string word) => Misplaced() is not null || Awaited is not null ? []
        : [.. _kind.Fields.Where(field => IsOpen(field) && Introduces(field, word))];

    /// <summary>The needed field whose place comes next.</summary>
    private Field? Awaited => _kind.Fields.FirstOrDefault(
        one => IsPositional(one) && one.IsNeeded && IsOpen(one));

    private IEnumerable<string> Following(Holdings holdings) => Awaited is { } field ? Choices(field, holdings)
        : _kind.Fields.Where(IsOpen).SelectMany(open => open.Keyword is not { } keyword ? Choices(open, holdings)
            : open.MayLackKeyword ? Choices(open, holdings).Append(keyword)
            : [keyword]).Distinct();

    private IEnumerable<string> Choices(Field field, Holdings holdings) =>
        field.Notation.Words.Concat(field.Choices?.Invoke(_read, holdings) ?? []);

    /// <summary>Gives every word to a field, and names the first that fits none.</summary>
    private string? Misplaced()
    {
        foreach (var field in _kind.Fields.Where(IsPositional))
            if (_at < _words.Length && (field.IsNeeded || Stands(field)))
                Take(field, Longest(field, _at));

        while (_at < _words.Length)
        {
            var introduced = _kind.Fields.Where(field => IsOpen(field) && Introduces(field, _words[_at])).ToList();
            if (introduced.Count > 0 && _at + 1 < _words.Length)
            {
                _at++;
                var (field, value) = Value(introduced, _at);
                Take(field, value);
            }
            else if (Unintroduced() is { } open)
                Take(open, Longest(open, _at));
            else
                return _words[_at];
        }

        return null;
    }

    /// <summary>Whether a field that need not be said stands in its place all the same.</summary>
    private bool Stands(Field field) => _at < _words.Length && Reads(field, Longest(field, _at));

    /// <summary>
    /// The first open field that reads the next word without its keyword: those that take any text come last.
    /// </summary>
    private Field? Unintroduced() => _kind.Fields
        .Where(field => IsOpen(field) && (field.Keyword is null || field.MayLackKeyword))
        .OrderBy(field => Reads(field, Anything))
        .FirstOrDefault(field => Reads(field, Longest(field, _at))
            && (!IsMeasured(field) || Longest(field, _at).Any(char.IsAsciiLetter)));

    /// <summary>
    /// What follows a keyword, for the first of the fields that can read it: as many words as come before another
    /// keyword, or before a word that an open field knows as its own; fewer where the field cannot read them all.
    /// </summary>
    private (Field Field, string Value) Value(List<Field> introduced, int from)
    {
        var to = from + 1;
        while (to < _words.Length
            && !_kind.Fields.Any(field => Introduces(field, _words[to]) || (IsOpen(field) && IsOwn(field, to))))
            to++;
        for (var end = to; end > from; end--)
            if (string.Join(' ', _words[from..end]) is var value
                && introduced.Find(field => Reads(field, value)) is { } field)
                return (field, value);
        return (introduced[0], Longest(introduced[0], from));
    }

    private bool IsOwn(Field field, int at) =>
        (field.Keyword is null || field.MayLackKeyword) && !Reads(field, Anything)
            && Reads(field, Longest(field, at)) && (!IsMeasured(field) || Longest(field, at).Any(char.IsAsciiLetter));

    private void Take(Field field, string value)
    {
        _text[field] = value;
        var parsed = field.Notation.ReadBoxed(value, _read, _terms);
        if (parsed.IsRead)
            _read.Put(field, parsed.Value);
        _at += value.Count(c => c == ' ') + 1;
    }

    /// <summary>As many words as the field's value has: "wash aid", "4 sheets".</summary>
    private string Longest(Field field, int at)
    {
        foreach (var name in field.Notation.Words.Where(name => name.Contains(' ', StringComparison.Ordinal)))
            if (string.Join(' ', _words.Skip(at).Take(name.Split(' ').Length)) is var found
                && found.Equals(name, StringComparison.OrdinalIgnoreCase))
                return found;
        return IsMeasured(field) && at + 1 < _words.Length && char.IsAsciiDigit(_words[at][^1])
            && Measures.Measurement.Read($"1{_words[at + 1]}", out _) is { Unit: not null }
            ? $"{_words[at]} {_words[at + 1]}" : _words[at];
    }

    private bool IsOpen(Field field) => field.Keyword != Colon && _text[field].Length == 0;

    private bool Reads(Field field, string text) => field.Notation.ReadBoxed(text, _read, _terms).IsRead;

    /// <summary>Whether its value may have a unit: a bare number is then no sign of it.</summary>
    private static bool IsMeasured(Field field) => field.Notation.HasUnit;

    /// <summary>Whether it stands in a place of its own at the beginning.</summary>
    private static bool IsPositional(Field field) => (field.IsNeeded && field.Keyword is null) || field.IsArgument;

    private static bool Introduces(Field field, string word) =>
        field.Keyword is { } keyword && keyword.Equals(word, StringComparison.OrdinalIgnoreCase);

    private static int ColonAt(string phrase)
    {
        for (var i = 0; i < phrase.Length; i++)
            if (phrase[i] == ':' && (i + 1 == phrase.Length || char.IsWhiteSpace(phrase[i + 1])))
                return i;
        return -1;
    }
}
