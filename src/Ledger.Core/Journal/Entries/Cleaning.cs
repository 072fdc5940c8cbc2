namespace Ledger.Core.Journal.Entries;

/// <summary>Holders were cleaned.</summary>
public sealed record Cleaning : Entry
{
    /// <summary>The holders.</summary>
    public required IReadOnlyList<string> Holders { get; init; }

    /// <summary>Whether they were put into bags afterwards.</summary>
    public bool IsBagged { get; init; }

    /// <inheritdoc/>
    public override string Kind => "cleaning";
}
