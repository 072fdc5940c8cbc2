using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pages;
using Ledger.Terminal.Themes;

namespace Ledger.Terminal.Forms;

/// <summary>What can be chosen, as a list under the field while it is typed in; a click takes a row.</summary>
/// <param name="take">Takes a choice.</param>
internal sealed class ChoiceList(Action<string> take) : View
{
    private const int MostRows = 6;
    private IReadOnlyList<(string Name, string Note)> _rows = [];
    private int _here;
    private int _top;

    /// <summary>
    /// Shows what a field can be; nothing where it can be anything, or where only what stands in it fits.
    /// </summary>
    /// <param name="field">The field.</param>
    /// <param name="column">Where its box begins.</param>
    /// <param name="row">The row under it.</param>
    /// <param name="room">The rows there are.</param>
    public void Open(FormField field, int column, int row, int room)
    {
        _rows = [.. field.Fitting().Where(name => name.Length > 0).Select(name => (name, field.NoteOf(name)))];
        _here = _rows.ToList().FindIndex(one => one.Name.Equals(field.Text.Trim(), StringComparison.OrdinalIgnoreCase));
        var height = Math.Min(Math.Min(MostRows, _rows.Count), room);
        Visible = height > 0 && !(_rows.Count == 1 && _here == 0);
        if (!Visible)
            return;
        var names = _rows.Max(one => one.Name.Length);
        var wanted = 4 + names + 2 + _rows.Max(one => one.Note.Length);
        (Width, Height) = (Math.Min(wanted, Math.Max(10, SuperView!.Viewport.Width - 2)), height);
        (X, Y) = (Math.Max(0, Math.Min(column, SuperView.Viewport.Width - wanted)), row);
        _top = Math.Clamp(_top, Math.Max(0, _here - height + 1), Math.Max(0, Math.Max(_here, 0)));
        _top = Math.Min(_top, _rows.Count - height);
        SetNeedsLayout();
        SetNeedsDraw();
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        var names = _rows.Count == 0 ? 0 : _rows.Max(one => one.Name.Length);
        for (var line = 0; line < Viewport.Height && _top + line < _rows.Count; line++)
        {
            var (name, note) = _rows[_top + line];
            var isHere = _top + line == _here;
            var text = UserText.Shown($"{(isHere ? ">" : " ")} {name.PadRight(names)}  {note}");
            var mark = Bar.At(line);
            SetAttributeForRole(isHere ? Style.Title : Style.Selected);
            var whole = text.Length > Viewport.Width - 2 ? text[..Math.Max(0, Viewport.Width - 3)] + "…" : text;
            AddStr(0, line, whole.PadRight(Viewport.Width - 2) + mark + " ");
        }

        return true;
    }

    private EdgeBar Bar => new(_top, _rows.Count, Viewport.Height);

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (mouse.Position is { } pressed && pressed.X >= Viewport.Width - 2
            && Bar.Pressed(mouse.Flags, pressed.Y) is { } top)
            return Scroll(top);
        if (mouse.Flags.HasFlag(MouseFlags.WheeledDown) || mouse.Flags.HasFlag(MouseFlags.WheeledUp))
            return Scroll(_top + (mouse.Flags.HasFlag(MouseFlags.WheeledDown) ? 1 : -1));
        if (!mouse.IsSingleClicked || mouse.Position is not { } at || _top + at.Y >= _rows.Count)
            return false;
        if (Bar.IsNeeded && at.X >= Viewport.Width - 2)
            return true;
        take(_rows[_top + at.Y].Name);
        return true;
    }

    private bool Scroll(int top)
    {
        _top = Math.Clamp(top, 0, Math.Max(0, _rows.Count - Viewport.Height));
        SetNeedsDraw();
        return true;
    }
}
