using Ledger.Terminal.Pictures;
using Ledger.Terminal.Themes;

namespace Ledger.Terminal.Shell;

/// <summary>
/// What just happened, or why something did not. It takes the lines that it needs, and none while there is nothing to
/// say.
/// </summary>
internal sealed class MessageLine : View
{
    private const int MostLines = 4;

    private string _said = "", _hint = "";

    /// <summary>The sentence.</summary>
    public string Sentence => $"{_said} {_hint}".TrimEnd();

    /// <summary>What can be done about it; empty for nothing.</summary>
    public string Hint => _hint;

    /// <summary>How many lines the sentence takes at a width.</summary>
    public int LinesAt(int width) => Sentence.Length == 0 ? 0 : Math.Clamp(Lines(width).Count, 1, MostLines);

    /// <summary>Says something else.</summary>
    /// <param name="sentence">What happened; of a very long sentence the end is cut off.</param>
    /// <param name="hint">What can be done about it, which is never cut off; empty for nothing.</param>
    public void Say(string sentence, string hint = "")
    {
        (_said, _hint) = (UserText.Shown(sentence), hint);
        SuperView?.SetNeedsLayout();
        SetNeedsDraw();
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        SetAttributeForRole(Style.Text);
        var row = 0;
        foreach (var line in Lines(Viewport.Width))
            AddStr(1, row++, line);
        return true;
    }

    private List<string> Lines(int width)
    {
        var lines = Paragraph.Of(Sentence, width - 2).ToList();
        if (lines.Count <= MostLines)
            return lines;
        var said = Paragraph.Of(_said, width - 2).ToList();
        return _hint.Length == 0 ? said[..MostLines] : [.. said[..(MostLines - 2)],
            $"{said[MostLines - 2].TrimEnd('.')} …", _hint];
    }
}
