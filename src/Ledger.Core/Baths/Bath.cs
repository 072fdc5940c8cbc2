using Ledger.Core.Keeping;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Baths;

/// <summary>A working solution that is used again until it is exhausted.</summary>
public sealed record Bath
{
    /// <summary>Its number as a place.</summary>
    public required PlaceId Place { get; init; }

    /// <summary>The name the user gave it.</summary>
    public required string Code { get; init; }

    /// <summary>The code of the item it was mixed from.</summary>
    public required string Item { get; init; }

    /// <summary>What it does: fixer, stop, wash aid…</summary>
    public required ItemRole Role { get; init; }

    /// <summary>What passes through it.</summary>
    public required BathMaterial Material { get; init; }

    /// <summary>How much working solution there is.</summary>
    public required Volume WorkingVolume { get; init; }

    /// <summary>How it was diluted.</summary>
    public required Dilution Dilution { get; init; }

    /// <summary>The day it was mixed; kept when it moves up to first place of a pair.</summary>
    public required LocalDate MixedOn { get; init; }

    /// <summary>What a litre of it can take, with the basis of that figure; null when the user has set none.</summary>
    public Capacity? Capacity { get; init; }

    /// <summary>The item's keeping limits.</summary>
    public KeepingLimits Keeping { get; init; } = KeepingLimits.None;

    /// <summary>The bath before it in two-bath fixing, when it was mixed as a second one.</summary>
    public string? PairedWith { get; init; }

    /// <summary>How often the pair had been rotated when this bath joined it.</summary>
    public int Rotations { get; init; }

    /// <summary>The area that passed through it while it stood alone or first.</summary>
    public Area Worked { get; init; }

    /// <summary>The same, weighted by film.</summary>
    public Area WorkedWeighted { get; init; }

    /// <summary>
    /// What it counts of an area that passes through: a fixer takes it weighted by film, every other bath as it is.
    /// </summary>
    public Area LoadOf(Area area, Area weighted) => Role == ItemRole.Fixer ? weighted : area;

    /// <summary>What the chemicals in it cost.</summary>
    public Money Value { get; init; }

    /// <summary>The chemicals in it, by lot.</summary>
    public IReadOnlyList<BathContent> Contents { get; init; } = [];

    /// <summary>The day on which its work reached its capacity; null before.</summary>
    public LocalDate? FilledOn { get; init; }

    /// <summary>When and why it was discarded; null while it is in use.</summary>
    public BathDiscard? Discarded { get; init; }

    /// <summary>Why nothing goes through it until that is cleared; null for nothing.</summary>
    public Suspicion? Suspicion { get; init; }

    /// <summary>What it stood in since which day, in the order of days; none for a full closed bottle.</summary>
    public IReadOnlyList<Standing> Standings { get; init; } = [];

    /// <summary>The clearing tests made in it, the first one first.</summary>
    public IReadOnlyList<ClearingTime> ClearingTests { get; init; } = [];

    /// <summary>What was seen or smelled at it, the first one first.</summary>
    public IReadOnlyList<Observation> Observations { get; init; } = [];

    /// <summary>Its silver readings, the first one first.</summary>
    public IReadOnlyList<SilverReading> SilverReadings { get; init; } = [];

    /// <summary>The residual tests attached to it, the first one first.</summary>
    public IReadOnlyList<ResidualTest> ResidualTests { get; init; } = [];

    /// <summary>The control strips developed in it, the first one first.</summary>
    public IReadOnlyList<ControlStrip> ControlStrips { get; init; } = [];

    /// <summary>Its top-ups, the first one first.</summary>
    public IReadOnlyList<TopUpRecord> TopUps { get; init; } = [];

    /// <summary>At what its tests say that it is exhausted.</summary>
    public BathLimits Limits { get; init; } = BathLimits.Default;

    /// <summary>The same capacity on other bases, as the item lists them.</summary>
    public IReadOnlyList<Capacity> OtherCapacities { get; init; } = [];

    /// <summary>Replenisher per 80 sq in, for a developer that is topped up.</summary>
    public Volume? ReplenisherPer80SquareInches { get; init; }

    /// <summary>
    /// How much replenisher it may take in all before a fresh one is mixed, in per cent of its volume.
    /// </summary>
    public int ReplenisherCeilingPercent { get; init; } = ReplenishmentReading.CommonCeilingPercent;

    /// <summary>The colour at which its indicator says that it is exhausted; null when it has no indicator.</summary>
    public string? Indicator { get; init; }

    /// <summary>The area it can take in all, or null without a capacity.</summary>
    public Area? TotalCapacity => Capacity?.Of(WorkingVolume);
}

/// <summary>A bath was discarded.</summary>
/// <param name="On">The day.</param>
/// <param name="Reason">Why, in the user's words.</param>
public sealed record BathDiscard(LocalDate On, string Reason);

/// <summary>So much of a lot in a bath.</summary>
/// <param name="Lot">The lot.</param>
/// <param name="Quantity">How much of it.</param>
/// <param name="Value">What that cost.</param>
public sealed record BathContent(LotId Lot, Quantity Quantity, Money Value);
