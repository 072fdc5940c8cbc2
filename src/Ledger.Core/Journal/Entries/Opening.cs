namespace Ledger.Core.Journal.Entries;

/// <summary>A sealed box or bottle is opened; its life since opening begins.</summary>
public sealed record Opening : Entry
{
    /// <summary>The container's code; or an item's, for the sealed container of it that is reached for first.</summary>
    public required string Container { get; init; }

    /// <summary>The batch the container must be of, when an item is named; may be empty.</summary>
    public string Batch { get; init; } = "";

    /// <inheritdoc/>
    public override string Kind => "opening";
}
