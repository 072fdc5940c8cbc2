using System.Text;
using Ledger.App.Commands.Files;
using Ledger.Exchange.Print;

namespace Ledger.App.Commands.Print;

/// <summary>
/// Puts a page into a file beside the open ledger, which appears under its name only when it is whole.
/// </summary>
internal static class PageFile
{
    /// <summary>One HTML file for a browser to print.</summary>
    public static void WriteHtml(PrintedPage page, string ledger, string path) =>
        Write(ledger, path, text => HtmlPage.Write(page, text));

    /// <summary>Plain text for any printer.</summary>
    public static void WritePlain(PrintedPage page, string ledger, string path) =>
        Write(ledger, path, text => PlainPage.Write(page, text));

    private static void Write(string ledger, string path, Action<TextWriter> write) =>
        WholeFile.Write(ledger, path, file =>
        {
            using var text = new StreamWriter(file, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
            write(text);
        });
}
