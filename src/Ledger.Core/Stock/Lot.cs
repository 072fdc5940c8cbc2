using Ledger.Core.Measures;

namespace Ledger.Core.Stock;

/// <summary>One delivery of an item.</summary>
/// <param name="Id">The lot's number.</param>
/// <param name="Item">The item's code.</param>
/// <param name="ReceivedOn">The day of the delivery.</param>
/// <param name="Quantity">What was delivered in all.</param>
/// <param name="Cost">The landed cost of all of it: price less discount, with its share of shipping, duty and
/// tax.</param>
/// <param name="Batch">The maker's batch or emulsion number; may be empty.</param>
/// <param name="ExpiresOn">The expiry date, if any.</param>
/// <param name="Storage">Where it is kept: freezer, fridge, shelf; may be empty.</param>
public sealed record Lot(
    LotId Id, string Item, LocalDate ReceivedOn, Quantity Quantity, Money Cost, string Batch,
    LocalDate? ExpiresOn, string Storage)
{
    /// <summary>The exposure index at which the user exposes it; null for the maker's.</summary>
    public int? ExposureIndex { get; init; }

    /// <summary>
    /// The maker's formula version when it came; what a changed recipe does to the product's life does not touch older
    /// lots.
    /// </summary>
    public string Formula { get; init; } = "";

    /// <summary>Why nothing of it is used until that is cleared; null for nothing.</summary>
    public Suspicion? Suspicion { get; init; }

    /// <summary>
    /// Whether somebody said what it cost, be it nothing, as a gift does. Otherwise <see cref="Cost"/> is only what is
    /// known of it: its share of shipping and duty.
    /// </summary>
    public bool IsPriced { get; init; } = true;

    /// <summary>
    /// Whether it was mixed here from a powder or concentrate: then <see cref="ReceivedOn"/> is the day of mixing.
    /// </summary>
    public bool IsMixed { get; init; }

    /// <summary>The maker's number in words: a film's is its emulsion number.</summary>
    public string NumberText(ItemKind kind) => $"{(kind == ItemKind.Film ? "emulsion" : "batch")} {Batch}";

    /// <summary>"EI 64"; null where the maker's speed holds.</summary>
    public string? IndexText => ExposureIndex is { } index ? $"EI {Scaled.ToText(index, 0)}" : null;

    /// <summary>What one unit of the lot cost, to the nearest millionth.</summary>
    public Money UnitCost => new(Share.Nearest(Cost.Millionths, Quantity.Unit.BasePerUnit(), Quantity.Base));
}
