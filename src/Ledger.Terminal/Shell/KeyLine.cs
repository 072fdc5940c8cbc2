using Ledger.Terminal.Pages;
using Ledger.Terminal.Themes;

namespace Ledger.Terminal.Shell;

/// <summary>
/// A line of keys and what they do; a click on one presses it. Where the line is full, the keys stand closer; where
/// they do not all fit, its end says that the help has more.
/// </summary>
/// <param name="press">Presses a key.</param>
internal sealed class KeyLine(Action<Key> press) : View
{
    private static readonly KeyHint More = new(Key.F1, "F1", "more");
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

    protected override bool OnDrawingContent(DrawContext? context)
    {
        foreach (var (hint, column) in Placed())
        {
            SetAttributeForRole(hint.IsHere ? Style.Selected : Style.Key);
            AddStr(column, 0, hint.Name);
            if (!hint.IsHere)
                SetAttributeForRole(Style.Label);
            AddStr(column + hint.Name.Length, 0, " " + hint.Label);
        }

        return true;
    }

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (!mouse.IsSingleClicked || mouse.Position is not { } at)
            return false;
        var (hint,
            _) = Placed().FirstOrDefault(placed => at.X >= placed.Column && at.X < placed.Column + placed.Hint.Width);
        if (hint is not null)
            press(hint.Key);
        return hint is not null;
    }

    private List<(KeyHint Hint, int Column)> Placed()
    {
        if (End(_hints, 2) <= Viewport.Width)
            return At(_hints, 2);
        var shown = _hints.Count;
        while (shown > 0 && End(Shown(shown), 1) > Viewport.Width)
            shown--;
        return At(Shown(shown), 1);
    }

    /// <summary>
    /// The first ones; where the key of the help is among them, it says by itself that there is more.
    /// </summary>
    private IReadOnlyList<KeyHint> Shown(int count) =>
        count == _hints.Count || _hints.Take(count).Any(hint => hint.Key == More.Key)
            ? [.. _hints.Take(count)] : [.. _hints.Take(count), More];

    private static int End(IReadOnlyList<KeyHint> hints, int gap) =>
        1 + hints.Sum(hint => hint.Width) + gap * Math.Max(0, hints.Count - 1);

    private static List<(KeyHint Hint, int Column)> At(IReadOnlyList<KeyHint> hints, int gap)
    {
        var (placed, column) = (new List<(KeyHint, int)>(), 1);
        foreach (var hint in hints)
        {
            placed.Add((hint, column));
            column += hint.Width + gap;
        }

        return placed;
    }
}
