using System.Runtime.CompilerServices;

namespace Ledger.App.Tests.Support;

/// <summary>The demo year's CSV files where the repository keeps them.</summary>
internal static class SampleData
{
    public static string Folder { get; } = Find();

    private static string Find([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "sample-data"));
}
