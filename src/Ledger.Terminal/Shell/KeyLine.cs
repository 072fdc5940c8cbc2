using Ledger.Terminal.Tables;
using Terminal.Gui.Drawing;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace Ledger.Terminal.Shell;

/// <summary>A line of keys and what they do; a click on one presses it. Where the line is full, the keys stand closer.</summary>
/// <param name="press">Presses a key.</param>
internal sealed class KeyLine(Action<Key> press) : View
{
    private const int Apart = 2;
    private IReadOnlyList<KeyHint> _hints = [];

    /// <summary>What the line shows.</summary>
    public IReadOnlyList<KeyHint> Hints
    {
        get => _hints;
        set
        {
            _hints = value;
            SetNeedsDraw();
        }
    }

    private int Gap => 1 + _hints.Sum(hint => hint.Width) + Apart * (_hints.Count - 1) <= Viewport.Width ? Apart : 1;

    protected override bool OnDrawingContent(DrawContext? context)
    {
        var column = 1;
        foreach (var hint in _hints)
        {
            if (column + hint.Width > Viewport.Width)
                break;
            SetAttributeForRole(hint.IsHere ? VisualRole.Focus : VisualRole.HotNormal);
            AddStr(column, 0, hint.Name);
            if (!hint.IsHere)
                SetAttributeForRole(VisualRole.Normal);
            AddStr(column + hint.Name.Length, 0, " " + hint.Label);
            column += hint.Width + Gap;
        }

        return true;
    }

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (!mouse.IsSingleClicked || mouse.Position is not { } at)
            return false;
        var column = 1;
        foreach (var hint in _hints)
        {
            if (at.X >= column && at.X < column + hint.Width)
            {
                press(hint.Key);
                return true;
            }

            column += hint.Width + Gap;
        }

        return false;
    }
}

/// <summary>A key on the line.</summary>
/// <param name="Key">The key.</param>
/// <param name="Name">As it is written.</param>
/// <param name="Label">What it does.</param>
/// <param name="IsHere">Whether it leads to where the user is.</param>
internal sealed record KeyHint(Key Key, string Name, string Label, bool IsHere = false)
{
    /// <summary>A screen's key.</summary>
    public static KeyHint Of(ScreenKey key) => new(key.Key, key.Name, key.Label);

    /// <summary>The columns it takes.</summary>
    public int Width => Name.Length + 1 + Label.Length;
}
