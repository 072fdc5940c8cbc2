namespace Ledger.App.Commands.Plan;

/// <summary>plan: what is to come.</summary>
internal sealed class PlanCommands : Command
{
    public PlanCommands(Workbench bench)
        : base("plan", "Plan a session in the light: batches, trays, what is short, what it costs.") =>
            Subcommands.Add(new PlanSession(bench));
}
