using Ledger.Core.Sessions;

namespace Ledger.Core.Journal;

/// <summary>Processes as they were: a session keeps the version it was run with.</summary>
public interface IProcessHistory
{
    /// <summary>A version of a process; null when there never was one.</summary>
    Process? ProcessVersion(string name, int version);
}
