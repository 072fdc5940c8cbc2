namespace Ledger.App.Commands.Files;

/// <summary>
/// A dash in place of a file's name: the standard output or input, by way of a file that is gone afterwards.
/// </summary>
internal static class Dash
{
    /// <summary>Whether a name is the dash.</summary>
    public static bool Is(string name) => name.Trim() == "-";

    /// <summary>Sends a file that is written by its name to the standard output, byte for byte.</summary>
    public static int Out(Workbench bench, Action<string> write) => Between(path =>
    {
        write(path);
        using var file = File.OpenRead(path);
        bench.Around.Bytes(file);
        return ExitStatus.Done;
    });

    /// <summary>Takes a file that is read by its name from the standard input.</summary>
    public static int In(Workbench bench, Func<string, int> read) => Between(path =>
    {
        using (var file = File.Create(path))
        using (var input = bench.Around.In())
            input.CopyTo(file);
        return read(path);
    });

    private static int Between(Func<string, int> work)
    {
        var folder = Directory.CreateTempSubdirectory("trayledger-");
        try
        {
            return work(Path.Combine(folder.FullName, "ledger.db"));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
