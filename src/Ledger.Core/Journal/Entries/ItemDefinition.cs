using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Entries;

/// <summary>
/// An item's settings, for a new item or in place of those it had. What happened before keeps what it was posted with.
/// </summary>
public sealed record ItemDefinition : Definition
{
    /// <summary>The item with all its settings.</summary>
    public required Item Item { get; init; }

    /// <inheritdoc/>
    public override string Kind => "item";
}
