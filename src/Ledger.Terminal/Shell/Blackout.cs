using Ledger.Terminal.Themes;

namespace Ledger.Terminal.Shell;

/// <summary>
/// The whole screen black, since its light fogs film. A touched key or a pushed mouse must not light it up again: one
/// key does, which is pressed on purpose, and nothing else.
/// </summary>
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

    /// <summary>The key that lights the screen up again.</summary>
    public static Key Relight => Key.L.WithCtrl;

    /// <summary>Said before the screen goes black, and in the help.</summary>
    public const string Warning =
        "Ctrl+L lights the screen up again; no other key and no click does. A black screen still glows: leave it "
            + "outside, or cover it.";

    protected override bool OnKeyDown(Key key)
    {
        if (key == Relight)
            _end();
        return true;
    }

    protected override bool OnMouseEvent(Mouse mouse) => true;
}
