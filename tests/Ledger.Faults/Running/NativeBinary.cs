namespace Ledger.Faults.Running;

/// <summary>The native binary, published as a user would publish it.</summary>
public static class NativeBinary
{
    private static readonly Lazy<string> _path = new(Publish);

    /// <summary>The repository's folder.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>The binary that the variable names, otherwise one that is published now.</summary>
    /// <exception cref="InvalidOperationException">It cannot be published, or not without a warning.</exception>
    public static string FilePath => Environment.GetEnvironmentVariable("TRAYLEDGER_BINARY") is { Length: > 0 } named
        ? named
        : _path.Value;

    private static string Publish()
    {
        var published = Executables.Run("dotnet",
            ["publish", "src/Ledger.App", "-c", "Release", "-o", "artifacts/publish"], Root);
        if (published.Status != 0 || published.Output.Contains("warning", StringComparison.Ordinal))
            throw new InvalidOperationException(published.Output + published.Errors);
        return Path.Combine(Root, "artifacts", "publish",
            OperatingSystem.IsWindows() ? "trayledger.exe" : "trayledger");
    }

    private static string FindRoot()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Ledger.sln")))
            folder = Path.GetDirectoryName(folder)!;
        return folder;
    }
}
