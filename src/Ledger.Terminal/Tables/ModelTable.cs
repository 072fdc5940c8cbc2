using Ledger.Core.Measures;
using Ledger.Terminal.Pages;
using Terminal.Gui.Views;

namespace Ledger.Terminal.Tables;

/// <summary>A table model as the table view reads it.</summary>
/// <param name="model">The model.</param>
internal sealed class ModelTable(TableModel model) : ITableSource
{
    public string[] ColumnNames { get; } = [.. model.Columns.Select(column => column.Heading)];

    public int Columns => ColumnNames.Length;

    public int Rows => model.Count;

    public object this[int row, int col] => UserText.Shown(model.Cell(row, col));
}
