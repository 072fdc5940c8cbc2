using Ledger.Core.Measures;
using Ledger.Terminal.Pictures;
using Ledger.Terminal.Themes;
using Terminal.Gui.Drawing;
using Terminal.Gui.ViewBase;

namespace Ledger.Terminal.Shell;

/// <summary>What just happened, or why something did not. It takes the lines that it needs, and none while there is nothing to say.</summary>
internal sealed class MessageLine : View
{
    private const int MostLines = 4;

    /// <summary>The sentence.</summary>
    public string Sentence { get; private set; } = "";

    /// <summary>How many lines the sentence takes at a width.</summary>
    public int LinesAt(int width) => Sentence.Length == 0 ? 0 : Math.Clamp(Paragraph.Of(Sentence, width - 2).Count(), 1, MostLines);

    /// <summary>Says something else.</summary>
    public void Say(string sentence)
    {
        Sentence = UserText.Shown(sentence);
        SuperView?.SetNeedsLayout();
        SetNeedsDraw();
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        SetAttributeForRole(Style.Text);
        var row = 0;
        foreach (var line in Paragraph.Of(Sentence, Viewport.Width - 2).Take(MostLines))
            AddStr(1, row++, line);
        return true;
    }
}
