using System.Diagnostics;

namespace Ledger.App.Tests.Native;

/// <summary>The native binary, published for these tests as a user would publish it.</summary>
public sealed class PublishedBinary : IDisposable
{
    private static readonly string Root = FindRoot();

    public PublishedBinary()
    {
        var published = Run("dotnet", ["publish", "src/Ledger.App", "-c", "Release", "-o", "artifacts/publish"]);
        Assert.True(published.Status == 0, published.Output);
        Assert.DoesNotContain("warning", published.Output);
        Folder = Directory.CreateTempSubdirectory("trayledger-native-").FullName;
    }

    public static bool HasTmux => Environment.GetEnvironmentVariable("PATH")!.Split(Path.PathSeparator)
        .Any(folder => File.Exists(Path.Combine(folder, "tmux")));

    public string Folder { get; }

    public string Binary { get; } = Path.Combine(Root, "artifacts", "publish", OperatingSystem.IsWindows() ? "trayledger.exe" : "trayledger");

    public (int Status, string Output, string Errors) Trayledger(params string[] arguments) => Run(Binary, arguments);

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    public static (int Status, string Output, string Errors) Run(string command, IEnumerable<string> arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(command, arguments)
        {
            WorkingDirectory = Root, RedirectStandardOutput = true, RedirectStandardError = true, RedirectStandardInput = true,
        })!;
        process.StandardInput.Close();
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, errors.Result);
    }

    private static string FindRoot()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Ledger.sln")))
            folder = Path.GetDirectoryName(folder)!;
        return folder;
    }
}
