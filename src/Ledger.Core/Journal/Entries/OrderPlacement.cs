using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Entries;

/// <summary>Packs of one or several items are ordered. What is on order is not stock yet.</summary>
public sealed record OrderPlacement : Entry
{
    /// <summary>The order's name; a delivery names it when it comes.</summary>
    public required string Order { get; init; }

    /// <summary>What is ordered, each item once.</summary>
    public required IReadOnlyList<OrderedPacks> Lines { get; init; }

    /// <summary>Where it is ordered.</summary>
    public string Supplier { get; init; } = "";

    /// <summary>Whether it is paid in advance.</summary>
    public bool IsPrepaid { get; init; }

    /// <inheritdoc/>
    public override string Kind => "order";
}

/// <summary>Packs of one item in an order.</summary>
public sealed record OrderedPacks
{
    /// <summary>The item's code.</summary>
    public required string Item { get; init; }

    /// <summary>How many packs.</summary>
    public required int Packs { get; init; }

    /// <summary>The price of one pack.</summary>
    public Money Price { get; init; }

    /// <summary>The day it is expected; null for the item's lead time from the order on.</summary>
    public LocalDate? ExpectedOn { get; init; }

    /// <summary>Whether the supplier has said that it comes later, when there is some again.</summary>
    public bool IsBackOrdered { get; init; }
}
