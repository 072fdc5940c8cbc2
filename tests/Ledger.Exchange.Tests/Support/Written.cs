using Ledger.Exchange.Print;

namespace Ledger.Exchange.Tests.Support;

/// <summary>A page as it is written.</summary>
internal static class Written
{
    public static string Html(PrintedPage page) => As(page, HtmlPage.Write);

    public static string Plain(PrintedPage page) => As(page, PlainPage.Write);

    private static string As(PrintedPage page, Action<PrintedPage, TextWriter> write)
    {
        using var text = new StringWriter { NewLine = "\n" };
        write(page, text);
        return text.ToString();
    }
}
