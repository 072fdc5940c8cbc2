namespace Ledger.Terminal.Pictures;

/// <summary>Breaks text into lines at blanks; the lines after the first can be set in.</summary>
internal static class Paragraph
{
    /// <summary>
    /// The lines of <paramref name="text"/>, none wider than <paramref name="width"/>; blanks at its beginning are
    /// kept.
    /// </summary>
    public static IEnumerable<string> Of(string text, int width, int indent = 0)
    {
        width = Math.Max(width, indent + 8);
        var words = text.TrimStart(' ');
        return Wrapping.Of(words, width, new string(' ', Math.Min(text.Length - words.Length, width / 2)),
            new string(' ', indent));
    }

    /// <summary>A label in its own column and the text broken beside it.</summary>
    public static IEnumerable<string> Of(string label, string text, int width, int labels) =>
        Of(text, Math.Max(8, width - labels)).Select((line, i) => (i == 0 ? label : "").PadRight(labels) + line);
}
