using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Entries;

/// <summary>What arrived in one go: packs of one or several items; also the stock a ledger starts with.</summary>
public sealed record Delivery : Entry
{
    /// <summary>Its reference: the invoice's number, or whatever the user calls it; may be empty.</summary>
    public string Reference { get; init; } = "";

    /// <summary>
    /// What came; at least one line. What was paid for all of them together is shared by their value.
    /// </summary>
    public required IReadOnlyList<DeliveryLine> Lines { get; init; }

    /// <summary>What is taken off for all lines together.</summary>
    public Money Discount { get; init; }

    /// <summary>The shipping of all lines.</summary>
    public Money Shipping { get; init; }

    /// <summary>Duty and tax of all lines.</summary>
    public Money Duty { get; init; }

    /// <summary>The currency the amounts are in (ISO 4217); null for the ledger's own.</summary>
    public string? Currency { get; init; }

    /// <summary>What one unit of that currency is worth in the ledger's own; needed when they differ.</summary>
    public decimal? Rate { get; init; }

    /// <inheritdoc/>
    public override string Kind => "delivery";
}

/// <summary>Packs of one item in a delivery.</summary>
public sealed record DeliveryLine
{
    /// <summary>The item's code.</summary>
    public required string Item { get; init; }

    /// <summary>
    /// How many packs; a part of a pack (0.5) is an open one; null for all that are still to come of the order.
    /// </summary>
    public decimal? Packs { get; init; }

    /// <summary>
    /// The price of one pack; null when it is not said: that of the order, if the line names one, else nothing.
    /// </summary>
    public Money? Price { get; init; }

    /// <summary>The expiry date printed on the packs.</summary>
    public LocalDate? ExpiresOn { get; init; }

    /// <summary>The maker's emulsion number of film, or batch number of a bottle.</summary>
    public string Batch { get; init; } = "";

    /// <summary>Where it is kept.</summary>
    public string Storage { get; init; } = "";

    /// <summary>The order that this delivers, in whole or in part; null when none was recorded.</summary>
    public string? Order { get; init; }
}
