namespace Ledger.Tests;

/// <summary>What the README shows to be typed, so that a test can type it.</summary>
internal static class Readme
{
    /// <summary>The indented blocks of a section, each with its lines, in order.</summary>
    /// <exception cref="InvalidOperationException">There is no such section.</exception>
    public static IReadOnlyList<IReadOnlyList<string>> Blocks(string section)
    {
        var lines = File.ReadAllLines(Find(AppContext.BaseDirectory));
        var from = Array.IndexOf(lines, $"## {section}");
        if (from < 0)
            throw new InvalidOperationException($"the README has no section {section}");
        var blocks = new List<List<string>>();
        var isInside = false;
        foreach (var line in lines.Skip(from + 1).TakeWhile(line => !line.StartsWith("## ", StringComparison.Ordinal)))
        {
            if (!isInside && line.StartsWith("    ", StringComparison.Ordinal))
                blocks.Add([]);
            isInside = line.StartsWith("    ", StringComparison.Ordinal);
            if (isInside)
                blocks[^1].Add(line.Trim());
        }

        return blocks;
    }

    /// <summary>
    /// The picture of a screen before the first section, line by line without what it is indented by.
    /// </summary>
    public static IReadOnlyList<string> Picture() =>
    [
        .. File.ReadLines(Find(AppContext.BaseDirectory))
            .SkipWhile(line => !line.EndsWith("(Ctrl+Q leaves)", StringComparison.Ordinal)).Skip(1)
            .TakeWhile(line => !line.StartsWith("## ", StringComparison.Ordinal))
            .Select(line => line.Length > 4 ? line[4..] : ""),
    ];

    /// <summary>The prose of the README, without what is to be typed.</summary>
    public static bool Says(string words) =>
        File.ReadAllText(Find(AppContext.BaseDirectory)).ReplaceLineEndings(" ").Contains(words,
            StringComparison.Ordinal);

    private static string Find(string folder)
    {
        while (!File.Exists(Path.Combine(folder, "README.md")))
            folder = Path.GetDirectoryName(folder)
                ?? throw new InvalidOperationException("there is no README above the tests");
        return Path.Combine(folder, "README.md");
    }
}
