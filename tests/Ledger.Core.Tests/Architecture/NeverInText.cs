using System.Text.RegularExpressions;

namespace Ledger.Core.Tests.Architecture;

/// <summary>
/// Turns of phrase that nobody who reads the program should meet: archaic, inverted, or a second name for a thing that
/// has one.
/// </summary>
internal static class NeverInText
{
    private static readonly string[] _phrases =
    [
        "anew", "reckon", "reckoned", "reckons", "reckoning", "begun", "good stock", "has ended",
        "have ended", "takes yet", "stands second", "stand second", "past its date", "reached for first",
        "deserves", "poured out", "pour out", "set aside", "is no whole", "is no film", "is no unit",
        "to the last millionth", "at weight", "mix both", "wrong way round", "residual fixer",
        "speed of your own", "one that is",
    ];

    /// <summary>"Residual silver test" is the right word; alone it is not.</summary>
    private static readonly Regex _search = new(
        $@"\b({string.Join('|', _phrases.Select(phrase => phrase.Replace(" ", @"\s+", StringComparison.Ordinal)))}|(?<!residual\s)silver\s+test)\b",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant);

    /// <summary>The phrases that a text holds, in whatever case, broken over lines or not.</summary>
    public static IEnumerable<string> In(string text) => _search.Matches(text).Select(found => found.Value);
}
