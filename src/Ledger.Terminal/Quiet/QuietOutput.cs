using System.Text;
using Terminal.Gui.Drawing;
using Terminal.Gui.Drivers;
using Terminal.Gui.Text;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Ledger.Terminal.Quiet;

/// <summary>
/// Output that sends what differs from what was sent before, in one write for a whole picture; where nothing differs it
/// sends nothing. It keeps a copy of what the terminal shows, which is forgotten when the terminal may show something
/// else.
/// </summary>
/// <param name="send">Sends text to the terminal.</param>
/// <param name="ended">Called when the output is closed.</param>
internal sealed class QuietOutput(Action<string> send, Action ended) : AnsiOutput, IOutput
{
    private const string Begin = "\e[?2026h", End = "\e[?2026l";
    private readonly StringBuilder _picture = new();
    private Cell[,] _sent = new Cell[0, 0];
    private bool _isKnown;
    private Attribute? _attribute;
    private TextStyle _style;
    private Cursor _cursor = new();
    private bool _isCursorShown;
    private bool _isCursorMoved;

    /// <summary>The terminal may show something else than what was sent: the next picture is sent whole.</summary>
    public void Forget()
    {
        _isKnown = false;
        _isCursorMoved = true;
    }

    public override void Write(IOutputBuffer buffer)
    {
        if (buffer.Contents is not { } cells)
            return;
        if (!_isKnown || _sent.GetLength(0) != cells.GetLength(0) || _sent.GetLength(1) != cells.GetLength(1))
            _sent = new Cell[cells.GetLength(0), cells.GetLength(1)];
        for (var row = 0; row < cells.GetLength(0); row++)
            if (buffer.DirtyLines[row] || !_isKnown)
            {
                Write(cells, row);
                buffer.DirtyLines[row] = false;
            }

        _isKnown = true;
        if (_picture.Length == 0)
            return;
        var hide = _isCursorShown ? "\e[?25l" : "";
        send($"{Begin}{hide}\e[0m{_picture}\e[0m{End}");
        _picture.Clear();
        (_isCursorShown, _isCursorMoved) = (false, true);
        (_attribute, _style) = (null, TextStyle.None);
    }

    Cursor IOutput.GetCursor() => _cursor;

    /// <summary>Only what differs from the cursor that the terminal has is sent.</summary>
    void IOutput.SetCursor(Cursor cursor)
    {
        if (!cursor.IsVisible)
        {
            if (_isCursorShown)
                send("\e[?25l");
            _isCursorShown = false;
        }
        else if (!_isCursorShown || _isCursorMoved || cursor != _cursor)
        {
            var (column, row) = (cursor.Position!.Value.X + 1, cursor.Position.Value.Y + 1);
            send(string.Create(CultureInfo.InvariantCulture, $"\e[{row};{column}H\e[{(int)cursor.Style} q\e[?25h"));
            (_isCursorShown, _isCursorMoved) = (true, false);
        }

        _cursor = cursor;
    }

    void IOutput.Write(ReadOnlySpan<char> text) => send(text.ToString());

    void IDisposable.Dispose()
    {
        ended();
        Dispose();
    }

    private void Write(Cell[,] cells, int row)
    {
        var at = -1;
        var columns = cells.GetLength(1);
        for (var column = 0; column < columns; column++)
        {
            ref var cell = ref cells[row, column];
            if (string.IsNullOrEmpty(cell.Grapheme))
                cell.Grapheme = " ";
            var isWide = !PlainSigns.Is(cell.Grapheme) && cell.Grapheme.GetColumns() > 1 && column + 1 < columns;
            cell.IsDirty = false;
            if (isWide)
                cells[row, column + 1].IsDirty = false;
            if (!_isKnown || !IsSame(cell, _sent[row, column]))
            {
                if (at != column)
                    _picture.Append(CultureInfo.InvariantCulture, $"\e[{row + 1};{column + 1}H");
                _sent[row, column] = cell;
                at = Append(cell, column, columns);
            }

            // The second half of a wide sign is nothing of its own: whatever stands there next is sent.
            if (isWide)
                _sent[row, ++column] = default;
        }
    }

    /// <summary>Appends a place in its colours; returns the column after it.</summary>
    private int Append(Cell cell, int column, int columns)
    {
        if (cell.Attribute == _attribute && PlainSigns.Is(cell.Grapheme))
        {
            _picture.Append(cell.Grapheme);
            return column + 1;
        }

        var (last, width) = (column, 0);
        AppendCellAnsi(cell, _picture, ref _attribute, ref _style, columns, ref last, ref width);
        return last + 1;
    }

    private static bool IsSame(Cell now, Cell sent) => now.Grapheme == sent.Grapheme && now.Attribute == sent.Attribute;
}
