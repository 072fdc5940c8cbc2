namespace Ledger.App.Wiring;

/// <summary>
/// The texts of the help on a narrow terminal. They are written for 80 columns, a line of them being a line that is
/// full or meant to end.
/// </summary>
internal static class HelpText
{
    private const int Full = 60;

    /// <summary>The text, no line wider than a width; as it is where it fits.</summary>
    public static string Fitted(string text, int width)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        return lines.All(line => line.Length <= width) ? text : string.Join('\n', Joined(lines).SelectMany(line =>
        {
            var indent = line[..(line.Length - line.TrimStart().Length)];
            return Wrapping.Of(line.TrimStart(), width, indent, indent + (indent.Length > 0 ? "  " : ""),
                breaksWords: false);
        }));
    }

    /// <summary>Lines that only went on below because they were full are one again.</summary>
    private static IEnumerable<string> Joined(string[] lines)
    {
        var before = "";
        var full = 0;
        foreach (var line in lines)
        {
            if (full > Full && line.Length > 0 && line[0] != ' ')
                before += $" {line}";
            else
            {
                if (before.Length > 0)
                    yield return before;
                if (line.Length == 0)
                    yield return "";
                before = line;
            }

            full = line.Length;
        }

        if (before.Length > 0)
            yield return before;
    }
}
