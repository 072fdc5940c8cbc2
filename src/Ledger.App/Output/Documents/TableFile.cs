using Ledger.Exchange.Export;

namespace Ledger.App.Output.Documents;

/// <summary>A table of a document as a file for other programs, or as a table for people.</summary>
internal static class TableFile
{
    /// <summary>
    /// Comma-separated values, RFC 4180; a quantity and its unit, an amount and its currency have a column each.
    /// </summary>
    public static void WriteCsv(IReadOnlyList<TableColumn> columns, IEnumerable<object?[]> rows,
        View view, TextWriter output) =>
        CsvTable.Write(output, Titles(columns), rows.Select(row => Cells(columns, row, view)));

    /// <summary>Things as comma-separated values, a row each.</summary>
    public static void WriteCsv(DocumentShape shape, IEnumerable<object> things, View view, TextWriter output)
    {
        Cell[] cells = [.. shape.Cells];
        WriteCsv(
            [.. cells.Select(cell => new TableColumn(cell.Name, cell.Form))],
            things.Select(thing => cells.Select(cell => cell.Of(thing, view)).ToArray()), view, output);
    }

    /// <summary>Tab-separated values: a tab or a line's end inside a value becomes a blank.</summary>
    public static void WriteTsv(IReadOnlyList<TableColumn> columns, IEnumerable<object?[]> rows,
        View view, TextWriter output)
    {
        foreach (var line in rows.Select(row => Cells(columns, row, view)).Prepend(Titles(columns)))
            output.Write(
                string.Join('\t', line.Select(cell => cell?.Replace('\t', ' ').ReplaceLineEndings(" "))) + "\n");
    }

    /// <summary>Aligned columns; one in which nothing stands is left out.</summary>
    public static void WriteText(IReadOnlyList<TableColumn> columns, IEnumerable<object?[]> rows,
        View view, TextWriter output)
    {
        var shown = rows.Select(row => row.Select((value, i) => value is null ? "" : columns[i].Form.Shown(value, view))
            .ToArray()).ToList();
        var used = Enumerable.Range(0, columns.Count).Where(i => shown.Any(row => row[i].Length > 0)).ToList();
        var table = new TextTable(
            [.. used.Select(i => new Column(ColumnNames.Title(columns[i].Name), columns[i].Form.IsFigure))]);
        foreach (var row in shown)
            table.Add([.. used.Select(i => row[i])]);
        if (table.IsEmpty)
            output.WriteLine("No row is like that.");
        table.WriteTo(output, view.Width);
    }

    private static string[] Titles(IReadOnlyList<TableColumn> columns) =>
        [.. columns.SelectMany(column => column.Form.Endings.Select(ending => column.Name + ending))];

    private static string?[] Cells(IReadOnlyList<TableColumn> columns, object?[] row, View view) =>
        [.. columns.SelectMany((column, i) => row[i] is { } value
            ? column.Form.Cells(value, view)
            : new string?[column.Form.Endings.Length])];
}
