namespace Ledger.App.Output;

/// <summary>
/// Plain aligned columns, two blanks apart, never wider than the text may be: words go below their cell, the widest column first, and where
/// not even the words fit beside each other, each row is a list of its cells.
/// </summary>
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
        if (Widths(width) is { } widths)
            foreach (var line in Titles().Concat(_rows))
                Write(line, widths, output);
        else
            WriteLists(output, width);
    }

    private string[][] Titles() => columns.All(column => column.Title.Length == 0) ? [] : [[.. columns.Select(column => column.Title)]];

    /// <summary>How wide each column is; null when they do not fit beside each other.</summary>
    private int[]? Widths(int width)
    {
        var widths = columns.Select((column, i) => _rows.Max(row => row[i].Length)).ToArray();
        var least = columns.Select(Least).ToArray();
        for (var i = 0; i < columns.Length; i++)
            widths[i] = Math.Max(widths[i], columns[i].Title.Length);
        for (var over = widths.Sum() + Gap * (columns.Length - 1) - width; over > 0; over--)
        {
            // Of columns that are equally wide the last gives way.
            var widest = Enumerable.Range(0, widths.Length).Where(i => widths[i] > least[i]).OrderBy(i => widths[i]).ThenBy(i => i)
                .Select(i => (int?)i).LastOrDefault();
            if (widest is not { } column)
                return null;
            widths[column]--;
        }

        return widths;
    }

    /// <summary>The longest word of a column; figures stay whole, and the last column is readable.</summary>
    private int Least(Column column, int index)
    {
        var cells = _rows.Select(row => row[index]);
        var words = (column.IsRight ? cells : cells.SelectMany(cell => cell.Split(' '))).Concat(column.Title.Split(' ')).Max(word => word.Length);
        return index < columns.Length - 1 ? words
            : Math.Max(words, Math.Min(NarrowestLast, _rows.Max(row => row[index].Length)));
    }

    private void Write(string[] line, int[] widths, TextWriter output)
    {
        var cells = line.Select((cell, i) => cell.Length <= widths[i] ? [cell] : Prose.Wrap(cell, widths[i]).ToList()).ToList();
        for (var row = 0; row < cells.Max(cell => cell.Count); row++)
            output.WriteLine(string.Join(
                new string(' ', Gap), cells.Select((cell, i) => Pad(row < cell.Count ? cell[row] : "", i, widths[i]))).TrimEnd());
    }

    /// <summary>Each row as a list: a title and its cell on a line, without the cells that are empty.</summary>
    private void WriteLists(TextWriter output, int width)
    {
        var label = columns.Max(column => column.Title.Length);
        foreach (var (number, row) in _rows.Index())
        {
            if (number > 0 && label > 0)
                output.WriteLine();
            for (var i = 0; i < columns.Length; i++)
                if (row[i].Length > 0)
                    foreach (var line in label == 0
                        ? Core.Measures.Wrapping.Of(row[i].Trim(), width, i == 0 ? "" : "  ", i == 0 ? "" : "  ")
                        : Core.Measures.Wrapping.Of(row[i].Trim(), width, columns[i].Title.PadRight(label + Gap), new string(' ', label + Gap)))
                        output.WriteLine(line);
        }
    }

    private string Pad(string cell, int column, int width) => columns[column].IsRight ? cell.PadLeft(width) : cell.PadRight(width);
}
