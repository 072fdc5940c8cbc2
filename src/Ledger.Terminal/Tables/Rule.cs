using Terminal.Gui.Drawing;
using Terminal.Gui.ViewBase;

namespace Ledger.Terminal.Tables;

/// <summary>A thin line between two panes, in the direction of its longer side.</summary>
internal sealed class Rule : View
{
    protected override bool OnDrawingContent(DrawContext? context)
    {
        SetAttributeForRole(VisualRole.Normal);
        if (Viewport.Width > 1)
            AddStr(0, 0, new string('─', Viewport.Width));
        else
            for (var row = 0; row < Viewport.Height; row++)
                AddStr(0, row, "│");
        return true;
    }
}
