using Ledger.Core.Keeping;
using Ledger.Core.Measures;

namespace Ledger.Core.Stock;

/// <summary>One box, envelope, bottle or packet, with its own dates. It holds a single lot.</summary>
/// <param name="Place">Its number as a place.</param>
/// <param name="Code">What is written on it: the item's code and a running number, such as fen80/3.</param>
/// <param name="Lot">The delivery it came with.</param>
/// <param name="Size">What it held when it was full.</param>
/// <param name="Held">What it holds now.</param>
/// <param name="Value">What that cost.</param>
/// <param name="OpenedOn">The day it was opened, or null while it is sealed.</param>
/// <param name="HalfEmptyOn">The day on which it fell below half, or null.</param>
public sealed record Container(
    PlaceId Place, string Code, Lot Lot, Quantity Size, Quantity Held, Money Value, LocalDate? OpenedOn,
    LocalDate? HalfEmptyOn = null)
{
    /// <summary>Where it was moved to, in the order of days; none while it is where its lot is kept.</summary>
    public IReadOnlyList<StoragePlace> Moves { get; init; } = [];

    /// <summary>The first day on which it may be opened after the cold; null when it may be.</summary>
    public LocalDate? OpensFrom { get; init; }

    /// <summary>Where it is kept: freezer, fridge, shelf; may be empty.</summary>
    public string Storage => Moves is [.., var last] ? last.Name : Lot.Storage;

    /// <summary>
    /// Whether it is still sealed. One that is no longer full is not, even when the entry that opened it was taken
    /// back: something was drawn from it since.
    /// </summary>
    public bool IsSealed => OpenedOn is null && Held >= Size;

    /// <summary>Whether less than half of it is left, so that air reaches what it holds.</summary>
    public bool IsBelowHalf => Held.Base < Size.Base - Held.Base;

    /// <summary>The limits of the formula version it came with; null when they are the item's own.</summary>
    public KeepingLimits? FormulaLimits { get; init; }

    /// <summary>The time that it has spent in the cold; null for none.</summary>
    public ColdTime? Cold { get; init; }

    /// <summary>The last good day and the rule that governs, or null when nothing limits it.</summary>
    public GoodUntil? GoodUntil(KeepingLimits limits) => Keeping.GoodUntil.OfContainer(
        FormulaLimits ?? limits, Lot.ExpiresOn, Lot.ReceivedOn, OpenedOn, HalfEmptyOn, Cold, Lot.IsMixed);

    /// <summary>Why this one is not used, whatever its delivery; null for nothing.</summary>
    public Suspicion? OwnSuspicion { get; init; }

    /// <summary>Why it is not used until that is cleared: its own suspicion, or its delivery's; null for
    /// nothing.</summary>
    public Suspicion? Suspicion => OwnSuspicion ?? Lot.Suspicion;

    /// <summary>What can be drawn: all but the dead volume that stays in the bottle.</summary>
    public Quantity Drawable(Quantity? deadVolume) =>
        deadVolume is not { } dead ? Held : Held with { Base = Math.Max(0, Held.Base - dead.Base) };

    /// <summary>The cost of drawing so much: an exact share of what is there; the last draw takes the rest.</summary>
    public Money CostOf(Quantity drawn) => Value.PartOf(drawn.Base, Held.Base);

    /// <summary>Its places of storage since its delivery.</summary>
    public IEnumerable<StoragePlace> Places => Moves.Prepend(new(Lot.ReceivedOn, Lot.Storage));

    /// <summary>
    /// What tells it from its like, in words: emulsion or batch number, where it is kept, the user's exposure index.
    /// </summary>
    /// <param name="kind">What sort of thing it holds: the number of a film is its emulsion's.</param>
    public IEnumerable<string> Marks(ItemKind kind)
    {
        if (Lot.Batch.Length > 0)
            yield return Lot.NumberText(kind);
        if (Storage.Length > 0)
            yield return Storage;
        if (Lot.IndexText is { } index)
            yield return index;
    }

    /// <summary>The container after a draw.</summary>
    public Container Less(Quantity drawn, Money cost) => this with { Held = Held - drawn, Value = Value - cost };
}

/// <summary>From this day on a container was kept there.</summary>
/// <param name="Since">The day.</param>
/// <param name="Name">The place: freezer, fridge, shelf; may be empty.</param>
public sealed record StoragePlace(LocalDate Since, string Name);
