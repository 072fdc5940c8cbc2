using System.CommandLine;
using Ledger.App.Wiring;
using Ledger.Core.Journal.Kinds;

namespace Ledger.App.Commands.Record;

/// <summary>record: one thing that happened.</summary>
internal sealed class RecordCommands : Command
{
    public RecordCommands(Workbench bench)
        : base("record", "Record one thing that happened, and see every bottle, box and bath before and after.")
    {
        Subcommands.Add(new RecordDelivery(bench));
        Subcommands.Add(new RecordOpening(bench));
        Subcommands.Add(new RecordDecanting(bench));
        Subcommands.Add(new RecordStockSolution(bench));
        Subcommands.Add(new RecordBath(bench));
        Subcommands.Add(new RecordLoad(bench));
        Subcommands.Add(new RecordExposure(bench));
        Subcommands.Add(new RecordUnload(bench));
        Subcommands.Add(new RecordRotation(bench));
        Subcommands.Add(new RecordTopUp(bench));
        Subcommands.Add(new RecordKind(bench, EntryKinds.Named("clearing-test")!));
        Subcommands.Add(new RecordObservation(bench));
        Subcommands.Add(new RecordIndicator(bench));
        Subcommands.Add(new RecordSilverTest(bench));
        Subcommands.Add(new RecordResidualTest(bench));
        Subcommands.Add(new RecordControlStrip(bench));
        Subcommands.Add(new RecordBathStorage(bench));
        Subcommands.Add(new RecordSession(bench));
        Subcommands.Add(new RecordPrintSession(bench));
        Subcommands.Add(new RecordPlan(bench));
        Subcommands.Add(new RecordPlanEnding(bench));
        Subcommands.Add(new RecordKeeper(bench));
        Subcommands.Add(new RecordDiscard(bench));
        Subcommands.Add(new RecordJugStart(bench));
        Subcommands.Add(new RecordJugFilling(bench));
        Subcommands.Add(new RecordJugHandover(bench));
        Subcommands.Add(new RecordKind(bench, EntryKinds.Named("count")!));
        Subcommands.Add(new RecordOrder(bench));
        Subcommands.Add(new RecordPriceRise(bench));
        Subcommands.Add(new RecordOrderTerms(bench));
        Subcommands.Add(new RecordUndo(bench));
        Subcommands.Add(new RecordHolder(bench));
        Subcommands.Add(new RecordCleaning(bench));
        Subcommands.Add(new RecordService(bench));
        Subcommands.Add(new RecordStorage(bench));
        Subcommands.Add(new RecordExposureIndex(bench));
        Subcommands.Add(new RecordItem(bench));
        Subcommands.Add(new RecordFormat(bench));
        Subcommands.Add(new RecordProcess(bench));
        Subcommands.Add(new RecordSetting(bench));
    }
}
