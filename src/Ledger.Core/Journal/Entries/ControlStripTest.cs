namespace Ledger.Core.Journal.Entries;

/// <summary>A control strip was developed in a developer that is replenished.</summary>
public sealed record ControlStripTest : Entry
{
    /// <summary>The bath.</summary>
    public required string Bath { get; init; }

    /// <summary>What was read from the strip.</summary>
    public required string Result { get; init; }

    /// <summary>Whether that is within the user's limits.</summary>
    public required bool IsWithinLimits { get; init; }

    /// <inheritdoc/>
    public override string Kind => "control-strip";
}
