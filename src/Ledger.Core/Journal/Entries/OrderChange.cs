using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Entries;

/// <summary>
/// What becomes of an order before it comes: another day, a back-order, other packs or price. What is null stays as it
/// was.
/// </summary>
public sealed record OrderChange : Entry
{
    /// <summary>The order's name.</summary>
    public required string Order { get; init; }

    /// <summary>The item whose line it is about; null for all that is still to come.</summary>
    public string? Item { get; init; }

    /// <summary>The day it is expected now.</summary>
    public LocalDate? ExpectedOn { get; init; }

    /// <summary>Whether it is back-ordered now.</summary>
    public bool? IsBackOrdered { get; init; }

    /// <summary>How many packs are ordered now, those that have come counted in; for one line only.</summary>
    public int? Packs { get; init; }

    /// <summary>What a pack costs now; for one line only.</summary>
    public Money? Price { get; init; }

    /// <inheritdoc/>
    public override string Kind => "order change";
}
