using System.CommandLine;
using Ledger.App.Wiring;
using Ledger.Core.Journal.Kinds;

namespace Ledger.App.Commands.Record;

/// <summary>record: one thing that happened. Each kind of entry is a command, made from its description.</summary>
internal sealed class RecordCommands : Command
{
    public RecordCommands(Workbench bench)
        : base("record", "Record what happened, and see every bottle, box and bath before and after.")
    {
        foreach (var kind in EntryKinds.All)
            Subcommands.Add(kind.Name switch
            {
                "session" => new RecordSession(bench),
                "plan" => new RecordPlan(bench),
                "amendment" => new RecordAmendment(bench),
                _ => new RecordKind(bench, kind),
            });
    }
}
