namespace Ledger.App.Tests.Native;

/// <summary>The native binary, published once for the tests that drive it, and a folder for their files.</summary>
public sealed class PublishedBinary : IDisposable
{
    public static bool HasTmux => Tmux.IsHere;

    public string Folder { get; } = Directory.CreateTempSubdirectory("trayledger-native-").FullName;

    public string Binary { get; } = NativeBinary.FilePath;

    public (int Status, string Output, string Errors) Trayledger(params string[] arguments) => Run(Binary, arguments);

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    public static (int Status, string Output, string Errors) Run(string command, IEnumerable<string> arguments)
    {
        var ran = Executables.Run(command, arguments, NativeBinary.Root);
        return (ran.Status, ran.Output, ran.Errors);
    }
}
