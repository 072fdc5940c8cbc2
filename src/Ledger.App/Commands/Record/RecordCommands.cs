using System.CommandLine;
using Ledger.App.Wiring;

namespace Ledger.App.Commands.Record;

/// <summary>record: one thing that happened.</summary>
internal sealed class RecordCommands : Command
{
    public RecordCommands(Workbench bench)
        : base("record", "Record one thing that happened, and see every bottle, box and bath before and after.")
    {
        Subcommands.Add(new RecordReceipt(bench));
        Subcommands.Add(new RecordOpening(bench));
        Subcommands.Add(new RecordBath(bench));
        Subcommands.Add(new RecordSession(bench));
        Subcommands.Add(new RecordPlan(bench));
        Subcommands.Add(new RecordPlanEnding(bench));
        Subcommands.Add(new RecordDiscard(bench));
        Subcommands.Add(new RecordCount(bench));
        Subcommands.Add(new RecordCorrection(bench));
        Subcommands.Add(new RecordItem(bench));
        Subcommands.Add(new RecordProcess(bench));
        Subcommands.Add(new RecordSetting(bench));
    }
}
