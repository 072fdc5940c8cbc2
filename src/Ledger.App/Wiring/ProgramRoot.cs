namespace Ledger.App.Wiring;

/// <summary>The root of all commands, and what they work with.</summary>
internal sealed class ProgramRoot(Workbench bench, string purpose) : RootCommand(purpose)
{
    /// <summary>What the commands work with.</summary>
    public Workbench Bench => bench;
}
