using Ledger.Core.Sessions;

namespace Ledger.Core.Journal.Entries;

/// <summary>A session or a trip is planned for a day, or planned again under the same name. It moves nothing.</summary>
public sealed record PlannedSession : Entry
{
    /// <summary>The plan's name.</summary>
    public required string Plan { get; init; }

    /// <summary>The day it is planned for.</summary>
    public required LocalDate On { get; init; }

    /// <summary>Whether film is taken along to be exposed.</summary>
    public bool IsTrip { get; init; }

    /// <summary>What will be used.</summary>
    public required PlanRequest Request { get; init; }

    /// <inheritdoc/>
    public override string Kind => "plan";
}

/// <summary>A plan is given up, or a trip is over.</summary>
public sealed record PlanEnding : Entry
{
    /// <summary>The plan's name.</summary>
    public required string Plan { get; init; }

    /// <summary>Why: cancelled, rained off, done.</summary>
    public required string Reason { get; init; }

    /// <inheritdoc/>
    public override string Kind => "plan-ending";
}
