using System.Runtime.InteropServices;

namespace Ledger.Storage.Files;

/// <summary>What the operating system is asked so that a file survives a power cut.</summary>
internal static partial class Disk
{
    private const int ReadOnly = 0;

    /// <summary>Waits until the content of a file is on the disk.</summary>
    public static void Sync(string file)
    {
        using var handle = File.OpenHandle(file, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite);
        RandomAccess.FlushToDisk(handle);
    }

    /// <summary>
    /// Waits until the names in a folder are on the disk. Where the system or the file system cannot, its own pace has
    /// to do.
    /// </summary>
    public static void SyncFolder(string folder)
    {
        if (OperatingSystem.IsWindows())
            return;
        var descriptor = Open(folder, ReadOnly);
        if (descriptor < 0)
            return;
        _ = Synchronize(descriptor);
        _ = Close(descriptor);
    }

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "fsync")]
    private static partial int Synchronize(int descriptor);

    [LibraryImport("libc", EntryPoint = "close")]
    private static partial int Close(int descriptor);
}
