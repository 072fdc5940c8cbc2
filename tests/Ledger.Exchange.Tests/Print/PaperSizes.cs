using System.Globalization;
using System.Text.RegularExpressions;

namespace Ledger.Exchange.Tests.Print;

/// <summary>Reads sizes out of a page's own style sheet, so that geometry is checked without a browser.</summary>
internal static class PaperSizes
{
    public const double PointMillimetres = 25.4 / 72;

    /// <summary>What a selector's own rule says; the rule must be there.</summary>
    public static string RuleOf(string html, string selector)
    {
        var rule = Regex.Match(html, $@"(?:^|[}}\n])\s*{Regex.Escape(selector)}\s*\{{([^}}]*)\}}");
        Assert.True(rule.Success, $"there is no rule for {selector}");
        return rule.Groups[1].Value;
    }

    /// <summary>A size that a rule says: in points for letters, in millimetres for lengths, bare for line heights.</summary>
    public static double SizeIn(string html, string selector, string property)
    {
        var size = Regex.Match(RuleOf(html, selector), $@"(?:^|[;\s]){Regex.Escape(property)}:\s*([0-9.]+)(pt|mm)?");
        Assert.True(size.Success, $"{selector} says no {property}");
        return double.Parse(size.Groups[1].Value, CultureInfo.InvariantCulture);
    }
}
