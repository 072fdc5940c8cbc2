using Ledger.Terminal.Blocks;
using Terminal.Gui.Text;

namespace Ledger.Terminal.Pages;

/// <summary>
/// What can be copied of a page: the selected row, the table with the rows that are shown, or all that is read there.
/// </summary>
/// <param name="Name">The page's title.</param>
/// <param name="Table">Its table; null where it has none.</param>
/// <param name="Blocks">What is read there beside the table.</param>
internal sealed record CopySource(string Name, TableModel? Table, Func<IReadOnlyList<Block>> Blocks)
{
    /// <summary>What is read is broken to the width of a usual terminal.</summary>
    private const int Width = 80;

    /// <summary>The columns of the table.</summary>
    public IReadOnlyList<string> Headings => [.. Table?.Columns.Select(column => column.Heading) ?? []];

    /// <summary>The cells of the selected row; nothing where none is selected.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Row => Table is { SelectedRow: >= 0 and var row } ? [Cells(row)] : [];

    /// <summary>The cells of every row that is shown, in its order; of a long history all of it.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Rows
    {
        get
        {
            if (Table is null)
                return [];
            Table.Reach(int.MaxValue);
            Table.Arrange();
            return [.. Enumerable.Range(0, Table.ShownCount).Select(place => Cells(Table.RowAt(place)))];
        }
    }

    /// <summary>The selected row as text: a heading and its cell a line.</summary>
    public string RowText => Table is not { SelectedRow: >= 0 and var row } ? ""
        : Text([Block.Facts("", Headings.Zip(Cells(row), (heading, cell) => (heading, (string?)cell)))]);

    /// <summary>The table as text, with its columns under each other.</summary>
    public string TableText
    {
        get
        {
            var (rows, columns) = (Rows, Table?.Columns ?? []);
            int[] widths =
                [.. columns.Select((column, i) => rows.Select(row => row[i].GetColumns())
                    .Append(column.Heading.Length).Max())];
            return Lines(
                rows.Prepend(Headings)
                    .Select(row => string.Join("  ",
                        row.Select((cell, i) => Padded(cell, widths[i], columns[i].IsFigure)))));
        }
    }

    /// <summary>The whole page as text: its title, the table, and what is read beside it.</summary>
    public string PageText => Lines(new[] { Name, Table is null ? "" : TableText.TrimEnd(), Text(Blocks()).TrimEnd() }
        .Where(part => part.Length > 0).SelectMany(part => new[] { part, "" }).SkipLast(1));

    private IReadOnlyList<string> Cells(int row) =>
        [.. Enumerable.Range(0, Table!.Columns.Count).Select(column => UserText.Shown(Table.Cell(row, column)).Trim())];

    private static string Text(IEnumerable<Block> blocks) => Lines(blocks.SelectMany(block =>
        (block.Heading.Length > 0 ? [block.Heading] : Array.Empty<string>())
            .Concat(block.Lines(Width).Select(UserText.Shown)).Append("")).SkipLast(1));

    private static string Padded(string cell, int width, bool isFigure)
    {
        var blanks = new string(' ', width - cell.GetColumns());
        return isFigure ? blanks + cell : cell + blanks;
    }

    private static string Lines(IEnumerable<string> lines) =>
        string.Concat(lines.Select(line => line.TrimEnd() + "\n"));
}
