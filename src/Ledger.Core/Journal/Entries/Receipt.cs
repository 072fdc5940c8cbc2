using Ledger.Core.Costing;
using Ledger.Core.Measures;
using NodaTime;

namespace Ledger.Core.Journal.Entries;

/// <summary>A delivery of packs of one item; also the stock a ledger starts with.</summary>
public sealed record Receipt : Entry
{
    /// <summary>The item's code.</summary>
    public required string Item { get; init; }

    /// <summary>How many packs; a part of a pack (0.5) is an open one.</summary>
    public required decimal Packs { get; init; }

    /// <summary>The price of one pack.</summary>
    public Money Price { get; init; }

    /// <summary>Whether the price is that of the order, if it names one; <see cref="Price"/> is not looked at then.</summary>
    public bool TakesOrderPrice { get; init; }

    /// <summary>What is taken off for all packs together.</summary>
    public Money Discount { get; init; }

    /// <summary>This line's share of the shipping.</summary>
    public Money Shipping { get; init; }

    /// <summary>This line's share of duty and tax.</summary>
    public Money Duty { get; init; }

    /// <summary>The currency the amounts are in (ISO 4217); null for the ledger's own.</summary>
    public string? Currency { get; init; }

    /// <summary>What one unit of that currency is worth in the ledger's own; needed when they differ.</summary>
    public decimal? Rate { get; init; }

    /// <summary>The date printed on the packs.</summary>
    public LocalDate? ExpiresOn { get; init; }

    /// <summary>The maker's batch or emulsion number.</summary>
    public string Batch { get; init; } = "";

    /// <summary>The order that this delivers, in whole or in part; null when none was recorded.</summary>
    public string? Order { get; init; }

    /// <summary>Where it is kept.</summary>
    public string Storage { get; init; } = "";

    /// <summary>What the delivery cost on the shelf.</summary>
    public LandedCost Landed => new(Price, Packs, Discount, Shipping, Duty, Rate ?? 1);

    /// <inheritdoc/>
    public override string Kind => "receipt";
}
