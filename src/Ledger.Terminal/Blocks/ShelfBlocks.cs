using Ledger.Terminal.Pictures;

namespace Ledger.Terminal.Blocks;

/// <summary>An item and its containers in a details pane.</summary>
internal static class ShelfBlocks
{
    /// <summary>How many of the last moves are shown.</summary>
    public const int HistoryShown = 30;

    private const int MonthsShown = 12;

    /// <summary>What there is of an item, box by box, and the item's settings.</summary>
    /// <param name="reading">The stock.</param>
    /// <param name="planned">What the open plans will use of it; null when they use none.</param>
    /// <param name="holdings">What the ledger holds.</param>
    /// <param name="enough">For how many batches and sessions it is enough; may be empty.</param>
    public static Block Facts(ShelfReading reading, Quantity? planned, Holdings holdings, string enough = "")
    {
        var (item, style) = (reading.Item, holdings.Settings.Style);
        return Block.Facts($"{item.Code}: {item.Name}", [
            ("On hand", reading.Expired.IsZero
                ? reading.OnHand.ToText(style)
                : $"{reading.OnHand.ToText(style)}, {reading.Expired.ToText(style)} of it expired"),
            ("Enough for", enough),
            ("Suspicion", reading.Suspect.IsZero ? null
                : $"{reading.Suspect.ToText(style)} under suspicion, not used until cleared"),
            ("On order", holdings.Orders.OnOrder(item) is { IsZero: false } onOrder ? onOrder.ToText(style) : null),
            ("Planned", planned is { } amount ? $"{amount.ToText(style)} in all open plans" : null),
            ("Minimum", item.MinimumOnHand is { } minimum ? Minimum(reading.Usable, minimum, style) : null),
            .. reading.Containers.Select(container => (container.Container.Code,
                (string?)Line(container, item.Kind, style))),
            ("Value", reading.Unpriced.IsZero ? reading.Value.Text(holdings.Settings)
                : $"{UnpricedStock.Mark(reading.Value, isComplete: false, style)}: {reading.Unpriced.ToText(style)} "
                    + "came without a price"),
            .. Settings(item, style),
        ]);
    }

    /// <summary>The settings of an item, as the facts of a block.</summary>
    public static IEnumerable<(string Label, string? Text)> Settings(Item item, MeasureStyle style) =>
        ItemFacts.Of(item, style).Select(fact => (ScreenText.Capital(fact.Label), (string?)fact.Text));

    /// <summary>One container, with its dates and where it came from.</summary>
    public static Block Facts(ContainerReading reading, Holdings holdings)
    {
        var (container, style) = (reading.Container, holdings.Settings.Style);
        return Block.Facts(container.Code, [
            ("Left", $"{Left(container)}, {container.Held.ToText(style)} of {container.Size.ToText(style)}"),
            ("Good until", reading.GoodUntil.Text(reading.Today)),
            ("State", reading.IsPast ? "expired" : container.IsSealed ? "sealed" : "open"),
            ("Suspicion", container.Suspicion?.Text),
            (container.Lot.IsMixed ? "Mixed" : "Bought", Dates.Text(container.Lot.ReceivedOn)),
            ("Printed", container.Lot.ExpiresOn is { } printed ? Dates.Text(printed) : null),
            ("Opened", container.OpenedOn is { } opened ? Dates.Text(opened) : null),
            ("Below half", container.HalfEmptyOn is { } half ? Dates.Text(half) : null),
            (holdings.Item(container.Lot.Item)?.Kind == ItemKind.Film ? "Emulsion" : "Batch", container.Lot.Batch),
            ("Formula", container.Lot.Formula),
            ("Kept in", container.Storage),
            ("Closed", container.IsSealed && holdings.Item(container.Lot.Item) is { } item
                && Warming.Of(container, item, holdings.Settings) is { } warming && warming.IsDoubtfulOn(reading.Today)
                ? warming.InBrief : null),
            ("Exposed at", container.Lot.ExposureIndex?.ToString(CultureInfo.InvariantCulture)),
            ("Cost", !container.Lot.IsPriced ? "unknown: it came without a price"
                : $"{container.Value.Text(holdings.Settings)} for what is left, "
                + $"{container.Lot.UnitCost.Text(holdings.Settings)} a {container.Held.Unit.Name()}"),
        ]);
    }

    /// <summary>The first day of the months that are shown.</summary>
    public static LocalDate Since(LocalDate today) =>
        today.With(DateAdjusters.StartOfMonth).PlusMonths(1 - MonthsShown);

    /// <summary>What left the shelf for good by month, and the last entries.</summary>
    public static Block History(IReadOnlyList<ItemMove> moves, IReadOnlyList<StockLeft> left,
        Item item, Holdings holdings)
    {
        var style = holdings.Settings.Style;
        if (moves.Count == 0)
            return Block.Of("History", "No delivery and no use so far.");
        var months = Months.Of(
            left.Select(gone => (gone.Date, gone.Quantity)), holdings.AsOf, MonthsShown,
            amount => item.Of(amount).ToText(style));
        return new("Out by month", width =>
        [
            .. BarChart.Of(months, width),
            "",
            .. moves.Take(HistoryShown).SelectMany(move => Paragraph.Of(
                Dates.Text(move.Date), $"{Change(move)} {move.Container}: {move.Summary}", width, 12)),
        ]);

        string Change(ItemMove move) => (move.Change > 0 ? "+" : "") + item.Of(move.Change).ToText(style);
    }

    /// <summary>The gauge of a container for a table or a list.</summary>
    public static string Left(Container container) => Gauge.OfPart(container.Held.Base, container.Size.Base);

    private static string Line(ContainerReading reading, ItemKind kind, MeasureStyle style)
    {
        var container = reading.Container;
        var dates = reading.GoodUntil is { } good
            ? $", {(reading.IsPast ? "expired" : "good until")} {Dates.Text(good.Date)}"
            : "";
        var marks = string.Concat(container.Marks(kind).Select(mark => $", {mark}"));
        return $"{Left(container)}, {container.Held.ToText(style)}, {(container.IsSealed ? "sealed" : "open")}{dates}"
            + $"{marks}";
    }

    private static string Minimum(Quantity usable, Quantity minimum, MeasureStyle style) =>
        $"{Gauge.OfPart(usable.Base, Math.Max(minimum.Base, usable.Base))}, {usable.ToText(style)} against "
            + $"{minimum.ToText(style)}";
}
