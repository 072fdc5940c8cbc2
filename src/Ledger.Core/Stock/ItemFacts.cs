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
        return All(item, style).Where(fact => !string.IsNullOrEmpty(fact.Text))
            .Select(fact => (fact.Label, fact.Text!));
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
        ("at least", item.MinimumPer80SquareInches is { } least
            ? $"{least.ToText(style)} for each {Area.Unit80.ToText(style)}"
            : null),
        ("mixed from", item.StockOf),
        ("density", item.Density is { } density ? $"{Scaled.ToText(density.GramsPerMillilitre, 3)} g per ml" : null),
        ("not drawn", item.DeadVolume is { } dead ? $"{dead.ToText(style)} in each bottle" : null),
        ("replenisher", item.ReplenisherPer80SquareInches is { } rate
            ? $"{rate.ToText(style)} for each {Area.Unit80.ToText(style)}"
            : null),
        ("ceiling", item.ReplenisherCeilingPercent is { } ceiling ? $"{ceiling} % of its volume in replenisher" : null),
        ("exhausted when", item.Indicator is { } colour ? $"its indicator is {colour}" : null),
        ("fixer factor", item.Kind == ItemKind.Film ? Scaled.InUnits(item.FixerFactorThousandths, 1000) : null),
        ("keeps", Limits(
            ("sealed", item.Keeping.SealedDays, "day"),
            ("opened", item.Keeping.OpenedFullDays, "day"),
            ("below half full", item.Keeping.OpenedPartDays, "day"),
            ("mixed", item.Keeping.WorkingFullDays, "day"),
            ("mixed, part-full", item.Keeping.WorkingPartDays, "day"),
            ("mixed, under a floating lid", item.Keeping.FloatingLidDays, "day"),
            ("in a tray", item.Keeping.TrayHours, "hour"))),
        ("in the cold", Limits(
            ("a year in the freezer adds", item.FreezerDays, "day"),
            ("a year in the fridge adds", item.FridgeDays, "day"),
            ("warms up for", item.ThawHours, "hour"))),
        ("lead time", item.LeadTimeDays is { } days ? $"{Counted.Of(days, "day")}" : null),
        ("service level", item.ServiceLevel is { } level ? $"{Scaled.ToText(level * 100, 2)} %" : null),
        ("minimum", item.MinimumOnHand?.ToText(style)),
        ("formula", item.Formula),
        ("cautions", item.Cautions),
    ];

    private static string Litre(Capacity capacity, MeasureStyle style) =>
        $"{capacity.PerLitre.ToText(style)} per litre ({capacity.Basis})";

    private static string Limits(params (string What, int? Count, string Unit)[] limits) => string.Join(
        "; ", limits.Where(limit => limit.Count is not null)
            .Select(limit => $"{limit.What} {Counted.Of(limit.Count!.Value, limit.Unit)}"));
}
