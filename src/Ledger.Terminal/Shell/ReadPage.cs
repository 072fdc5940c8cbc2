using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Shell;

/// <summary>A text over the whole page, to be scrolled and read.</summary>
internal sealed class ReadPage : Page
{
    private readonly ReadStep _step;

    /// <param name="step">What is read.</param>
    public ReadPage(ReadStep step)
    {
        _step = step;
        var text = new TextPane { X = 1, Width = Dim.Fill(), Height = Dim.Fill() };
        Add(text);
        text.Show(step.Blocks);
    }

    public override string Heading => _step.Title;

    public override IReadOnlyList<string> Purpose =>
        ["Everything there is to read of the row. The arrows scroll, Esc goes back."];

    public override IReadOnlyList<ScreenAction> Actions => [Copying(() => new(_step.Title, null, () => _step.Blocks))];

    /// <summary>What is read stays as it was when it was opened.</summary>
    public override void Refresh()
    {
    }
}
