namespace Ledger.Faults.Together;

/// <summary>The rows of an exported table of numbers, by the names of their columns.</summary>
internal static class ExportedRows
{
    public static IEnumerable<IReadOnlyDictionary<string, string>> Of(string path)
    {
        var lines = File.ReadAllLines(path);
        var columns = lines[0].Split(',');
        return lines.Skip(1)
            .Select(line => columns.Zip(line.Split(',')).ToDictionary(cell => cell.First, cell => cell.Second));
    }
}
