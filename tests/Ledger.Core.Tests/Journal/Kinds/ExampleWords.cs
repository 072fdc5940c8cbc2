using System.Text.RegularExpressions;

namespace Ledger.Core.Tests.Journal.Kinds;

/// <summary>
/// Reads the words of a kind's example by the plainest grammar that the descriptions allow: arguments in order, options
/// by their names, and each line as a phrase of its fields.
/// </summary>
internal static partial class ExampleWords
{
    public static EntryText Read(EntryKind kind)
    {
        var text = new EntryText();
        var words = new Queue<string>(Word().Matches(kind.Example).Select(match => match.Value.Trim('"')));
        var arguments = new Queue<Field>(kind.Fields.Where(field => field.IsArgument));
        while (words.TryDequeue(out var word))
            if (kind.Line is { } line && word == line.Option)
                while (words.TryPeek(out var next) && !next.StartsWith("--", StringComparison.Ordinal))
                    text.Lines.Add(Phrase(line, words.Dequeue()));
            else if (kind.AllFields.FirstOrDefault(field => field.Option == word) is { } field)
                text[field] = field.Notation.Shape == Shape.Tick ? "yes" : words.Dequeue();
            else if (arguments.TryPeek(out var argument) && argument.Notation.Divider is { } divider)
                text[argument] += (text[argument].Length > 0 ? divider : "") + word;
            else
                text[arguments.Dequeue()] = word;
        return text;
    }

    /// <summary>
    /// Words by their keyword, or by the first field without one that reads them; of several words of a choice the
    /// most.
    /// </summary>
    private static EntryText Phrase(LineKind line, string phrase)
    {
        var (text, read) = (new EntryText(), new FieldValues());
        var words = phrase.Split(' ').ToList();
        while (words.Count > 0)
        {
            var keyed = line.Fields.Where(field => text[field].Length == 0 && field.Keyword == words[0]).ToList();
            if (keyed.Count > 0)
                words.RemoveAt(0);
            var open = keyed.Count > 0
                ? keyed
                : line.Fields.Where(field => text[field].Length == 0
                    && (field.Keyword is null || field.MayLackKeyword));
            var (taken,
                count) = open.SelectMany(field => Enumerable.Range(1, field.Notation.Words.Count > 0 ? 3 : 1).Reverse()
                    .Where(count => count <= words.Count).Select(count => (Field: field, Count: count)))
                .First(one => one.Field.Notation.ReadBoxed(string.Join(' ', words.Take(one.Count)),
                    read, Said.Terms).IsRead);
            text[taken] = string.Join(' ', words.Take(count));
            read.Put(taken, taken.Notation.ReadBoxed(text[taken], read, Said.Terms).Value);
            words.RemoveRange(0, count);
        }

        return text;
    }

    [GeneratedRegex("\"[^\"]*\"|[^ ]+")]
    private static partial Regex Word();
}
