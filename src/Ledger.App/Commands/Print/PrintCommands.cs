namespace Ledger.App.Commands.Print;

/// <summary>print: the paper that goes into the dark, and what is kept beside the light.</summary>
internal sealed class PrintCommands : Command
{
    public PrintCommands(Workbench bench)
        : base("print",
            "Print pages to read before lights-out: mixing sheet, labels, tally slip, wall card; and a cost report.")
    {
        Subcommands.Add(new PrintMixingSheet(bench));
        Subcommands.Add(new PrintBottleLabel(bench));
        Subcommands.Add(new PrintBoxLabel(bench));
        Subcommands.Add(new PrintTallySlip(bench));
        Subcommands.Add(new PrintWallCard(bench));
        Subcommands.Add(new PrintSleeveLabels(bench));
        Subcommands.Add(new PrintCostReport(bench));
        Subcommands.Add(new PrintTrace(bench));
        Subcommands.Add(new PrintCheckList(bench));
        Subcommands.Add(new PrintSheets(bench));
    }
}
