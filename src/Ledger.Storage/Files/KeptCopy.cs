namespace Ledger.Storage.Files;

/// <summary>A copy of the ledger as it was, kept beside it.</summary>
/// <param name="Path">Where it is.</param>
/// <param name="IsNew">Whether it was made now, and not by a run that was broken off.</param>
internal sealed record KeptCopy(string Path, bool IsNew)
{
    /// <summary>Deletes it where nothing was changed after all. An earlier one stays.</summary>
    public void TakeBack()
    {
        if (IsNew)
            File.Delete(Path);
    }

    /// <summary>A copy beside the ledger that holds byte for byte the same; null if there is none.</summary>
    public static string? Alike(string ledger, string ending, string copy) =>
        Directory.EnumerateFiles(System.IO.Path.GetDirectoryName(ledger)!, $"*.{ending}")
            .Where(file => System.IO.Path.GetFileName(file).StartsWith($"{System.IO.Path.GetFileName(ledger)}.",
                StringComparison.Ordinal))
            .FirstOrDefault(file => IsSame(file, copy));

    private static bool IsSame(string one, string other)
    {
        if (new FileInfo(one) is not { Exists: true, LinkTarget: null } file
            || file.Length != new FileInfo(other).Length)
            return false;
        using var left = File.OpenRead(one);
        using var right = File.OpenRead(other);
        Span<byte> leftBytes = stackalloc byte[4096], rightBytes = stackalloc byte[4096];
        while (left.ReadAtLeast(leftBytes, leftBytes.Length, throwOnEndOfStream: false) is var read and > 0)
        {
            if (right.ReadAtLeast(rightBytes, rightBytes.Length, throwOnEndOfStream: false) != read
                || !leftBytes[..read].SequenceEqual(rightBytes[..read]))
                return false;
        }

        return true;
    }
}
