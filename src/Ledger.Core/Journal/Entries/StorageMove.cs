namespace Ledger.Core.Journal.Entries;

/// <summary>A box or bottle is kept somewhere else from now on: freezer, fridge, shelf…</summary>
public sealed record StorageMove : Entry
{
    /// <summary>The container's code.</summary>
    public required string Container { get; init; }

    /// <summary>Where it is kept now.</summary>
    public required string To { get; init; }

    /// <summary>
    /// The first day on which it may be opened after the cold; null for what the setting thaw-hours gives.
    /// </summary>
    public LocalDate? OpensFrom { get; init; }

    /// <inheritdoc/>
    public override string Kind => "storage";
}
