using System.Globalization;

namespace Ledger.Terminal.Forms;

/// <summary>Numbers as they are typed, in the invariant culture.</summary>
internal static class TypedNumber
{
    private const NumberStyles Style = NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign;

    private const decimal Most = 1_000_000_000;

    /// <summary>The number, or null when the text is none. A decimal comma is not guessed at: 1,250 could be either.</summary>
    public static decimal? Parse(string text) =>
        decimal.TryParse(text.Trim(), Style, CultureInfo.InvariantCulture, out var figure) && Math.Abs(figure) < Most ? figure : null;
}
