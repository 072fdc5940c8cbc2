using Ledger.Core.Keeping;
using Ledger.Core.Measures;

namespace Ledger.Core.Stock;

/// <summary>
/// A product that is kept: a film in one format, a chemical, a supply, with the settings the user has given it.
/// </summary>
public sealed record Item
{
    /// <summary>The item's number, once the ledger has one.</summary>
    public ItemId Id { get; init; }

    /// <summary>The short name that commands and CSV use; letters of either case mean the same.</summary>
    public required string Code { get; init; }

    /// <summary>The full name.</summary>
    public required string Name { get; init; }

    /// <summary>Film, chemical or supply.</summary>
    public required ItemKind Kind { get; init; }

    /// <summary>What a chemical does.</summary>
    public ItemRole Role { get; init; }

    /// <summary>The format of a film; null for anything else.</summary>
    public Format? Format { get; init; }

    /// <summary>What it is counted in.</summary>
    public required Unit Unit { get; init; }

    /// <summary>What one pack holds.</summary>
    public required Quantity Pack { get; init; }

    /// <summary>How it is usually diluted.</summary>
    public Dilution? Dilution { get; init; }

    /// <summary>What a litre of working solution can take, as a rule that names its basis.</summary>
    public Capacity? Capacity { get; init; }

    /// <summary>The least concentrate per 80 sq in of film, whatever the dilution.</summary>
    public Volume? MinimumPer80SquareInches { get; init; }

    /// <summary>
    /// How heavily a film or paper loads a fixer, in thousandths: 1000 for conventional grain, 1500 for tabular (2000 :
    /// 1333).
    /// </summary>
    public int FixerFactorThousandths { get; init; } = 1000;

    /// <summary>How long it keeps.</summary>
    public KeepingLimits Keeping { get; init; } = KeepingLimits.None;

    /// <summary>Days from order to delivery.</summary>
    public int? LeadTimeDays { get; init; }

    /// <summary>How often stock should last through a lead time, between 0 and 1.</summary>
    public decimal? ServiceLevel { get; init; }

    /// <summary>The user's own lower limit: less than this calls for an order.</summary>
    public Quantity? MinimumOnHand { get; init; }

    /// <summary>The maker's formula version, where a changed recipe has another life.</summary>
    public string Formula { get; init; } = "";

    /// <summary>Cautions from the user's own safety data sheet.</summary>
    public string Cautions { get; init; } = "";

    /// <summary>The same capacity on other bases, shown beside <see cref="Capacity"/>.</summary>
    public IReadOnlyList<Capacity> OtherCapacities { get; init; } = [];

    /// <summary>How heavy a liquid is, so that it can be weighed out; null when it is only measured.</summary>
    public Density? Density { get; init; }

    /// <summary>What stays in each bottle because it cannot be drawn.</summary>
    public Quantity? DeadVolume { get; init; }

    /// <summary>Replenisher per 80 sq in, for a developer that is topped up.</summary>
    public Volume? ReplenisherPer80SquareInches { get; init; }

    /// <summary>
    /// How much replenisher a bath may take in all before it is mixed fresh, in per cent of its volume; null for as
    /// much as it holds.
    /// </summary>
    public int? ReplenisherCeilingPercent { get; init; }

    /// <summary>
    /// The colour at which the indicator in its working solution says that it is exhausted; null when it has no
    /// indicator.
    /// </summary>
    public string? Indicator { get; init; }

    /// <summary>
    /// The code of the powder or concentrate that this stock solution is mixed from; null when it is bought as it is.
    /// </summary>
    public string? StockOf { get; init; }

    /// <summary>
    /// The codes of the items that are part B, C… of its dilution, in that order: of 1+2+100 one; none for a dilution
    /// in one part.
    /// </summary>
    public IReadOnlyList<string> OtherParts { get; init; } = [];

    /// <summary>
    /// Days that a year in a freezer adds to its date: fast film gains less than slow; null for the ledger's setting.
    /// </summary>
    public int? FreezerDays { get; init; }

    /// <summary>Days that a year in a refrigerator adds; null for the ledger's setting.</summary>
    public int? FridgeDays { get; init; }

    /// <summary>
    /// Hours that it warms up closed after the freezer: a large box takes longer; null for the ledger's setting.
    /// </summary>
    public int? ThawHours { get; init; }

    /// <summary>Whether it is paper, which never goes through a bath for film.</summary>
    public bool IsPaper => Role is ItemRole.ResinCoatedPaper or ItemRole.FibrePaper;

    /// <summary>
    /// A quantity in the item's own unit: grams of a liquid are turned into its volume, and back, by its density.
    /// </summary>
    /// <returns>Null when the units do not agree and no density joins them.</returns>
    public Quantity? Converted(Quantity quantity) => (quantity.Unit, Unit, Density) switch
    {
        var (given, own, _) when given == own => quantity,
        (Unit.Gram, Unit.Millilitre, { } density) => density.VolumeOf(quantity),
        (Unit.Millilitre, Unit.Gram, { } density) => density.WeightOf(quantity),
        _ => null,
    };

    /// <summary>A quantity of this item.</summary>
    public Quantity Of(long baseUnits) => new(baseUnits, Unit);

    /// <summary>The area of so many sheets or rolls; none for what is not film.</summary>
    public Area AreaOf(long count) => Format is null ? Area.Zero : Format.Area * count;
}
