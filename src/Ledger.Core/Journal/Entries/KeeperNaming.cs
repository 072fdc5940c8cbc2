namespace Ledger.Core.Journal.Entries;

/// <summary>A negative turns out to be worth printing.</summary>
public sealed record KeeperNaming : Entry
{
    /// <summary>The number of the negative, such as 2025-014, or of the sheet, such as #12.</summary>
    public required string Negative { get; init; }

    /// <inheritdoc/>
    public override string Kind => "keeper";
}
