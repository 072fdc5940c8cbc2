namespace Ledger.Core.Tests.Support;

/// <summary>The files of the repository that these tests were built from.</summary>
internal static class Repository
{
    public static string Root { get; } = Find(new DirectoryInfo(AppContext.BaseDirectory));

    /// <summary>The source files below a folder, without what the build makes.</summary>
    public static IEnumerable<SourceFile> Files(string folder, string pattern = "*.cs")
    {
        var top = Path.Combine(Root, folder);
        return !Directory.Exists(top) ? [] : Directory.EnumerateFiles(top, pattern, SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(Root, path).Replace('\\', '/'))
            .Where(path => !path.Contains("/obj/", StringComparison.Ordinal)
                && !path.Contains("/bin/", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(path => new SourceFile(path));
    }

    private static string Find(DirectoryInfo? folder)
    {
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Ledger.sln")))
            folder = folder.Parent;
        return folder?.FullName
            ?? throw new InvalidOperationException("the tests run outside the repository: no Ledger.sln above them");
    }
}

/// <summary>One file of the repository.</summary>
/// <param name="Path">Its path below the root, with slashes.</param>
internal sealed record SourceFile(string Path)
{
    public string Text => File.ReadAllText(System.IO.Path.Combine(Repository.Root, Path));

    public string[] Lines => Text.Split('\n');

    /// <summary>The lines with their numbers, without what is only a comment.</summary>
    public IEnumerable<(int Number, string Text)> Code => Lines
        .Select((line, i) => (i + 1, line))
        .Where(line => !line.line.TrimStart().StartsWith("//", StringComparison.Ordinal));

    public override string ToString() => Path;
}
