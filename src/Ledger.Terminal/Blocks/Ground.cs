using System.Text;
using Terminal.Gui.Drawing;

namespace Ledger.Terminal.Blocks;

/// <summary>
/// What a view that holds others clears before it is drawn. The library clears all of it, and each view in it clears
/// its own part once more: most of what a screen costs.
/// </summary>
internal static class Ground
{
    private static readonly Rune Blank = new(' ');

    /// <summary>Clears what no view in it covers; true: nothing more is to be cleared.</summary>
    public static bool Clear(View view)
    {
        var bare = new Region(view.Viewport with { X = 0, Y = 0 });
        foreach (var inside in view.SubViews.Where(inside => inside.Visible))
            bare.Exclude(inside.Frame);
        view.SetAttributeForRole(VisualRole.Normal);
        foreach (var part in bare.GetRectangles())
            view.FillRect(part, Blank);
        return true;
    }
}
