namespace Ledger.App.Output;

/// <summary>
/// Plain aligned columns, two blanks apart, never wider than the text may be: what is too long goes on below in its
/// column, the widest column first; where not even the longest words fit beside each other, two tables stand one below
/// the other, and then each row is a list.
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
        int[] all = [.. Enumerable.Range(0, columns.Length)];
        if ((Widths(all, width, NarrowestLast) ?? Widths(all, width, 1)) is { } widths)
            WriteColumns(all, widths, output);
        else if (Blocks(width) is { } blocks)
            foreach (var (number, block) in blocks.Index())
            {
                if (number > 0)
                    output.WriteLine();
                WriteColumns(block, Widths(block, width, 1)!, output);
            }
        else
            WriteLists(output, width);
    }

    private void WriteColumns(int[] shown, int[] widths, TextWriter output)
    {
        if (columns.Any(column => column.Title.Length > 0))
            Write([.. shown.Select(i => columns[i].Title)], shown, widths, output);
        foreach (var row in _rows)
            Write([.. shown.Select(i => row[i])], shown, widths, output);
    }

    /// <summary>
    /// The columns in two tables one below the other, each with the first column; null where that is not enough.
    /// </summary>
    private int[][]? Blocks(int width)
    {
        for (var end = columns.Length - 1; end > 1; end--)
        {
            int[] first = [.. Enumerable.Range(0, end)], second = [0, .. Enumerable.Range(end, columns.Length - end)];
            if (Widths(first, width, 1) is not null)
                return Widths(second, width, 1) is null ? null : [first, second];
        }

        return null;
    }

    /// <summary>How wide each of some columns is; null when they do not fit beside each other.</summary>
    private int[]? Widths(int[] shown, int width, int narrowestLast)
    {
        var widths = shown.Select(i => Math.Max(columns[i].Title.Length, _rows.Max(row => row[i].Length))).ToArray();
        var least = shown.Select(i => Least(i, i == columns.Length - 1 ? narrowestLast : 1)).ToArray();
        for (var over = widths.Sum() + Gap * (shown.Length - 1) - width; over > 0; over--)
        {
            // Of columns that are equally wide the last gives way.
            var widest = Enumerable.Range(0, widths.Length).Where(i => widths[i] > least[i])
                .OrderBy(i => widths[i]).ThenBy(i => i)
                .Select(i => (int?)i).LastOrDefault();
            if (widest is not { } column)
                return null;
            widths[column]--;
        }

        return widths;
    }

    /// <summary>The longest word of a column; figures stay whole.</summary>
    private int Least(int column, int narrowest)
    {
        var cells = _rows.Select(row => row[column]);
        var words = (columns[column].IsRight ? cells : cells.SelectMany(cell => cell.Split(' ')))
            .Concat(columns[column].Title.Split(' '))
            .Max(word => word.Length);
        return Math.Max(words, Math.Min(narrowest, _rows.Max(row => row[column].Length)));
    }

    private void Write(string[] line, int[] shown, int[] widths, TextWriter output)
    {
        var cells = line.Select((cell, i) => cell.Length <= widths[i] ? [cell] : Prose.Wrap(cell, widths[i]).ToList())
            .ToList();
        for (var row = 0; row < cells.Max(cell => cell.Count); row++)
            output.WriteLine(string.Join(
                new string(' ', Gap),
                cells.Select((cell, i) => Pad(row < cell.Count ? cell[row] : "", shown[i], widths[i]))).TrimEnd());
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
                        : Core.Measures.Wrapping.Of(row[i].Trim(), width, columns[i].Title.PadRight(label + Gap),
                            new string(' ', label + Gap)))
                        output.WriteLine(line);
        }
    }

    private string Pad(string cell, int column, int width) =>
        columns[column].IsRight ? cell.PadLeft(width) : cell.PadRight(width);
}
