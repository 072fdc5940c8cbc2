namespace Ledger.Terminal.Finder;

/// <summary>
/// How well a few typed letters fit what can be found: each typed word must be found somewhere, the name counts most.
/// </summary>
internal static class WordMatch
{
    private static readonly char[] Gaps = [' ', ',', ';', ':', '.', '(', ')', '-', '/'];

    /// <summary>How far off the typed words are, 0 for the nearest; null when one of them is not in it.</summary>
    public static int? Of(string typed, Finding finding)
    {
        var sum = 0;
        foreach (var word in typed.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (Of(word, finding.Name, finding.Place, $"{finding.FindBy} {finding.Meaning}") is not { } distance)
                return null;
            sum += distance;
        }

        return sum;
    }

    private static int? Of(string word, string name, string place, string about) => word switch
    {
        _ when name.Equals(word, StringComparison.OrdinalIgnoreCase) => 0,
        _ when name.StartsWith(word, StringComparison.OrdinalIgnoreCase) => 1,
        _ when BeginsAWord(name, word) => 2,
        _ when BeginsAWord(place, word) => 3,
        _ when BeginsAWord(about, word) => 4,
        _ when name.Contains(word, StringComparison.OrdinalIgnoreCase) => 5,
        _ when IsWithin(name, word) => 6,
        _ => null,
    };

    private static bool BeginsAWord(string text, string word)
    {
        var at = -1;
        while ((at = text.IndexOf(word, at + 1, StringComparison.OrdinalIgnoreCase)) >= 0)
            if (at == 0 || Gaps.Contains(text[at - 1]))
                return true;
        return false;
    }

    /// <summary>Whether the letters stand in the text in their order, from its first letter on.</summary>
    private static bool IsWithin(string text, string letters)
    {
        if (text.Length == 0 || char.ToLowerInvariant(text[0]) != char.ToLowerInvariant(letters[0]))
            return false;
        var at = 0;
        foreach (var letter in text)
            if (at < letters.Length && char.ToLowerInvariant(letter) == char.ToLowerInvariant(letters[at]))
                at++;
        return at == letters.Length;
    }
}
