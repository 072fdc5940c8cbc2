namespace Ledger.Storage.Files;

/// <summary>Says in a sentence why a file or folder cannot be used.</summary>
public static class FileTrouble
{
    private const int NoSpace = 28, NotAFolder = 20, IsAFolder = 21, ReadOnly = 30, TooManyLinks = 40, NameTooLong = 36;

    /// <summary>The whole sentence, with the path where the exception knows it.</summary>
    public static string Sentence(Exception trouble) =>
        Path(trouble) is { Length: > 0 } path ? $"{path} cannot be used: {Reason(trouble)}"
            : $"a file cannot be used: {Reason(trouble)}";

    /// <summary>Why, for a sentence that names the file.</summary>
    public static string Reason(Exception trouble) => trouble switch
    {
        UnauthorizedAccessException when Path(trouble) is { Length: > 0 } path && Directory.Exists(path)
            && !IsDenied(path) => "it is a folder",
        UnauthorizedAccessException => "you have not the right to; check the rights of the file and of its folder",
        FileNotFoundException => "there is no such file",
        DirectoryNotFoundException => "its folder does not exist",
        PathTooLongException => "its name is too long",
        IOException { HResult: NoSpace } => "the disk is full",
        IOException { HResult: NotAFolder } => "a part of its path is a file, not a folder",
        IOException { HResult: IsAFolder } => "it is a folder",
        IOException { HResult: ReadOnly } => "the disk may only be read",
        IOException { HResult: TooManyLinks } => "too many links lead to one another",
        IOException { HResult: NameTooLong } => "its name is too long",
        _ when IsOurs(trouble) => trouble.Message,
        _ => $"the disk or the system refuses it (error {trouble.HResult})",
    };

    /// <summary>A sentence of this program's own comes without the system's error number.</summary>
    private static bool IsOurs(Exception trouble) =>
        trouble.GetType() == typeof(IOException) && trouble.HResult == new IOException().HResult;

    /// <summary>A folder that cannot even be listed is denied, not mistaken for a file.</summary>
    private static bool IsDenied(string folder)
    {
        try
        {
            using var entries = Directory.EnumerateFileSystemEntries(folder).GetEnumerator();
            entries.MoveNext();
            return false;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return true;
        }
    }

    /// <summary>The path: the libraries put it between single quotes.</summary>
    private static string Path(Exception trouble)
    {
        if (trouble is FileNotFoundException { FileName: { Length: > 0 } name })
            return name;
        var (first, last) = (trouble.Message.IndexOf('\''), trouble.Message.LastIndexOf('\''));
        return first >= 0 && last > first ? trouble.Message[(first + 1)..last] : "";
    }
}
