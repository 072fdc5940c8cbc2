using NodaTime;

namespace Ledger.Core.Journal.Entries;

/// <summary>What the supplier says about an order: another day, or a back-order. What is null stays as it was.</summary>
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

    /// <inheritdoc/>
    public override string Kind => "order change";
}
