using System.Buffers;

namespace Ledger.Storage.Files;

/// <summary>
/// A file under a name that no user gives, held by a shared lock while the program that writes it lives. With a killed
/// program its lock goes: what nobody holds any more is a left-over, and what another process is writing is not
/// touched.
/// </summary>
internal sealed class UnfinishedFile : IDisposable
{
    private const string Beginning = ".trayledger-", Ending = ".part";
    private const int DigitsOfName = 32, MostTries = 20;
    private static readonly string[] Beside = ["-wal", "-shm", "-journal"];
    private static readonly int HeldByAnother = OperatingSystem.IsLinux() ? 11 : 35; // EWOULDBLOCK
    private static readonly SearchValues<char> Digits = SearchValues.Create("0123456789abcdef");

    private readonly FileStream _hold;
    private bool _isGone;

    private UnfinishedFile(string path, FileStream hold) => (Path, _hold) = (path, hold);

    /// <summary>Where it is.</summary>
    public string Path { get; }

    /// <summary>A new one, empty and readable by its owner only.</summary>
    /// <exception cref="IOException">It cannot be made.</exception>
    public static UnfinishedFile In(string folder)
    {
        for (var tried = 1; ; tried++)
        {
            var path = System.IO.Path.Combine(folder, $"{Beginning}{Guid.NewGuid():N}{Ending}");
            try
            {
                var hold = new FileStream(path, ForOwner(FileMode.CreateNew));
                if (File.Exists(path))
                    return new(path, hold);
                hold.Dispose();
            }
            catch (IOException trouble) when (trouble.HResult == HeldByAnother && tried < MostTries)
            {
                // Like a file that is gone already: another process took it for a left-over before it was held.
            }
        }
    }

    /// <summary>
    /// How a file is opened for writing that others may read meanwhile and, where it is new, nobody but its owner.
    /// </summary>
    public static FileStreamOptions ForOwner(FileMode mode)
    {
        var options = new FileStreamOptions { Mode = mode, Access = FileAccess.Write,
            Share = FileShare.ReadWrite | FileShare.Delete };
        if (!OperatingSystem.IsWindows())
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        return options;
    }

    /// <summary>
    /// Deletes what killed programs left in a folder. What cannot be deleted stays; it harms nothing.
    /// </summary>
    public static void ClearAway(string folder)
    {
        try
        {
            foreach (var path in Directory.EnumerateFiles(folder, $"{Beginning}*{Ending}").Where(IsOurs))
                DeleteUnlessHeld(path);
            foreach (var ending in Beside)
                foreach (var beside in Directory.EnumerateFiles(folder, $"{Beginning}*{Ending}{ending}"))
                    if (IsOurs(beside[..^ending.Length]) && !File.Exists(beside[..^ending.Length]))
                        File.Delete(beside);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            // A folder that cannot be listed is no reason not to write into it.
        }
    }

    /// <summary>
    /// Gives it its name. What SQLite could not delete beside it holds nothing that counts: it is deleted now, or by
    /// the next program that writes here.
    /// </summary>
    public void Become(string target, bool isReplacing)
    {
        File.Move(Path, target, isReplacing);
        _isGone = true;
        _hold.Dispose();
        try
        {
            DeleteBeside(Path);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            // The file has its name, which is what was asked for.
        }
    }

    /// <summary>Deletes it, unless it has its name.</summary>
    public void Dispose()
    {
        if (!_isGone)
        {
            DeleteBeside(Path);
            File.Delete(Path);
        }

        _isGone = true;
        _hold.Dispose();
    }

    private static bool IsOurs(string path)
    {
        var name = System.IO.Path.GetFileName(path.AsSpan());
        return name.Length == Beginning.Length + DigitsOfName + Ending.Length
            && !name[Beginning.Length..^Ending.Length].ContainsAnyExcept(Digits)
            && new FileInfo(path).LinkTarget is null;
    }

    /// <summary>
    /// What SQLite leaves beside a database that it could not close. Before the file itself, so that nothing is left of
    /// which nobody knows.
    /// </summary>
    private static void DeleteBeside(string path)
    {
        foreach (var ending in Beside)
            File.Delete(path + ending);
    }

    private static void DeleteUnlessHeld(string path)
    {
        try
        {
            using var alone = new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.None,
                1, FileOptions.DeleteOnClose);
            DeleteBeside(path);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            // Somebody is writing it, or it is not ours to delete.
        }
    }
}
