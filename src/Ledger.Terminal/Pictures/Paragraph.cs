namespace Ledger.Terminal.Pictures;

/// <summary>Breaks text into lines at blanks; the lines after the first can be set in.</summary>
internal static class Paragraph
{
    /// <summary>The lines of <paramref name="text"/>, none wider than <paramref name="width"/>; blanks at its beginning are kept.</summary>
    public static IEnumerable<string> Of(string text, int width, int indent = 0)
    {
        width = Math.Max(width, indent + 8);
        var words = text.TrimStart(' ');
        var line = new string(' ', Math.Min(text.Length - words.Length, width / 2));
        var isEmpty = true;
        var room = width - Math.Max(indent, line.Length);
        foreach (var word in words.Split(' ').SelectMany(word => Pieces(word, room)))
        {
            if (!isEmpty && line.Length + 1 + word.Length > width)
            {
                yield return line.TrimEnd();
                (line, isEmpty) = (new string(' ', indent), true);
            }

            line = isEmpty ? line + word : $"{line} {word}";
            isEmpty = false;
        }

        yield return line.TrimEnd();
    }

    /// <summary>A label in its own column and the text broken beside it.</summary>
    public static IEnumerable<string> Of(string label, string text, int width, int labels) =>
        Of(text, Math.Max(8, width - labels)).Select((line, i) => (i == 0 ? label : "").PadRight(labels) + line);

    private static IEnumerable<string> Pieces(string word, int width) =>
        word.Length <= width ? [word] : word.Chunk(Math.Max(1, width)).Select(piece => new string(piece));
}
