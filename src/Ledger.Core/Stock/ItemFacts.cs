using Ledger.Core.Measures;

namespace Ledger.Core.Stock;

/// <summary>An item's settings as a person reads them: a label and a text each, in one order everywhere.</summary>
public static class ItemFacts
{
    /// <summary>The settings that an item has; what is not set is left out.</summary>
    /// <param name="item">The item.</param>
    /// <param name="style">The user's units.</param>
    public static IEnumerable<(string Label, string Text)> Of(Item item, MeasureStyle style)
    {
        ArgumentNullException.ThrowIfNull(item);
        return All(item, style).Where(fact => !string.IsNullOrEmpty(fact.Text)).Select(fact => (fact.Label, fact.Text!));
    }

    private static IEnumerable<(string Label, string? Text)> All(Item item, MeasureStyle style) =>
    [
        ("kind", item.Role == ItemRole.Other ? item.Kind.Name() : $"{item.Kind.Name()}, {item.Role.Name()}"),
        ("format", item.Format?.Code),
        ("pack", item.Pack.ToText(style)),
        ("dilution", item.Dilution?.Text),
        ("other parts", string.Join(", ", item.OtherParts)),
        ("capacity", item.Capacity is { } capacity ? Litre(capacity, style) : null),
        .. item.OtherCapacities.Select(other => ("or", (string?)Litre(other, style))),
        ("at least", item.MinimumPer80SquareInches is { } least ? $"{least.ToText(style)} for each {Area.Unit80.ToText(style)}" : null),
        ("mixed from", item.StockOf),
        ("density", item.Density is { } density ? $"{Scaled.ToText(density.GramsPerMillilitre, 3)} g per ml" : null),
        ("not drawn", item.DeadVolume is { } dead ? $"{dead.ToText(style)} in each bottle" : null),
        ("replenisher", item.ReplenisherPer80SquareInches is { } rate ? $"{rate.ToText(style)} for each {Area.Unit80.ToText(style)}" : null),
        ("ceiling", item.ReplenisherCeilingPercent is { } ceiling ? $"{ceiling} % of its volume in replenisher" : null),
        ("exhausted when", item.Indicator is { } colour ? $"its indicator is {colour}" : null),
        ("fixer factor", item.Kind == ItemKind.Film ? Scaled.InUnits(item.FixerFactorThousandths, 1000) : null),
        ("keeps", string.Join("; ", Keeping(item.Keeping))),
        ("in the cold", string.Join("; ", Cold(item))),
        ("lead time", item.LeadTimeDays is { } days ? $"{Counted.Of(days, "day")}" : null),
        ("service level", item.ServiceLevel is { } level ? $"{Scaled.ToText(level * 100, 2)} %" : null),
        ("minimum", item.MinimumOnHand?.ToText(style)),
        ("formula", item.Formula),
        ("cautions", item.Cautions),
    ];

    private static IEnumerable<string> Cold(Item item)
    {
        if (item.FreezerDays is { } freezer)
            yield return $"a year in the freezer adds {Counted.Of(freezer, "day")}";
        if (item.FridgeDays is { } fridge)
            yield return $"a year in the fridge adds {Counted.Of(fridge, "day")}";
        if (item.ThawHours is { } hours)
            yield return $"warms up for {Counted.Of(hours, "hour")}";
    }

    private static string Litre(Capacity capacity, MeasureStyle style) => $"{capacity.PerLitre.ToText(style)} per litre ({capacity.Basis})";

    private static IEnumerable<string> Keeping(Keeping.KeepingLimits limits)
    {
        if (limits.SealedDays is { } days)
            yield return $"sealed {Counted.Of(days, "day")}";
        if (limits.OpenedFullDays is { } opened)
            yield return $"opened {Counted.Of(opened, "day")}";
        if (limits.OpenedPartDays is { } part)
            yield return $"below half full {Counted.Of(part, "day")}";
        if (limits.WorkingFullDays is { } full)
            yield return $"mixed {Counted.Of(full, "day")}";
        if (limits.WorkingPartDays is { } working)
            yield return $"mixed, part-full {Counted.Of(working, "day")}";
        if (limits.FloatingLidDays is { } lid)
            yield return $"mixed, under a floating lid {Counted.Of(lid, "day")}";
        if (limits.TrayHours is { } hours)
            yield return $"in a tray {Counted.Of(hours, "hour")}";
    }
}
