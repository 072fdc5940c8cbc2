namespace Ledger.App.Output;

/// <summary>Plain aligned columns, two blanks apart. What does not fit the width continues below in the last column.</summary>
internal sealed class TextTable(params Column[] columns)
{
    private const int Gap = 2;
    private const int NarrowestLast = 16;
    private readonly List<string[]> _rows = [];

    public bool IsEmpty => _rows.Count == 0;

    /// <summary>Adds a row; cells that are missing at its end are empty.</summary>
    public void Add(params ReadOnlySpan<string> cells)
    {
        var row = new string[columns.Length];
        for (var i = 0; i < row.Length; i++)
            row[i] = i < cells.Length ? cells[i] : "";
        _rows.Add(row);
    }

    public void WriteTo(TextWriter output, int width)
    {
        if (IsEmpty)
            return;
        string[][] titles = columns.All(column => column.Title.Length == 0) ? [] : [[.. columns.Select(column => column.Title)]];
        var lines = titles.Concat(_rows).ToList();
        var widths = columns.Select((_, i) => lines.Max(line => line[i].Length)).ToArray();
        var before = widths[..^1].Sum() + Gap * (columns.Length - 1);
        widths[^1] = Math.Min(widths[^1], Math.Max(NarrowestLast, width - before));
        foreach (var line in lines)
            Write(line, widths, before, output);
    }

    private void Write(string[] line, int[] widths, int before, TextWriter output)
    {
        var last = Prose.Wrap(line[^1], widths[^1]).ToList();
        var start = string.Concat(line[..^1].Select((cell, i) => Pad(cell, i, widths[i]) + new string(' ', Gap)));
        output.WriteLine((start + Pad(last[0], columns.Length - 1, widths[^1])).TrimEnd());
        foreach (var more in last.Skip(1))
            output.WriteLine(new string(' ', before) + more);
    }

    private string Pad(string cell, int column, int width) => columns[column].IsRight ? cell.PadLeft(width) : cell.PadRight(width);
}
