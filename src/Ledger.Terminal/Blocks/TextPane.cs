using Ledger.Terminal.Pictures;
using Ledger.Terminal.Themes;
using Terminal.Gui.Drivers;

namespace Ledger.Terminal.Blocks;

/// <summary>
/// Blocks of text that can be scrolled: under each other, or side by side where the pane is broad and too low for that.
/// A mark at the edge says that there is more.
/// </summary>
internal sealed class TextPane : View
{
    private const int BroadFrom = 70;
    private const int Gutter = 3;

    private IReadOnlyList<Block> _blocks = [];
    private List<Line[]> _rows = [];
    private int _top;
    private bool _isSideBySide;

    /// <summary>Whether blocks stand side by side where there is room for it.</summary>
    public bool MaySpread { get; init; }

    public TextPane()
    {
        CanFocus = true;
        MouseBindings.Clear();
    }

    /// <summary>Shows other blocks, from the top.</summary>
    public void Show(IReadOnlyList<Block> blocks)
    {
        _blocks = blocks;
        _top = 0;
        Arrange();
    }

    /// <summary>Shows blocks that took the place of those shown, without scrolling back.</summary>
    public void Replace(IReadOnlyList<Block> blocks)
    {
        _blocks = blocks;
        Arrange();
    }

    protected override void OnViewportChanged(DrawEventArgs e)
    {
        base.OnViewportChanged(e);
        Arrange();
    }

    /// <summary>Scrolls by a page, from where the cursor is elsewhere; false for another key.</summary>
    public bool Page(Key key) => key.KeyCode is KeyCode.PageUp or KeyCode.PageDown && OnKeyDown(key);

    protected override bool OnKeyDown(Key key)
    {
        var page = Math.Max(1, Viewport.Height - 1);
        int? lines = key.KeyCode switch
        {
            KeyCode.CursorUp => -1,
            KeyCode.CursorDown => 1,
            KeyCode.PageUp => -page,
            KeyCode.PageDown => page,
            KeyCode.Home => -_rows.Count,
            KeyCode.End => _rows.Count,
            _ => null,
        };
        return lines is { } by && Scroll(by);
    }

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (mouse.Position is { } at && at.X >= Viewport.Width - 1 && Bar.Pressed(mouse.Flags, at.Y) is { } top)
            return Scroll(top - _top);
        if (mouse.Flags.HasFlag(MouseFlags.WheeledDown))
            return Scroll(3);
        return mouse.Flags.HasFlag(MouseFlags.WheeledUp) && Scroll(-3);
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        for (var line = 0; line < Viewport.Height && _top + line < _rows.Count; line++)
        {
            var column = 0;
            foreach (var part in _rows[_top + line])
            {
                Draw(part, column, line);
                column += ColumnWidth() + Gutter;
            }
        }

        SetAttributeForRole(HasFocus ? Style.Selected : Style.Text);
        for (var line = 0; Bar.IsNeeded && line < Viewport.Height; line++)
            if (Bar.At(line) is not ' ' and var sign)
                AddStr(Viewport.Width - 1, line, sign.ToString());
        return true;
    }

    private EdgeBar Bar => new(_top, _rows.Count, Viewport.Height);

    private int ColumnWidth() => _isSideBySide ? (Viewport.Width - 2 - Gutter) / 2 : Viewport.Width - 2;

    private void Arrange()
    {
        if (Viewport.Width <= 0)
            return;
        _isSideBySide = false;
        _rows = [.. Lines(_blocks, ColumnWidth()).Select(line => new[] { line })];
        _isSideBySide = MaySpread && _blocks.Count > 1 && Viewport.Width >= BroadFrom
            && _rows.Count > Viewport.Height;
        if (_isSideBySide)
        {
            var width = ColumnWidth();
            var left = Lines(_blocks.Take(1), width).ToList();
            var right = Lines(_blocks.Skip(1), width).ToList();
            _rows = [.. Enumerable.Range(0, Math.Max(left.Count, right.Count))
                .Select(i => new[] { At(left, i), At(right, i) })];
        }

        Scroll(0);
    }

    private static Line At(List<Line> lines, int i) => i < lines.Count ? lines[i] : Line.Empty;

    /// <summary>The label of a fact recedes behind its value, and pictures and marks stand out.</summary>
    private void Draw(Line line, int column, int row)
    {
        var text = UserText.Shown(line.Text);
        var labels = Math.Min(line.Labels, text.Length);
        SetAttributeForRole(line.IsHeading ? Style.Heading : Style.Label);
        AddStr(column, row, line.IsHeading ? text : text[..labels]);
        if (line.IsHeading)
            return;
        foreach (var (part, at, role) in Ink.Parts(text[labels..]))
        {
            SetAttributeForRole(role);
            AddStr(column + labels + at, row, part);
        }
    }

    private static IEnumerable<Line> Lines(IEnumerable<Block> blocks, int width)
    {
        var isFirst = true;
        foreach (var block in blocks)
        {
            if (!isFirst)
                yield return Line.Empty;
            isFirst = false;
            if (block.Heading.Length > 0)
                foreach (var line in Paragraph.Of(block.Heading, width))
                    yield return new(line, true, 0);
            foreach (var line in block.Lines(width))
                yield return new(line, false, block.Labels);
        }
    }

    private bool Scroll(int by)
    {
        _top = Math.Clamp(_top + by, 0, Math.Max(0, _rows.Count - Viewport.Height));
        SetNeedsDraw();
        return true;
    }

    /// <summary>A line of a block.</summary>
    private readonly record struct Line(string Text, bool IsHeading, int Labels)
    {
        public static Line Empty { get; } = new("", false, 0);
    }
}
