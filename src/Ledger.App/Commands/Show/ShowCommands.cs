using System.CommandLine;
using Ledger.App.Wiring;

namespace Ledger.App.Commands.Show;

/// <summary>show: the ledger's readings.</summary>
internal sealed class ShowCommands : Command
{
    public ShowCommands(Workbench bench)
        : base("show", "Show what needs you, the shelf, the baths, the sessions, the costs, the journal.")
    {
        Subcommands.Add(new ShowToday(bench));
        Subcommands.Add(new ShowShelf(bench));
        Subcommands.Add(new ShowBaths(bench));
        Subcommands.Add(new ShowHolders(bench));
        Subcommands.Add(new ShowSessions(bench));
        Subcommands.Add(new ShowSession(bench));
        Subcommands.Add(new ShowPrints(bench));
        Subcommands.Add(new ShowPlans(bench));
        Subcommands.Add(new ShowCosts(bench));
        Subcommands.Add(new ShowPrices(bench));
        Subcommands.Add(new ShowReorder(bench));
        Subcommands.Add(new ShowJournal(bench));
        Subcommands.Add(new ShowItem(bench));
        Subcommands.Add(new ShowBath(bench));
        Subcommands.Add(new ShowSheet(bench));
        Subcommands.Add(new ShowSheets(bench));
        Subcommands.Add(new ShowFaults(bench));
        Subcommands.Add(new ShowForgotten(bench));
        Subcommands.Add(new ShowFormats(bench));
        Subcommands.Add(new ShowJugs(bench));
        Subcommands.Add(new ShowSettings(bench));
    }
}
