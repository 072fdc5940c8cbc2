using System.Diagnostics.CodeAnalysis;

namespace Ledger.App.Values;

/// <summary>A line of words with an optional note behind a colon and a blank, taken word by word.</summary>
internal sealed class Phrase
{
    private readonly string _text;
    private readonly Queue<string> _words;

    public Phrase(string text)
    {
        _text = text;
        var colon = NoteAt(text);
        Note = colon < 0 ? "" : text[(colon + 1)..].Trim();
        _words = new((colon < 0 ? text : text[..colon]).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }

    /// <summary>What stands behind the colon.</summary>
    public string Note { get; }

    public bool TryTake([NotNullWhen(true)] out string? word) => _words.TryDequeue(out word);

    /// <summary>The next word, or a refusal that says what is missing.</summary>
    public string Take(string what) =>
        _words.TryDequeue(out var word) ? word : throw new FormatException($"\"{_text}\": {what} is missing");

    /// <summary>A refusal about one of its words.</summary>
    public FormatException Refuse(string why) => new($"\"{_text}\": {why}");

    /// <summary>A colon inside a word belongs to it (1:39); one at its end starts the note.</summary>
    private static int NoteAt(string text)
    {
        for (var i = 0; i < text.Length; i++)
            if (text[i] == ':' && (i + 1 == text.Length || char.IsWhiteSpace(text[i + 1])))
                return i;
        return -1;
    }
}
