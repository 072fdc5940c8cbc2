using System.Text.RegularExpressions;

namespace Ledger.Exchange.Tests.Print;

/// <summary>Reads sizes out of a page's own style sheet, so that geometry is checked without a browser.</summary>
internal static class PaperSizes
{
    public const double PointMillimetres = 25.4 / 72;

    /// <summary>What a selector's own rules say, in order; there must be one.</summary>
    public static string RuleOf(string html, string selector)
    {
        var rules = Regex.Matches(html, $@"(?<=[}}\n]\s*){Regex.Escape(selector)}\s*\{{([^}}]*)\}}");
        Assert.True(rules.Count > 0, $"there is no rule for {selector}");
        return string.Join("; ", rules.Select(rule => rule.Groups[1].Value));
    }

    /// <summary>
    /// A size that the last rule to name it says: in points for letters, in millimetres for lengths, bare for line
    /// heights.
    /// </summary>
    public static double SizeIn(string html, string selector, string property)
    {
        var sizes = Regex.Matches(RuleOf(html, selector), $@"(?:^|[;\s]){Regex.Escape(property)}:\s*([0-9.]+)(pt|mm)?");
        Assert.True(sizes.Count > 0, $"{selector} says no {property}");
        return double.Parse(sizes[^1].Groups[1].Value, CultureInfo.InvariantCulture);
    }
}
