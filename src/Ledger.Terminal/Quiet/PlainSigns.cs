using System.Collections.Concurrent;
using Terminal.Gui.Drawing;
using Terminal.Gui.Text;

namespace Ledger.Terminal.Quiet;

/// <summary>
/// Signs that are one column broad and join no other: letters of Latin scripts, digits, marks, lines and blocks. What
/// is known of each is asked of the library once; for a whole picture, asking for every place is most of the work.
/// </summary>
internal static class PlainSigns
{
    private const char AfterLatin = '\u0300', FirstMark = '\u2010', AfterMarks = '\u27C0';

    private static readonly ConcurrentDictionary<char, Cell?> _cells = new();

    /// <summary>Whether it is one of them alone.</summary>
    public static bool Is(string text) => text.Length == 1 && CellOf(text[0]) is not null;

    /// <summary>A place of the screen with the sign, without colours; null for a sign that is none of them.</summary>
    public static Cell? CellOf(char sign) =>
        sign is < AfterLatin or (>= FirstMark and < AfterMarks) ? _cells.GetOrAdd(sign, Ask) : null;

    private static Cell? Ask(char sign)
    {
        var text = sign.ToString();
        return text.GetColumns() == 1 && text.MakePrintable() == text ? new Cell { Grapheme = text } : null;
    }
}
