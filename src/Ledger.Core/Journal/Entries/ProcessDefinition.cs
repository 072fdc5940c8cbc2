using Ledger.Core.Sessions;

namespace Ledger.Core.Journal.Entries;

/// <summary>A process's steps, for a new process or in place of those it had.</summary>
public sealed record ProcessDefinition : Definition
{
    /// <summary>The process's name.</summary>
    public required string Process { get; init; }

    /// <summary>The steps in order.</summary>
    public required IReadOnlyList<ProcessStep> Steps { get; init; }

    /// <inheritdoc/>
    public override string Kind => "process";
}
