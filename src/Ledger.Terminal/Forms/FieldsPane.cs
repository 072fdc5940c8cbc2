using Ledger.Terminal.Blocks;
using Ledger.Terminal.Themes;

namespace Ledger.Terminal.Forms;

/// <summary>
/// The rows of a form. They scroll with the cursor, and a bar at the edge says that there is more above or below.
/// </summary>
internal sealed class FieldsPane : View
{
    private int _rows;
    private int _row;

    public FieldsPane() => CanFocus = true;

    /// <summary>
    /// Says how many rows there are. The height would do for the size of the content, but then nothing could be
    /// scrolled.
    /// </summary>
    public void Hold(int rows)
    {
        _rows = rows;
        SetContentHeight(rows);
        Reveal(Math.Min(_row, rows - 1));
    }

    /// <summary>Scrolls no further than it takes to show the row, now and whenever the height changes.</summary>
    public void Reveal(int row)
    {
        _row = row;
        if (Viewport.Height <= 0)
            return;
        var top = Math.Min(Viewport.Y, Math.Max(0, _rows - Viewport.Height));
        top = Math.Clamp(top, Math.Max(0, row - Viewport.Height + 1), row);
        if (top != Viewport.Y)
            Viewport = Viewport with { Y = top };
        SetNeedsDraw();
    }

    protected override void OnViewportChanged(DrawEventArgs e)
    {
        base.OnViewportChanged(e);
        if (e.OldViewport.Height != e.NewViewport.Height)
            Reveal(_row);
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        SetAttributeForRole(Style.Text);
        var bar = new EdgeBar(Viewport.Y, _rows, Viewport.Height);
        for (var line = 0; line < bar.Height; line++)
            if (bar.At(line) is not ' ' and var sign)
                AddStr(Viewport.Width - 1, line, sign.ToString());
        return true;
    }
}
