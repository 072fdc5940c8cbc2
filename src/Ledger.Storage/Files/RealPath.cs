namespace Ledger.Storage.Files;

/// <summary>Where a path leads when every link on the way is followed.</summary>
public static class RealPath
{
    /// <summary>After how many links a path is taken to lead round in a circle; as many as Linux follows.</summary>
    private const int MostLinks = 40;

    /// <summary>The path without links. What is not there yet is taken by its name.</summary>
    /// <exception cref="IOException">The links lead round in a circle.</exception>
    public static string Of(string path) => Followed(path, MostLinks);

    private static string Followed(string path, int links)
    {
        if (links == 0)
            throw new IOException($"{path} leads through more than {MostLinks} links");
        var full = Path.GetFullPath(path);
        if (Path.GetDirectoryName(full) is not { } parent)
            return full;
        var folder = Followed(parent, links);
        var here = Path.Combine(folder, Path.GetFileName(full));
        return new FileInfo(here).LinkTarget is { } target ? Followed(Path.Combine(folder, target), links - 1) : here;
    }
}
