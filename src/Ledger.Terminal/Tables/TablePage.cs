using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pages;
using Terminal.Gui.Views;

namespace Ledger.Terminal.Tables;

/// <summary>
/// A table and the details of its selected row: beside it where neither is cut for that, otherwise below it.
/// </summary>
internal sealed class TablePage : Page
{
    private const int BesideFrom = 110;
    private const int DetailsLeast = 46;

    private readonly TableModel _model;
    private readonly LedgerTable _table;
    private readonly Label _empty;
    private readonly Rule _edge = new();
    private readonly TextPane _details = new() { MaySpread = true };
    private readonly FindLine _find;
    private bool _isBinding;
    private bool _isDue;
    private bool _isFromTop;
    private bool _isGone;

    public TablePage(TableModel model, Action<Step?> take)
    {
        _model = model;
        _table = new(model);
        _empty = new() { X = 1 };
        _find = new(Find, ToTable) { X = 1, Width = Dim.Fill(1) };
        _find.HasFocusChanged += (_, _) => OnTurned();
        _table.ValueChanged += (_, _) => OnSelected();
        _table.Scrolled += ReadOn;
        _table.HeadingClicked += column => Sort(sift => sift.SortBy(column));
        _table.Accepting += (_, e) =>
        {
            e.Handled = true;
            take(Row >= 0 ? _model.Open(Row) : null);
        };
        _details.HasFocusChanged += (_, e) => _edge.IsStrong = e.NewValue;
        Place();
        Add(_find, _table, _empty, _edge, _details);
        Bind();
    }

    public override string Heading => _model.Title;

    public override string Headline => _model.Headline;

    public override string Example => _model.Example.Does;

    public override IEnumerable<string> Labels => _model.Columns.Select(column => column.Heading);

    public override IReadOnlyList<string> Purpose => [.. _model.Purpose, ColumnFit.Sentence(_model.Columns)];

    public override IReadOnlyList<ScreenAction> Actions =>
    [
        .. _model.Actions,
        ScreenAction.Quiet(KeyTable.Trace, "shows what it came through, and what else came through that", Trace),
        ScreenAction.Of(KeyTable.Find,
            "finds the rows that hold all words, in any column, while you type; Esc shows all again", _ => OpenFind()),
        ScreenAction.Quiet(
            KeyTable.Sort, "sorts by the next column; a click on a heading sorts by it",
            _ => Sort(sift => sift.SortByNext(_model.Columns.Count))),
        ScreenAction.Quiet(KeyTable.Reverse, "sorts the other way round", _ => Sort(sift => sift.Reverse())),
        ScreenAction.Quiet(KeyTable.Whole,
            "shows the whole row: every column, nothing cut, and its details under it", Whole),
        Copying(() => new(_model.Title, _model, () => Details(Row))),
    ];

    /// <summary>Whether looked-for words are typed.</summary>
    public override bool TakesTyping => _find.HasFocus;

    /// <summary>What is looked for is let go before the page is left.</summary>
    public override bool Stop()
    {
        if (!_find.Visible)
            return false;
        _find.Close();
        ToTable();
        return true;
    }

    public override int Row => _model.SelectedRow;

    /// <summary>What Enter does here; null for nothing.</summary>
    public string? Opens => _model.ShownCount > 0 ? _model.OpenLabel : null;

    /// <summary>The model it shows.</summary>
    public TableModel Model => _model;

    public override void Refresh()
    {
        _model.Refresh();
        Bind();
    }

    public override void Resume()
    {
        _table.Reveal();
        ReadSoon();
    }

    public override void EndInit()
    {
        base.EndInit();
        ReadSoon();
    }

    /// <summary>Shows the model as it is now.</summary>
    public void Bind()
    {
        _isBinding = true;
        _model.Read(() =>
        {
            _model.Arrange();
            return true;
        });
        _find.Count(_model.ShownCount, _model.Count);
        var row = _model.SelectedRow;
        var isFirst = row >= 0 && !_table.Visible;
        _table.Visible = row >= 0;
        _empty.Visible = row < 0;
        _empty.Text = row >= 0
            ? ""
            : _model.Sift.IsFinding ? "Nothing is found by that. Esc shows all again." : _model.Empty;
        _table.Show(row < 0 ? -1 : _model.PlaceOf(row));
        if (row >= 0)
            _model.SelectedId = _model.IdOf(row);

        _isBinding = false;
        ReadDetails(isFromTop: false);
        if (isFirst && HasFocus && !_find.HasFocus)
            _table.SetFocus();
        SetNeedsLayout();
        SetNeedsDraw();
    }

    protected override void OnHasFocusChanged(bool newHasFocus, View? previousFocusedView, View? focusedView)
    {
        base.OnHasFocusChanged(newHasFocus, previousFocusedView, focusedView);
        if (newHasFocus && _table.Visible && !_details.HasFocus && !_find.HasFocus)
            _table.SetFocus();
    }

