using Ledger.Terminal.Themes;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace Ledger.Terminal.Shell;

/// <summary>The whole screen black, since its light fogs film, until any key is pressed.</summary>
internal sealed class Blackout : View
{
    private readonly Action _end;

    public Blackout(Action end)
    {
        _end = end;
        Width = Dim.Fill();
        Height = Dim.Fill();
        CanFocus = true;
        SetScheme(Theme.Dark);
    }

    protected override bool OnKeyDown(Key key)
    {
        _end();
        return true;
    }

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (mouse.IsSingleClicked)
            _end();
        return true;
    }
}
