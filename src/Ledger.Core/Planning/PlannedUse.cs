using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Planning;

/// <summary>So much of one item that a session uses up, and where it is drawn from.</summary>
/// <param name="Item">The item.</param>
/// <param name="Needed">What is needed of it.</param>
/// <param name="Usable">What there is of it that is still good on the day.</param>
/// <param name="Expired">What there is of it that is not.</param>
/// <param name="Draws">The containers it is drawn from, first expired first out.</param>
public sealed record PlannedUse(Item Item, Quantity Needed, Quantity Usable, Quantity Expired,
    IReadOnlyList<Draw> Draws)
{
    /// <summary>The containers that are under suspicion, and so not used.</summary>
    public IReadOnlyList<Container> Suspect { get; init; } = [];

    /// <summary>What it costs, as far as it is there.</summary>
    public Money Cost => new(Draws.Sum(draw => draw.Cost.Millionths));

    /// <summary>What is missing.</summary>
    public Quantity Missing => Usable < Needed ? Needed - Usable : Item.Of(0);

    /// <summary>Whether all of it is there.</summary>
    public bool IsEnough => Missing.IsZero;

    /// <summary>Each container once, with all that is drawn from it.</summary>
    public IEnumerable<(Container From, Quantity Quantity)> Sources => Draws.GroupBy(draw => draw.From.Code)
        .Select(
            draws => (draws.First().From, draws.Select(draw => draw.Quantity).Aggregate((sum, more) => sum + more)));

    /// <summary>
    /// The same as people read it, the lot named: "fen80/4 8 sheets (emulsion 4711, good until 2026-06-01)".
    /// </summary>
    public IEnumerable<string> SourceTexts(MeasureStyle style) => Sources.Select(source =>
    {
        var lot = new[]
        {
            source.From.Lot.Batch.Length > 0 ? source.From.Lot.NumberText(Item.Kind) : "",
            source.From.GoodUntil(Item.Keeping) is { } good ? $"good until {Dates.Text(good.Date)}" : "",
        };
        var known = string.Join(", ", lot.Where(text => text.Length > 0));
        return $"{source.From.Code} {source.Quantity.ToText(style)}{(known.Length > 0 ? $" ({known})" : "")}";
    });

    /// <summary>Reads the use of an item.</summary>
    /// <param name="item">The item.</param>
    /// <param name="portions">What is drawn, one portion after the other: each batch's film, for instance.</param>
    /// <param name="containers">The item's containers.</param>
    /// <param name="day">The day on which they must still be good.</param>
    public static PlannedUse Of(Item item, IEnumerable<Quantity> portions, IEnumerable<Container> containers,
        LocalDate day)
    {
        var all = containers.Where(container => container.Lot.ReceivedOn <= day).ToList();
        var suspect = all.Where(container => container.Suspicion is not null).ToList();
        var good = FirstExpiredFirst(all.Except(suspect), item, day).ToList();
        var draws = new List<Draw>();
        var needed = item.Of(0);
        var left = good;
        foreach (var portion in portions)
        {
            needed += portion;
            var taken = Draw.AsGiven(
                left.Select(container => container with { Held = container.Drawable(item.DeadVolume) }), portion, out _)
                .Select(draw => Whole(draw, left)).ToList();
            draws.AddRange(taken);
            left = [
                .. left.Select(container => taken.FirstOrDefault(draw => draw.From.Place == container.Place) is { } draw
                    ? container.Less(draw.Quantity, draw.Cost) : container)];
        }

        var available = item.Of(good.Sum(container => container.Drawable(item.DeadVolume).Base));
        var expired = item.Of(all.Except(suspect).Except(good).Sum(container => container.Held.Base));
        return new(item, needed, available, expired, draws) { Suspect = suspect };
    }

    /// <summary>A draw's cost is a share of all that the bottle holds, dead volume included.</summary>
    private static Draw Whole(Draw draw, List<Container> containers)
    {
        var whole = containers.Find(container => container.Place == draw.From.Place)!;
        return new(whole, draw.Quantity, whole.CostOf(draw.Quantity));
    }

    /// <summary>What is still good, in the order in which it should be used up.</summary>
    private static IEnumerable<Container> FirstExpiredFirst(IEnumerable<Container> containers,
        Item item, LocalDate day) => Draw.Reach(containers)
        .Select(container => (Container: container, GoodUntil: container.GoodUntil(item.Keeping)))
        .Where(known => known.GoodUntil is not { } good || !good.IsPast(day))
        .OrderBy(known => known.GoodUntil?.Date ?? LocalDate.MaxIsoValue)
        .Select(known => known.Container);
}
