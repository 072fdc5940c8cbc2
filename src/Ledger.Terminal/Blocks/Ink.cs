using Ledger.Terminal.Themes;
using Terminal.Gui.Drawing;

namespace Ledger.Terminal.Blocks;

/// <summary>How the parts of a line look: pictures by their signs, what needs the user by its mark.</summary>
internal static class Ink
{
    private const string OfPictures = "▏▎▍▌▋▊▉█▁▂▃▄▅▆▇░╌●▲│└─━·#";

    /// <summary>The line in parts, each with where it begins and how it looks.</summary>
    public static IEnumerable<(string Text, int At, VisualRole Role)> Parts(string line)
    {
        if (Style.Marked(line.TrimStart()) is { } marked)
        {
            yield return (line, 0, marked);
            yield break;
        }

        for (var at = 0; at < line.Length;)
        {
            var isPicture = OfPictures.Contains(line[at], StringComparison.Ordinal);
            var end = at;
            while (end < line.Length && OfPictures.Contains(line[end], StringComparison.Ordinal) == isPicture)
                end++;
            yield return (line[at..end], at, isPicture ? Style.Picture : Style.Text);
            at = end;
        }
    }
}
