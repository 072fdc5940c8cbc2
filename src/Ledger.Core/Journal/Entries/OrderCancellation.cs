namespace Ledger.Core.Journal.Entries;

/// <summary>What has not come of an order is cancelled.</summary>
public sealed record OrderCancellation : Entry
{
    /// <summary>The order's name.</summary>
    public required string Order { get; init; }

    /// <summary>The item whose line is cancelled; null for all that is still to come.</summary>
    public string? Item { get; init; }

    /// <summary>Why.</summary>
    public required string Reason { get; init; }

    /// <inheritdoc/>
    public override string Kind => "order cancellation";
}