    private void OnSelected()
    {
        if (_isBinding || _table.Value is not { } value || value.SelectedCell.Y < 0
            || value.SelectedCell.Y >= _model.ShownCount)
            return;
        var row = _model.RowAt(value.SelectedCell.Y);
        _model.SelectedId = _model.IdOf(row);
        ReadDetails(isFromTop: true);
    }

    protected override void Dispose(bool disposing)
    {
        _isGone = true;
        base.Dispose(disposing);
    }

    /// <summary>
    /// The cursor or the table is drawn before its details are read, which a long history makes slow.
    /// </summary>
    private void ReadDetails(bool isFromTop)
    {
        _isFromTop |= isFromTop;
        if (_isDue)
            return;
        _isDue = true;
        ReadSoon();
    }

    private void ReadSoon()
    {
        if (_isDue)
            App?.AddTimeout(TimeSpan.Zero, ShowDetails);
    }

    private bool ShowDetails()
    {
        if (_isGone || !_isDue)
            return false;
        var (row, before) = (_model.SelectedRow, _model.Count);
        var details = Details(row);
        if (_isFromTop)
            _details.Show(details);
        else
            _details.Replace(details);
        _isDue = _isFromTop = false;
        if (_model.Count != before)
            _table.Update();
        return false;
    }

    /// <summary>Reading the details, and the rows that come next, may fail; then the pane says so.</summary>
    private IReadOnlyList<Block> Details(int row) => Details(() =>
    {
        _model.Reach(row);
        return _model.Details(row);
    });

    private IReadOnlyList<Block> Details(Func<IReadOnlyList<Block>> reading)
    {
        try
        {
            return _model.Read(reading);
        }
        catch (LedgerUnavailableException trouble)
        {
            return [Block.Of("The ledger cannot be read", trouble.Message)];
        }
    }

    /// <summary>Rows that come next are read when one scrolls to them.</summary>
    private void ReadOn(int place)
    {
        var before = _model.Count;
        if (_model.ShownCount == before)
            _ = Details(() =>
            {
                _model.Reach(place);
                return [];
            });
        if (_model.Count != before)
            _table.Update();
    }

    private Step? Trace(int row) => row < 0 ? null : _model.Traced(row) is { } what ? new TracedStep(what)
        : new MessageStep(
            "That is nothing to trace: select a sheet, a box or bottle, a bath, a holder, a session or a plan.");

    /// <summary>Every column of the row with its heading, and the details.</summary>
    private ReadStep? Whole(int row) => row < 0 ? null : new(
        $"{_model.Title}: {_model.Cell(row, 0).Trim()}",
        [
            Block.Facts("",
                _model.Columns.Select((column, i) => (column.Heading, (string?)_model.Cell(row, i).Trim()))),
            .. Details(row),
        ]);

    private RedrawStep OpenFind()
    {
        _find.Open();
        SetNeedsLayout();
        return new RedrawStep();
    }

    private void Find(string words)
    {
        _model.Sift.Words = words;
        Bind();
    }

    private void ToTable()
    {
        if (_table.Visible)
            _table.SetFocus();
        SetNeedsLayout();
    }

    private RedrawStep Sort(Action<Sift> sort)
    {
        sort(_model.Sift);
        Bind();
        return new RedrawStep();
    }

    /// <summary>The line above, while something is looked for.</summary>
    private int Top => _find.Visible ? 1 : 0;

    /// <summary>
    /// The details stand beside the table where neither is cut for it; otherwise below, so that the table has the whole
    /// width.
    /// </summary>
    private bool IsBeside =>
        Viewport.Width >= BesideFrom && _table.Needed + 2 <= Viewport.Width - DetailsLeast;

    private int TableWidth =>
        IsBeside ? Math.Max(_table.Needed + 2, Viewport.Width * 55 / 100) : Viewport.Width;

    /// <summary>Above its details the table takes what its rows need, up to half.</summary>
    private int TableHeight =>
        IsBeside ? Viewport.Height - Top : Math.Clamp(_model.ShownCount + 3, 5, Math.Max(5, Viewport.Height / 2));

    private void Place()
    {
        _table.X = 1;
        _table.Y = Pos.Func(_ => Top);
        _empty.Y = Pos.Func(_ => Top + 1);
        _table.Width = _empty.Width = Dim.Func(_ => TableWidth - (IsBeside ? 2 : 1));
        _empty.Height = Dim.Func(_ => TableHeight - 1);
        _table.Height = Dim.Func(_ => TableHeight);
        _edge.X = Pos.Func(_ => IsBeside ? TableWidth : 1);
        _edge.Y = Pos.Func(_ => IsBeside ? Top : Top + TableHeight);
        _edge.Width = Dim.Func(_ => IsBeside ? 1 : Viewport.Width - 2);
        _edge.Height = Dim.Func(_ => IsBeside ? Viewport.Height : 1);
        _details.X = Pos.Func(_ => IsBeside ? TableWidth + 2 : 1);
        _details.Y = Pos.Func(_ => IsBeside ? Top : Top + TableHeight + 1);
        _details.Width = Dim.Fill();
        _details.Height = Dim.Fill();
    }
}
