using Ledger.Terminal.Pages;
using Ledger.Terminal.Themes;

namespace Ledger.Terminal.Forms;

/// <summary>A word in brackets that is pressed: "[ Save ]", or a tick "[x] Book the difference".</summary>
/// <param name="text">What it shows now.</param>
/// <param name="press">What pressing it does.</param>
/// <param name="enter">What Enter does where it is not the same.</param>
internal sealed class PressBox(Func<string> text, Action press, Action enter) : View
{
    /// <summary>The tick that it shows; null for a word that is pressed.</summary>
    public FormField? Field { get; init; }

    protected override bool OnKeyDown(Key key)
    {
        if (key == Key.Space)
            press();
        else if (key == Key.Enter)
            enter();
        else
            return false;
        SetNeedsDraw();
        return true;
    }

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (!mouse.IsSingleClicked)
            return false;
        press();
        SetNeedsDraw();
        return true;
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        SetAttributeForRole(HasFocus ? Style.Selected : Style.Text);
        AddStr(0, 0, text());
        return true;
    }
}
