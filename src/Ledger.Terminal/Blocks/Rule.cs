using Ledger.Terminal.Pictures;
using Ledger.Terminal.Themes;

namespace Ledger.Terminal.Blocks;

/// <summary>A thin line between two panes, in the direction of its longer side.</summary>
internal sealed class Rule : View
{
    /// <summary>Whether it is drawn thick: the keys go to the pane behind it.</summary>
    public bool IsStrong
    {
        get;
        set
        {
            field = value;
            SetNeedsDraw();
        }
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        SetAttributeForRole(IsStrong ? Style.Heading : Style.Label);
        if (Viewport.Width > 1)
            AddStr(0, 0, new string(IsStrong ? Signs.Here.Heavy : Signs.Here.Along, Viewport.Width));
        else
            for (var row = 0; row < Viewport.Height; row++)
                AddStr(0, row, (IsStrong ? Signs.Here.HeavyUpright : Signs.Here.Upright).ToString());
        return true;
    }
}
