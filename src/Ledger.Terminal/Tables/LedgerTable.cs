using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace Ledger.Terminal.Tables;

/// <summary>A calm table: whole rows are selected, no lines but one under the headings, and letters and digits are left to the screen.</summary>
internal sealed class LedgerTable : TableView
{
    public LedgerTable(TableModel model)
    {
        FullRowSelect = true;
        MultiSelect = false;
        Style.AlwaysShowHeaders = true;
        Style.ShowHorizontalHeaderOverline = false;
        Style.ShowHorizontalHeaderUnderline = true;
        Style.ShowVerticalCellLines = false;
        Style.ShowVerticalHeaderLines = false;
        Style.ExpandLastColumn = true;
        for (var i = 0; i < model.Columns.Count; i++)
        {
            var column = Style.GetOrCreateColumnStyle(i);
            column.MinWidth = model.Columns[i].Least;
            column.MinAcceptableWidth = model.Columns[i].Least;
            column.MaxWidth = model.Columns[i].Most;
            if (model.Columns[i].IsFigure)
                column.Alignment = Alignment.End;
        }

        KeyBindings.Remove(Key.Space);
        foreach (var (key, command) in new[] { (Key.Home, Command.Start), (Key.End, Command.End) })
        {
            KeyBindings.Remove(key);
            KeyBindings.Add(key, command);
        }

        foreach (var key in new[] { Key.CursorLeft, Key.CursorRight })
            KeyBindings.Remove(key);
    }

    /// <summary>The base would jump to the row that begins with the letter.</summary>
    protected override bool OnKeyDown(Key key) => false;
}
