namespace Ledger.App.Commands.Show;

/// <summary>show: the ledger's readings.</summary>
internal sealed class ShowCommands : Command
{
    private static readonly Branch[] _all =
    [
        new("today", bench => new ShowToday(bench)),
        new("shelf", bench => new ShowShelf(bench)),
        new("baths", bench => new ShowBaths(bench)),
        new("holders", bench => new ShowHolders(bench)),
        new("sessions", bench => new ShowSessions(bench)),
        new("session", bench => new ShowSession(bench)),
        new("prints", bench => new ShowPrints(bench)),
        new("plans", bench => new ShowPlans(bench)),
        new("costs", bench => new ShowCosts(bench)),
        new("prices", bench => new ShowPrices(bench)),
        new("reorder", bench => new ShowReorder(bench)),
        new("journal", bench => new ShowJournal(bench)),
        new("item", bench => new ShowItem(bench)),
        new("bath", bench => new ShowBath(bench)),
        new("sheet", bench => new ShowSheet(bench)),
        new("sheets", bench => new ShowSheets(bench)),
        new("faults", bench => new ShowFaults(bench)),
        new("forgotten", bench => new ShowForgotten(bench)),
        new("formats", bench => new ShowFormats(bench)),
        new("jugs", bench => new ShowJugs(bench)),
        new("settings", bench => new ShowSettings(bench)),
    ];

    public ShowCommands(Workbench bench)
        : base("show", "Show what needs you, the shelf, the baths, the sessions, the costs, the journal.") =>
        Branch.AddTo(this, bench, _all);
}
