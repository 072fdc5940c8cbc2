using Ledger.Core.Keeping;
using Ledger.Core.Measures;

namespace Ledger.Core.Stock;

/// <summary>How an item's stock stands on a day.</summary>
public sealed record ShelfReading
{
    /// <summary>Reads an item's stock.</summary>
    /// <param name="item">The item.</param>
    /// <param name="containers">Its containers that are not empty, in the order in which they are reached for.</param>
    /// <param name="today">The day of the reading.</param>
    public ShelfReading(Item item, IEnumerable<Container> containers, LocalDate today)
    {
        Item = item;
        Containers =
            [.. containers.Select(container => new ContainerReading(container,
                container.GoodUntil(item.Keeping), today))];
        OnHand = item.Of(Containers.Sum(container => container.Container.Held.Base));
        Expired = item.Of(Containers.Where(container => container.IsPast)
            .Sum(container => container.Container.Held.Base));
        Suspect = item.Of(Containers.Where(container =>
            container is { IsPast: false, IsSuspect: true }).Sum(container => container.Container.Held.Base));
        Dead = item.Of(Containers.Where(container => container.IsUsable)
            .Sum(container => (container.Container.Held - container.Container.Drawable(item.DeadVolume)).Base));
        Unpriced = item.Of(Containers.Where(container => !container.Container.Lot.IsPriced)
            .Sum(container => container.Container.Held.Base));
        Value = new(Containers.Sum(container => container.Container.Value.Millionths));
    }

    /// <summary>The item.</summary>
    public Item Item { get; }

    /// <summary>Its containers.</summary>
    public IReadOnlyList<ContainerReading> Containers { get; }

    /// <summary>All that is there.</summary>
    public Quantity OnHand { get; }

    /// <summary>The part that is past its last good day.</summary>
    public Quantity Expired { get; }

    /// <summary>The part that is not expired and is under suspicion.</summary>
    public Quantity Suspect { get; }

    /// <summary>The good part that cannot be drawn from its bottles.</summary>
    public Quantity Dead { get; }

    /// <summary>The part that is still good and can be drawn.</summary>
    public Quantity Usable => OnHand - Expired - Suspect - Dead;

    /// <summary>What all of it cost, as far as it is known.</summary>
    public Money Value { get; }

    /// <summary>The part that came without a price, so that <see cref="Value"/> is not all of it.</summary>
    public Quantity Unpriced { get; }

    /// <summary>Whether there is less than the user's own lower limit.</summary>
    public bool IsBelowMinimum => Item.MinimumOnHand is { } minimum && Usable < minimum;
}

/// <summary>A container with its last good day.</summary>
/// <param name="Container">The container.</param>
/// <param name="GoodUntil">The last good day and its rule; null when nothing limits it.</param>
/// <param name="Today">The day of the reading.</param>
public sealed record ContainerReading(Container Container, GoodUntil? GoodUntil, LocalDate Today)
{
    /// <summary>Whether it is past its last good day.</summary>
    public bool IsPast => GoodUntil is { } limit && limit.IsPast(Today);

    /// <summary>Whether it is under suspicion.</summary>
    public bool IsSuspect => Container.Suspicion is not null;

    /// <summary>Whether it can be used: neither past its last good day nor under suspicion.</summary>
    public bool IsUsable => !IsPast && !IsSuspect;
}
