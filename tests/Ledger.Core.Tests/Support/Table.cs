namespace Ledger.Tests;

/// <summary>
/// A table written as text, so that what is expected reads as a specification: the first line names the columns, bars
/// divide them, and a line that starts with a dash is a rule or a remark.
/// </summary>
internal static class Table
{
    public static IReadOnlyList<Row> Read(string text)
    {
        var lines = text.Split('\n').Select(line => line.Trim()).Where(line => line.Length > 0 && line[0] != '-')
            .Select(Cells).ToList();
        var columns = lines[0];
        return [.. lines.Skip(1).Select(cells => new Row(columns, cells))];
    }

    private static string[] Cells(string line) => [.. line.Split('|').Select(cell => cell.Trim())];
}

/// <summary>One line of a <see cref="Table"/>.</summary>
internal sealed class Row
{
    private readonly Dictionary<string, string> _cells = [];

    public Row(string[] columns, string[] cells)
    {
        if (columns.Length != cells.Length)
            throw new FormatException(
                $"{columns.Length} columns but {cells.Length} cells: {string.Join(" | ", cells)}");
        for (var i = 0; i < columns.Length; i++)
            _cells.Add(columns[i], cells[i]);
    }

    public string this[string column] => _cells[column];

    public decimal Number(string column) =>
        decimal.Parse(this[column], NumberStyles.Float, CultureInfo.InvariantCulture);

    public int Count(string column) => int.Parse(this[column], CultureInfo.InvariantCulture);

    /// <summary>
    /// The number as printed, and how many decimals the print has: what an exact figure must round to.
    /// </summary>
    public (decimal Value, int Decimals) Printed(string column)
    {
        var text = this[column];
        var point = text.IndexOf('.', StringComparison.Ordinal);
        return (Number(column), point < 0 ? 0 : text.Length - point - 1);
    }

    public override string ToString() => string.Join(" | ", _cells.Values);
}
