using System.Globalization;
using System.Net;

namespace Ledger.Exchange.Print;

/// <summary>Text on its way to paper: nothing in a name can steer a printer, a terminal or a browser.</summary>
internal static class PrintedText
{
    /// <summary>The text without characters that cannot be seen: controls, line breaks, changes of direction.</summary>
    public static string Plain(string text) => string.Concat(text.Select(c => IsSeen(c) ? c : ' '));

    /// <summary>The text for HTML, where it can be neither markup nor the end of an attribute.</summary>
    public static string Html(string text) => WebUtility.HtmlEncode(Plain(text));

    private static bool IsSeen(char c) => char.GetUnicodeCategory(c) is not (
        UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator);
}
