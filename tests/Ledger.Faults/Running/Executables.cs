using System.Diagnostics;

namespace Ledger.Faults.Running;

/// <summary>Runs other programs.</summary>
public static class Executables
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(120);

    /// <summary>Whether a program of that name is found along the path.</summary>
    public static bool Has(string name) => Environment.GetEnvironmentVariable("PATH")!.Split(Path.PathSeparator)
        .Any(folder => File.Exists(Path.Combine(folder, name)));

    /// <summary>Runs a program to its end with nothing on its input.</summary>
    /// <param name="program">The program.</param>
    /// <param name="arguments">Its arguments.</param>
    /// <param name="folder">Where it runs; otherwise here.</param>
    /// <param name="variables">What its environment holds besides.</param>
    public static Ran Run(
        string program, IEnumerable<string> arguments, string? folder = null,
        IReadOnlyDictionary<string, string>? variables = null)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = folder ?? "", RedirectStandardOutput = true, RedirectStandardError = true,
            RedirectStandardInput = true,
        };
        foreach (var (name, value) in variables ?? new Dictionary<string, string>())
            start.Environment[name] = value;
        var watch = Stopwatch.StartNew();
        using var process = Process.Start(start)!;
        process.StandardInput.Close();
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEndAsync();
        var ended = process.WaitForExit(program == "dotnet" ? TimeSpan.FromMinutes(20) : Patience);
        var lasted = watch.Elapsed;
        if (!ended)
            process.Kill(entireProcessTree: true);
        return new(ended ? process.ExitCode : -1, output.Result, errors.Result, lasted, []);
    }
}
