using Ledger.Faults.Running;

namespace Ledger.Faults.Injection;

/// <summary>The library that is preloaded before libc, compiled once for each run of the harness.</summary>
public static class Preload
{
    private static readonly string Source = Path.Combine(NativeBinary.Root, "tests", "Ledger.Faults",
        "Injection", "faults.c");

    private static readonly Lazy<string> _compiled = new(Compile);

    /// <summary>Whether faults can be injected here.</summary>
    public static bool IsPossible => OperatingSystem.IsLinux() && Executables.Has("gcc");

    /// <summary>The path of the compiled library.</summary>
    public static string Library => _compiled.Value;

    private static string Compile()
    {
        var library = Path.Combine(Path.GetTempPath(), $"trayledger-faults-{Environment.ProcessId}.so");
        var compiled = Executables.Run(
            "gcc", ["-Wall", "-Wextra", "-Werror", "-O2", "-shared", "-fPIC", "-o", library, Source]);
        if (compiled.Status != 0)
            throw new InvalidOperationException($"faults.c cannot be compiled: {compiled.Errors}");
        AppDomain.CurrentDomain.ProcessExit += (_, _) => File.Delete(library);
        return library;
    }
}
