using Terminal.Gui.Drawing;
using Terminal.Gui.ViewBase;

namespace Ledger.Terminal.Shell;

/// <summary>The top line: where the user is, at the right the day and the file.</summary>
internal sealed class TitleLine : View
{
    private string _left = "";
    private string _right = "";

    /// <summary>Changes what it says.</summary>
    public void Say(string left, string right)
    {
        (_left, _right) = (left, right);
        SetNeedsDraw();
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        SetAttributeForRole(VisualRole.HotNormal);
        AddStr(1, 0, _left);
        SetAttributeForRole(VisualRole.Normal);
        var room = Viewport.Width - _left.Length - 4;
        if (room > 8)
        {
            var right = _right.Length > room ? _right[..(room - 2)] + ".." : _right;
            AddStr(Viewport.Width - right.Length - 1, 0, right);
        }

        return true;
    }
}
