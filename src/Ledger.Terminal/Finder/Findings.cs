using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pages;
using Ledger.Terminal.Screens;
using Ledger.Terminal.Tables;

namespace Ledger.Terminal.Finder;

/// <summary>Everything that can be done on any screen, and all that has a name, from where the user is.</summary>
internal sealed class Findings
{
    private const int SessionsRead = 200;

    /// <summary>More is not shown; another letter narrows it.</summary>
    private const int MostFound = 500;

    private readonly ILedger _ledger;
    private readonly Page _page;
    private readonly List<Finding> _all;
    private List<Finding>? _named;
    private Holdings? _holdings;

    /// <summary>Gathers what can be found.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="page">The page the user is on; what can be done there comes first.</param>
    /// <param name="screens">The main screens.</param>
    /// <param name="common">What can be done everywhere.</param>
    public Findings(ILedger ledger, Page page, IReadOnlyList<TableModel> screens, CommonKeys common)
    {
        _ledger = ledger;
        _page = page;
        _all =
        [
            .. page.Actions.Select(action => Here(action, page.Heading)),
            .. page.TakesTyping ? [] : Everywhere(screens, common),
        ];
    }

    /// <summary>What fits the typed letters, the nearest first; without letters all that can be done.</summary>
    public IReadOnlyList<Finding> For(string typed) => typed.Trim() is { Length: > 0 } words
        ? [.. _all.Concat(Named(words)).Select(one => (One: one, Distance: WordMatch.Of(words, one)))
            .Where(one => one.Distance is not null).OrderBy(one => one.Distance).Take(MostFound)
            .Select(one => one.One)]
        : _all;

    private IEnumerable<Finding> Everywhere(IReadOnlyList<TableModel> screens, CommonKeys common)
    {
        var shown = (_page as TablePage)?.Model;
        var others = MainScreens.Others(_ledger);
        foreach (var action in common.Work.Where(action => _page.Actions.All(own => own.Key != action.Key)))
            yield return Here(action, "");
        foreach (var digit in common.Screens)
            yield return new(digit.Label, "", digit.Name, digit.Meaning, () => [digit.Press(-1)]);
        foreach (var other in others)
            yield return new(other.Name, "", "", ScreenText.Sentence(other.Purpose[0]), () => [new TableStep(other)]);
        foreach (var screen in screens.Where(screen => screen != shown))
            foreach (var action in screen.Actions)
                yield return On(screen, action, new ScreenStep(screen.Name, null));
        foreach (var other in others.Where(other => other.Name != shown?.Name))
            foreach (var action in other.Actions)
                yield return On(other, action, new TableStep(other));
    }

    private Finding Here(ScreenAction action, string place) =>
        new(action.Label, place, action.Name, action.Meaning, () => [action.Press(_page.Row)])
        {
            FindBy = action.FindBy,
        };

    /// <summary>The screen comes up first; then the action applies to what is selected there.</summary>
    private static Finding On(TableModel screen, ScreenAction action, Step up)
    {
        return new(action.Label, screen.Name, action.Name, action.Meaning, Steps) { FindBy = action.FindBy };

        IEnumerable<Step?> Steps()
        {
            yield return up;
            yield return screen.Actions.FirstOrDefault(one => one.Label == action.Label)?.Press(screen.SelectedRow);
        }
    }

    /// <summary>What has a name; it is read only once something is typed.</summary>
    private IEnumerable<Finding> Named(string words)
    {
        if (_page.TakesTyping)
            return [];
        var holdings = _holdings ??= _ledger.HoldingsOn(_ledger.Today);
        return [.. Catalogued(holdings), .. _named ??= [.. Names(holdings)], .. Sheet(words)];
    }

    /// <summary>What there may be thousands of is not kept from one letter to the next.</summary>
    private static IEnumerable<Finding> Catalogued(Holdings holdings)
    {
        foreach (var item in holdings.ItemNames)
            yield return Named(
                item.Code, "Shelf", $"{item.Kind.Name()}: {item.Name}", new ScreenStep("Shelf", item.Code));
        foreach (var holder in holdings.Film.Names)
            yield return Named(
                holder.Code, "Holders", $"holder {holder.Format}", new ScreenStep("Holders", holder.Code));
    }

    private IEnumerable<Finding> Names(Holdings holdings)
    {
        foreach (var bath in holdings.Baths)
            yield return Named(bath.Code, "Baths", $"bath of {bath.Item}", new ScreenStep("Baths", bath.Code));
        foreach (var box in holdings.Film.ExposedBoxes)
            yield return Named(box.Code, "Holders", "box of exposed sheets", new ScreenStep("Holders", box.Code));
        foreach (var container in holdings.Containers)
            yield return Named(
                container.Code, $"Shelf: {container.Lot.Item}", "box or bottle",
                new TableStep(new ContainersModel(_ledger, container.Lot.Item) { SelectedId = container.Code }));
        foreach (var jug in holdings.Jugs)
            yield return Named(
                jug.Code, "Waste jugs", $"jug for {jug.Contents}",
                new TableStep(new JugsModel(_ledger) { SelectedId = jug.Code }));
        foreach (var plan in holdings.Plans)
            yield return Named(
                plan.Name, "Plan", $"plan for {Dates.Text(plan.On)}",
                new TableStep(new PlansModel(_ledger) { SelectedId = plan.Name }));
        foreach (var process in holdings.Processes)
            yield return Named(
                process.Name, "Processes", "process",
                new TableStep(new ProcessStepsModel(_ledger, process.Name)));
        foreach (var session in _ledger.Sessions(_ledger.Today, null, SessionsRead))
            yield return Named(
                session.Session, "Sessions", $"session of {Dates.Text(session.Date)}",
                new ScreenStep("Sessions", session.Session));
    }

    /// <summary>
    /// A sheet or a negative, by its whole name: among those of its session, or in its holder or box.
    /// </summary>
    private IEnumerable<Finding> Sheet(string words)
    {
        if (_ledger.Story(words, _ledger.Today) is not { } story)
            yield break;
        var id = story.Id.ToString();
        if (story.Development is { } developed)
            yield return Named(
                words, $"Session {developed.Session}", $"sheet {id} of {story.Item}",
                new TableStep(new SessionSheetsModel(_ledger, developed.Session) { SelectedId = id }));
        else if (story.Side is { } side)
            yield return Named(
                words, "Holders", $"sheet {id} of {story.Item}, {story.Place}",
                new TableStep(new SheetsModel(_ledger, Holder(side, story.Id)) { SelectedId = side }));
    }

    private string Holder(string side, SheetId id)
    {
        var film = _ledger.HoldingsOn(_ledger.Today).Film;
        return film.Sheets.FirstOrDefault(sheet => sheet.Id == id) is { } sheet && film.ExposedBox(sheet.At) is { } box
            ? box.Code
            : film.Side(side)!.Holder;
    }

    private static Finding Named(string name, string place, string meaning, Step step) =>
        new(name, place, "", meaning, () => [step]);
}
