using Ledger.Core.Costing;
using Ledger.Core.Measures;
using NodaTime;

namespace Ledger.Core.Journal.Entries;

/// <summary>One delivery of several items that were paid together; what was paid for all of them is shared by value.</summary>
public sealed record Purchase : Entry
{
    /// <summary>The purchase's name: the invoice's number, or whatever the user calls it.</summary>
    public required string Name { get; init; }

    /// <summary>What came.</summary>
    public required IReadOnlyList<PurchaseLine> Lines { get; init; }

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

    /// <summary>What the lines cost on the shelf.</summary>
    public SharedCost Shared => new([.. Lines.Select(line => (line.Price, line.Packs))], Discount, Shipping, Duty, Rate ?? 1);

    /// <inheritdoc/>
    public override string Kind => "purchase";

    /// <summary>A line as a delivery of its own, with its share of what was paid for all.</summary>
    internal Receipt Delivery(PurchaseLine line, LandedCost share) => new()
    {
        Key = Key,
        Date = Date,
        Note = Note,
        Item = line.Item,
        Packs = line.Packs,
        Price = line.Price,
        Discount = share.Discount,
        Shipping = share.Shipping,
        Duty = share.Duty,
        Currency = Currency,
        Rate = Rate,
        ExpiresOn = line.ExpiresOn,
        Batch = line.Batch,
        Storage = line.Storage,
        Order = line.Order,
    };
}

/// <summary>Packs of one item in a purchase.</summary>
public sealed record PurchaseLine
{
    /// <summary>The item's code.</summary>
    public required string Item { get; init; }

    /// <summary>How many packs.</summary>
    public required decimal Packs { get; init; }

    /// <summary>The price of one pack.</summary>
    public Money Price { get; init; }

    /// <summary>The date printed on the packs.</summary>
    public LocalDate? ExpiresOn { get; init; }

    /// <summary>The maker's batch or emulsion number.</summary>
    public string Batch { get; init; } = "";

    /// <summary>Where it is kept.</summary>
    public string Storage { get; init; } = "";

    /// <summary>The order that this delivers, in whole or in part; null when none was recorded.</summary>
    public string? Order { get; init; }
}
