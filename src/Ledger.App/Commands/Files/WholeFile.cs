using Ledger.Storage.Files;

namespace Ledger.App.Commands.Files;

/// <summary>
/// Writes a file that appears under its name only when it is whole, and never in the place of the ledger.
/// </summary>
internal static class WholeFile
{
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
        using var file = new NewFile(path, ledger);
        using (var stream = file.Open())
            write(stream);
        file.Finish(isReplacing: true);
    }

    /// <summary>
    /// What is written must not go to the ledger, whatever links lead there, nor to a file that SQLite keeps beside it.
    /// </summary>
    /// <exception cref="RefusedByCommandException">It would.</exception>
    public static void RequireOther(string ledger, string path)
    {
        var real = RealPath.Of(ledger);
        var written = RealPath.Of(path);
        if (IsSame(written, real))
            throw new RefusedByCommandException($"{path} is the ledger itself; name another file");
        if (Beside.Any(ending => IsSame(written, real + ending)))
            throw new RefusedByCommandException($"{path} is a part of the ledger itself; name another file");
    }

    /// <summary>What is written must go to a file that is not there yet.</summary>
    /// <param name="ledger">The open ledger's file.</param>
    /// <param name="path">The file to write.</param>
    /// <param name="what">What is to be named instead.</param>
    /// <exception cref="RefusedByCommandException">A file is there, or it is the ledger.</exception>
    /// <exception cref="LedgerFileException">A folder is there.</exception>
    public static void RequireNew(string ledger, string path, string what)
    {
        RequireOther(ledger, path);
        RequireNoFolder(path);
        if (File.Exists(path))
            throw new RefusedByCommandException($"{path} exists already; name {what}");
    }

    /// <summary>A folder cannot be written to as a file.</summary>
    /// <exception cref="LedgerFileException">A folder is there.</exception>
    public static void RequireNoFolder(string path)
    {
        if (Directory.Exists(path))
            throw new LedgerFileException($"{path} is a folder; name a file");
    }

    private static bool IsSame(string one, string other) =>
        one.Equals(other, OperatingSystem.IsLinux() ? StringComparison.Ordinal : StringComparison.OrdinalIgnoreCase);
}
