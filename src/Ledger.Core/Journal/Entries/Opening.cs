namespace Ledger.Core.Journal.Entries;

/// <summary>A sealed box or bottle is opened; its life since opening begins.</summary>
public sealed record Opening : Entry
{
    /// <summary>The container's code; or an item's, for the sealed container of it used first.</summary>
    public required string Container { get; init; }

    /// <summary>The batch the container must be of, when an item is named; may be empty.</summary>
    public string Batch { get; init; } = "";

    /// <summary>
    /// How many sealed envelopes of the same size are in it, when they are kept apart; null for a box without
    /// envelopes.
    /// </summary>
    public int? Envelopes { get; init; }

    /// <inheritdoc/>
    public override string Kind => "opening";
}
