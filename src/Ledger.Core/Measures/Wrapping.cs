namespace Ledger.Core.Measures;

/// <summary>Breaks text into lines at blanks.</summary>
public static class Wrapping
{
    /// <summary>The lines of a text, at least one; blanks at a line's end are left out.</summary>
    /// <param name="text">The text.</param>
    /// <param name="width">How wide a line may be.</param>
    /// <param name="lead">What stands before the first line.</param>
    /// <param name="further">What stands before the others.</param>
    /// <param name="breaksWords">Whether a word that is longer than a line is broken; otherwise it stands alone on a
    /// longer line, as a path must.</param>
    public static IEnumerable<string> Of(string text, int width, string lead = "", string further = "",
        bool breaksWords = true)
    {
        var room = Math.Max(1, width - Math.Max(lead.Length, further.Length));
        var (line, isEmpty) = (lead, true);
        foreach (var word in text.Split(' ').SelectMany(word => breaksWords ? Pieces(word, room) : [word]))
        {
            if (!isEmpty && line.Length + 1 + word.Length > width)
            {
                yield return line.TrimEnd();
                (line, isEmpty) = (further, true);
            }

            line = isEmpty ? line + word : $"{line} {word}";
            isEmpty = false;
        }

        yield return line.TrimEnd();
    }

    private static IEnumerable<string> Pieces(string word, int width) =>
        word.Length <= width ? [word] : word.Chunk(width).Select(piece => new string(piece));
}
