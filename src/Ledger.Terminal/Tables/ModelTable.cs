using Ledger.Terminal.Pages;
using Terminal.Gui.Views;

namespace Ledger.Terminal.Tables;

/// <summary>A table model as the table view reads it.</summary>
/// <param name="model">The model.</param>
internal sealed class ModelTable(TableModel model) : ITableSource
{
    public string[] ColumnNames { get; } =
        [.. model.Columns.Select((column, i) => column.Heading + Mark(model.Sift, i))];

    public int Columns => ColumnNames.Length;

    public int Rows => model.ShownCount;

    public object this[int row, int col] => UserText.Shown(Cell(model.RowAt(row), col));

    /// <summary>A row that cannot be looked up now stays empty until the table is read again.</summary>
    private string Cell(int row, int column)
    {
        try
        {
            return model.Cell(row, column);
        }
        catch (LedgerUnavailableException)
        {
            return "";
        }
    }

    /// <summary>The sorted column says so.</summary>
    private static string Mark(Sift sift, int column) => sift.Column != column ? "" : sift.IsDown ? "v" : "^";
}
