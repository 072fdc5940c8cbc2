using System.CommandLine;
using Ledger.App.Wiring;

namespace Ledger.App.Commands.Record;

/// <summary>record order: what is ordered, what the supplier says about it, and what is cancelled.</summary>
internal sealed class RecordOrder : Command
{
    public RecordOrder(Workbench bench)
        : base("order", "An order is placed, changed before it comes, or cancelled; a delivery with --order closes it.")
    {
        Subcommands.Add(new RecordOrderPlacement(bench));
        Subcommands.Add(new RecordOrderChange(bench));
        Subcommands.Add(new RecordOrderCancellation(bench));
    }
}
