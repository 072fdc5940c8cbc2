using System.Drawing;
using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pages;
using Ledger.Terminal.Themes;
using Terminal.Gui.Drawing;
using Terminal.Gui.Text;
using Terminal.Gui.Views;

namespace Ledger.Terminal.Tables;

/// <summary>
/// A calm table: whole rows are selected, one line under the headings, and letters and digits are left to the screen.
/// </summary>
internal sealed class LedgerTable : TableView
{
    private const int RowsMeasured = 100;
    private const int HeaderHeight = 2;
    private const int WheelRows = 3;
    private readonly TableModel _model;
    private int[] _widest = [];
    private int _fitted;
    private Size _seen;

    public LedgerTable(TableModel model)
    {
        _model = model;
        FullRowSelect = true;
        MultiSelect = false;
        Style.AlwaysShowHeaders = true;
        Style.ShowHorizontalHeaderOverline = false;
        Style.ShowHorizontalHeaderUnderline = true;
        Style.ShowVerticalCellLines = false;
        Style.ShowVerticalHeaderLines = false;
        KeyBindings.Remove(Key.Space);
        foreach (var (key, command) in new[] { (Key.Home, Command.Start), (Key.End, Command.End) })
        {
            KeyBindings.Remove(key);
            KeyBindings.Add(key, command);
        }

        foreach (var key in new[] { Key.CursorLeft, Key.CursorRight })
            KeyBindings.Remove(key);
    }

    /// <summary>Shows the model as it is now and fits the columns to it.</summary>
    public void Show(int place)
    {
        Table = new ModelTable(_model);
        _widest = [.. _model.Columns.Select((_, i) => Widest(i))];
        if (!_model.Sift.IsFinding)
            Needed = ColumnFit.Whole(_model.Columns, _widest);
        Fit();
        if (place < 0)
            return;
        SetSelection(0, place, extendExistingSelection: false);
        EnsureCursorIsVisible();
    }

    /// <summary>
    /// The width at which no column stays away and nothing is cut; of all rows, also while some are looked for.
    /// </summary>
    public int Needed { get; private set; }

    /// <summary>Scrolls to the selected row.</summary>
    public void Reveal()
    {
        if (Table is not null && Viewport.Height > 0)
            EnsureCursorIsVisible();
    }

    protected override void OnViewportChanged(DrawEventArgs e)
    {
        base.OnViewportChanged(e);
        if (Viewport.Width != _fitted)
            Fit();
        if (Viewport.Size != _seen)
        {
            _seen = Viewport.Size;
            Reveal();
        }
    }

    private void Fit()
    {
        if (Viewport.Width <= 0 || Table is null)
            return;
        _fitted = Viewport.Width;
        var columns = _model.Columns;
        // The last column of the screen is for the bar that says that there is more: it hides no end of a text.
        var widths = ColumnFit.Of(columns, _widest, Viewport.Width - 1);
        ColumnFit.FillUp(widths, columns, Viewport.Width - 1);
        for (var i = 0; i < widths.Length; i++)
        {
            var style = Style.GetOrCreateColumnStyle(i);
            style.Visible = widths[i] > 0;
            style.MinWidth = style.MaxWidth = style.MinAcceptableWidth = widths[i];
            style.ColorGetter = Coloured;
            style.Alignment = columns[i].IsFigure ? Alignment.End : Alignment.Start;
        }

        Style.ExpandLastColumn = false;
        Update();
    }

    /// <summary>
    /// The headings are as strong as the theme has it; that is known only where the table is drawn, on its desk.
    /// </summary>
    protected override bool OnDrawingContent(DrawContext? context)
    {
        var strong = GetAttributeForRole(Themes.Style.Heading);
        if (Style.HeaderScheme?.Normal != strong)
            Style.HeaderScheme = Theme.Plain(strong);
        return base.OnDrawingContent(context);
    }

    /// <summary>A bar says that there are rows above or below, and where one is.</summary>
    protected override void OnDrawComplete(DrawContext? context)
    {
        base.OnDrawComplete(context);
        SetAttributeForRole(Themes.Style.Heading);
        for (var line = 0; Bar.IsNeeded && line < Bar.Height; line++)
            if (Bar.At(line) is not ' ' and var sign)
                AddStr(Viewport.Width - 1, HeaderHeight + line, sign.ToString());
    }

    private EdgeBar Bar => new(RowOffset, _model.ShownCount, Viewport.Height - HeaderHeight);

    /// <summary>Raised when it was scrolled, with the last row that is seen: more may have to be read.</summary>
    public event Action<int>? Scrolled;

    private bool ScrollTo(int top)
    {
        RowOffset = Math.Clamp(top, 0, Math.Max(0, _model.ShownCount - Bar.Height));
        Scrolled?.Invoke(RowOffset + Bar.Height);
        SetNeedsDraw();
        return true;
    }

    /// <summary>
    /// What begins with a mark looks as what the mark means; what is selected is reversed and keeps its mark.
    /// </summary>
    private Scheme? Coloured(CellColorGetterArgs cell)
    {
        if (cell.CellValue is not string text)
            return null;
        var role = Themes.Style.Marked(text);
        if (role is null || (Value is { } value && value.SelectedCell.Y == cell.RowIndex))
            return null;
        return Theme.Plain(GetAttributeForRole(role.Value));
    }

    private int Widest(int column) =>
        Enumerable.Range(0, Math.Min(_model.ShownCount, RowsMeasured))
            .Select(place => _model.Cell(_model.RowAt(place), column).GetColumns())
            .Append(_model.Sift.Column == column ? _model.Columns[column].Heading.Length + 1 : 0)
            .Max();

    /// <summary>Raised when a heading is clicked.</summary>
    public event Action<int>? HeadingClicked;

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (mouse.Flags.HasFlag(MouseFlags.WheeledDown) || mouse.Flags.HasFlag(MouseFlags.WheeledUp))
            return ScrollTo(RowOffset + (mouse.Flags.HasFlag(MouseFlags.WheeledDown) ? WheelRows : -WheelRows));
        if (mouse.Position is not { } at)
            return base.OnMouseEvent(mouse);
        if (Bar.IsNeeded && at.X >= Viewport.Width - 1 && at.Y >= HeaderHeight)
        {
            if (Bar.Pressed(mouse.Flags, at.Y - HeaderHeight) is { } top)
                _ = ScrollTo(top);
            return true;
        }

        _ = ScreenToCell(at.X, at.Y, out var heading);
        if (heading is not { } column)
            return base.OnMouseEvent(mouse);
        if (mouse.IsSingleClicked || mouse.IsDoubleClicked)
            HeadingClicked?.Invoke(column);
        return true;
    }

    /// <summary>The base would jump to the row that begins with the letter.</summary>
    protected override bool OnKeyDown(Key key) => false;

    protected override bool OnKeyDownNotHandled(Key key) => false;
}
