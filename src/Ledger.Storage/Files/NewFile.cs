namespace Ledger.Storage.Files;

/// <summary>
/// A file that is written under a name that nothing else has, and takes its own name only when it is whole and on the
/// disk. Whatever happens before, what stood under its name stands there still. What a killed program left unfinished
/// in the same folder goes.
/// </summary>
public sealed class NewFile : IDisposable
{
    private const UnixFileMode ReadAndWrite = UnixFileMode.UserRead | UnixFileMode.UserWrite
        | UnixFileMode.GroupRead | UnixFileMode.GroupWrite | UnixFileMode.OtherRead | UnixFileMode.OtherWrite;

    private readonly string _target;
    private readonly UnixFileMode? _mode;
    private readonly UnfinishedFile _unfinished;

    /// <summary>
    /// Makes the unfinished file, empty and readable by its owner only. No link is followed, no file touched.
    /// </summary>
    /// <param name="target">The name that it will have.</param>
    /// <param name="like">The file whose permission bits it gets, where none stands under its name yet: the
    /// ledger.</param>
    /// <exception cref="IOException">It cannot be made.</exception>
    public NewFile(string target, string like)
    {
        _target = target;
        var model = RealPath.Of(File.Exists(target) ? target : like);
        if (!OperatingSystem.IsWindows() && File.Exists(model))
            _mode = (File.GetUnixFileMode(model) & ReadAndWrite) | UnixFileMode.UserRead | UnixFileMode.UserWrite;
        var folder = Path.GetDirectoryName(target)!;
        UnfinishedFile.ClearAway(folder);
        _unfinished = UnfinishedFile.In(folder);
    }

    /// <summary>Where it is until it is whole.</summary>
    public string Unfinished => _unfinished.Path;

    /// <summary>A stream that writes it.</summary>
    public Stream Open() => new FileStream(Unfinished, FileMode.Open, FileAccess.Write, FileShare.ReadWrite);

    /// <summary>Gives it its name, once it is on the disk.</summary>
    /// <param name="isReplacing">Whether a file of that name is replaced; if not, it is refused.</param>
    /// <exception cref="IOException">A file of that name is there and is not to be replaced, or the disk refuses
    /// it.</exception>
    public void Finish(bool isReplacing)
    {
        if (_mode is { } mode && !OperatingSystem.IsWindows())
            File.SetUnixFileMode(Unfinished, mode);
        Disk.Sync(Unfinished);
        _unfinished.Become(_target, isReplacing);
        Disk.SyncFolder(Path.GetDirectoryName(_target)!);
    }

    /// <summary>Deletes it if it was not finished.</summary>
    public void Dispose() => _unfinished.Dispose();
}
