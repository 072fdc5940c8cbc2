namespace Ledger.App.Output;

/// <summary>Breaks sentences into lines between words.</summary>
internal static class Prose
{
    /// <summary>The lines of a text; a word that is longer than a line stands alone. Always at least one line.</summary>
    public static IEnumerable<string> Wrap(string text, int width)
    {
        var line = "";
        foreach (var word in text.ReplaceLineEndings(" ").Split(' '))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > width)
            {
                yield return line;
                line = word;
            }
            else
                line = line.Length == 0 ? word : $"{line} {word}";
        }

        yield return line;
    }

    /// <summary>Writes a text, each line behind an indent.</summary>
    public static void WriteProse(this TextWriter output, string text, int width, string indent = "")
    {
        foreach (var line in Wrap(text, width - indent.Length))
            output.WriteLine(indent + line);
    }
}
