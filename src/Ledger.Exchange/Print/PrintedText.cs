using System.Net;

namespace Ledger.Exchange.Print;

/// <summary>Text on its way to paper: nothing in a name can steer a printer, a terminal or a browser.</summary>
internal static class PrintedText
{
    /// <summary>
    /// The text in one line: line breaks are blanks, and what could steer something is written by its number.
    /// </summary>
    public static string Plain(string text) =>
        UserText.Shown(string.Concat(text.ReplaceLineEndings(" ").Select(c => c == '\t' ? ' ' : c)));

    /// <summary>The text for HTML, where it can be neither markup nor the end of an attribute.</summary>
    public static string Html(string text) => WebUtility.HtmlEncode(Plain(text));
}
