namespace Ledger.Core.Journal.Entries;

/// <summary>Something may be wrong with a bath, a box, a bottle, or all that bears a number: none of it is used until
/// that is cleared.</summary>
public sealed record SuspicionRaising : Entry
{
    /// <summary>A bath, a box or bottle such as syrup/2, or the emulsion or batch number of a delivery.</summary>
    public required string What { get; init; }

    /// <summary>Why.</summary>
    public required string Reason { get; init; }

    /// <summary>The item whose number it is, where several bear the same; null where only one does.</summary>
    public string? Item { get; init; }

    /// <inheritdoc/>
    public override string Kind => "suspicion";
}

/// <summary>What was under suspicion is in order, and is used again.</summary>
public sealed record SuspicionClearing : Entry
{
    /// <summary>What was under suspicion.</summary>
    public required string What { get; init; }

    /// <summary>What showed that it is in order.</summary>
    public required string Reason { get; init; }

    /// <summary>The item whose number it is, where several bear the same; null where only one does.</summary>
    public string? Item { get; init; }

    /// <inheritdoc/>
    public override string Kind => "clearance";
}
