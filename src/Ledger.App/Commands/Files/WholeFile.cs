using Ledger.App.Wiring;

namespace Ledger.App.Commands.Files;

/// <summary>Writes a file that appears under its name only when it is whole, and never in the place of the ledger.</summary>
internal static class WholeFile
{
    /// <summary>After how many links a path is taken to lead round in a circle; as many as Linux follows.</summary>
    private const int MostLinks = 40;

    /// <summary>What SQLite calls the files that it keeps beside a ledger.</summary>
    private static readonly string[] Beside = ["-wal", "-shm", "-journal"];

    /// <summary>Writes the file, in the place of one of that name.</summary>
    /// <param name="ledger">The open ledger's file.</param>
    /// <param name="path">The file to write.</param>
    /// <param name="write">Writes what it holds.</param>
    /// <exception cref="RefusedByCommandException">It is the ledger itself.</exception>
    public static void Write(string ledger, string path, Action<Stream> write)
    {
        RequireOther(ledger, path);
        var unfinished = Unfinished(path);
        try
        {
            using (var file = File.Create(unfinished))
                write(file);
            File.Move(unfinished, path, overwrite: true);
        }
        finally
        {
            File.Delete(unfinished);
        }
    }

    /// <summary>The name that a file has until it is whole.</summary>
    public static string Unfinished(string path) => path + ".part";

    /// <summary>What is written must not go to the ledger, whatever links lead there, nor to a file that SQLite keeps beside it.</summary>
    /// <exception cref="RefusedByCommandException">It would.</exception>
    public static void RequireOther(string ledger, string path)
    {
        var real = RealPath(ledger);
        foreach (var written in new[] { path, Unfinished(path) }.Select(RealPath))
        {
            if (IsSame(written, real))
                throw new RefusedByCommandException($"{path} is the ledger itself; name another file");
            if (Beside.Any(ending => IsSame(written, real + ending)))
                throw new RefusedByCommandException($"{path} is a part of the ledger itself; name another file");
        }
    }

    private static bool IsSame(string one, string other) =>
        one.Equals(other, OperatingSystem.IsLinux() ? StringComparison.Ordinal : StringComparison.OrdinalIgnoreCase);

    /// <summary>Where a path leads when every link on the way is followed. What is not there yet is taken by its name.</summary>
    private static string RealPath(string path) => Followed(path, MostLinks);

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
