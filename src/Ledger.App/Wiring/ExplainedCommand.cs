using System.CommandLine;

namespace Ledger.App.Wiring;

/// <summary>A command whose own help tells more than the one line that stands in a list of commands.</summary>
internal abstract class ExplainedCommand(string name, string summary, string details) : Command(name, summary)
{
    /// <summary>What its own help adds: how it works, and an example.</summary>
    public string Details => details;
}
