namespace Ledger.Core.Journal.Kinds;

/// <summary>
/// Words and what each of them means: the accepted names of an enumeration, in the order in which they are offered.
/// </summary>
/// <typeparam name="T">What they mean.</typeparam>
/// <param name="choices">The words.</param>
public sealed class Choices<T>(params (string Word, T Meaning)[] choices)
    where T : notnull
{
    /// <summary>The words.</summary>
    public IReadOnlyList<string> Words { get; } = [.. choices.Select(choice => choice.Word)];

    /// <summary>Reads a word in any case; a blank, a hyphen and an underscore are the same.</summary>
    public Parsed<T> Read(string text)
    {
        foreach (var (word, meaning) in choices)
            if (Plain(word).Equals(Plain(text), StringComparison.OrdinalIgnoreCase))
                return meaning;
        return Parsed.Not<T>(Words.Count == 1 ? Words[0] : $"{string.Join(", ", Words.SkipLast(1))} or {Words[^1]}");
    }

    /// <summary>The word for a meaning.</summary>
    public string Write(T meaning) =>
        choices.First(choice => EqualityComparer<T>.Default.Equals(choice.Meaning, meaning)).Word;

    private static string Plain(string word) => word.Trim().Replace('-', ' ').Replace('_', ' ');
}
