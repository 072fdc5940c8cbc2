using Terminal.Gui.Views;

namespace Ledger.Terminal.Quiet;

/// <summary>
/// A field that is typed in. The library's makes a menu for the mouse's right button each time it is gone to, which
/// takes longer than all else that a key does; what stands in that menu has keys.
/// </summary>
internal class QuietField : TextField
{
    protected override void OnHasFocusChanged(bool newHasFocus, View? previousFocusedView, View? view)
    {
        if (App?.Mouse.IsGrabbed(this) == true)
            App.Mouse.UngrabMouse();
        if (newHasFocus)
            SelectAll();
    }
}
