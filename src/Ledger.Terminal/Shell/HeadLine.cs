using Ledger.Terminal.Pages;
using Ledger.Terminal.Themes;

namespace Ledger.Terminal.Shell;

/// <summary>
/// The screens' names at the head of the page, the one that is shown as a tab; a click on one goes there. Where there
/// is no room for all names, the others are their keys alone.
/// </summary>
/// <param name="press">Presses a key.</param>
internal sealed class HeadLine(Action<Key> press) : View
{
    private IReadOnlyList<KeyHint> _screens = [];
    private bool _isTyping;

    /// <summary>Shows the screens.</summary>
    /// <param name="screens">Their keys and names.</param>
    /// <param name="isTyping">Whether keys are typed, so that they lead nowhere.</param>
    public void Show(IReadOnlyList<KeyHint> screens, bool isTyping)
    {
        (_screens, _isTyping) = (screens, isTyping);
        SetNeedsDraw();
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        foreach (var (screen, column, isNamed) in Placed())
        {
            if (screen.IsHere)
            {
                SetAttributeForRole(Style.Selected);
                AddStr(column, 0, $" {screen.Label} ");
                continue;
            }

            SetAttributeForRole(_isTyping ? Style.Label : Style.Key);
            AddStr(column, 0, screen.Name);
            SetAttributeForRole(Style.Label);
            if (isNamed)
                AddStr(column + screen.Name.Length, 0, $" {screen.Label}");
        }

        return true;
    }

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (!mouse.IsSingleClicked || mouse.Position is not { } at)
            return false;
        var (screen, _, _) = Placed().LastOrDefault(placed => placed.Column <= at.X);
        if (screen is not null)
            press(screen.Key);
        return screen is not null;
    }

    private List<(KeyHint Screen, int Column, bool IsNamed)> Placed()
    {
        var (isNamed, gap) = Taken(true, 2) <= Viewport.Width
            ? (true, 2)
            : Taken(true, 1) <= Viewport.Width ? (true, 1) : (false, 2);
        var (placed, column) = (new List<(KeyHint, int, bool)>(), 0);
        foreach (var screen in _screens)
        {
            placed.Add((screen, column, isNamed));
            column += Taken(screen, isNamed) + gap;
        }

        return placed;
    }

    private int Taken(bool isNamed, int gap) =>
        _screens.Sum(screen => Taken(screen, isNamed)) + gap * (_screens.Count - 1);

    private static int Taken(KeyHint screen, bool isNamed) =>
        screen.IsHere || isNamed ? screen.Width : screen.Name.Length;
}
