using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Shell;

/// <summary>What a screen is for and what its keys do.</summary>
internal sealed class HelpPage : Page
{
    /// <summary>Stands in every help.</summary>
    public const string Reminder =
        "Any light fogs panchromatic film, red light too; orthochromatic film and paper bear only the safelight that "
            + "their maker names, and a red screen is not one. Before film comes out, leave the screen outside or "
            + "cover it: a blank screen still glows. " + Blackout.Warning;

    private readonly Page _about;
    private readonly TextPane _text = new() { Width = Dim.Fill(), Height = Dim.Fill(), X = 1 };

    public HelpPage(Page page, IEnumerable<(string Name, string Meaning)> everywhere)
    {
        _about = page;
        var own = page.Actions.Select(key => (Name: key.Name.Length > 0 ? key.Name : $"F2 {key.Label}",
            Meaning: (string?)key.Meaning)).ToList();
        Add(_text);
        _text.Show(
        [
            Block.Of(page.Heading, page.Purpose.Take(1)),
            .. page.Example.Length == 0 ? Array.Empty<Block>() : [Block.Of("Example, in the demo year", page.Example)],
            .. page.Purpose.Count < 2 ? Array.Empty<Block>() : [Block.Of("More", page.Purpose.Skip(1))],
            .. own.Count == 0 ? Array.Empty<Block>() : [Block.Facts("Keys here", own)],
            Block.Facts("Keys everywhere", everywhere.Where(key => own.All(here => here.Name != key.Name))
                .Select(key => (key.Name, (string?)key.Meaning))),
            Block.Of("In the dark", Reminder),
            .. Words(page),
        ]);
    }

    /// <summary>The trade's words that the page uses, explained; `trayledger help` explains them too.</summary>
    private static IEnumerable<Block> Words(Page page)
    {
        var words = TradeWords.In([.. page.Purpose, .. page.Labels, .. page.Actions.Select(action => action.Meaning)])
            .ToList();
        return words.Count == 0 ? [] : [Block.Facts("Words", words.Select(term => (term.Word, (string?)term.Meaning)))];
    }

    public override string Heading => $"Help: {_about.Heading}";

    public override IReadOnlyList<string> Purpose => [];

    public override IReadOnlyList<ScreenAction> Actions => [];

    /// <summary>
    /// Over a form, digits and letters stay without a meaning, so that the form under the help is not left by mistake.
    /// </summary>
    public override bool TakesTyping => _about.TakesTyping;

    public override void Refresh()
    {
    }
}
