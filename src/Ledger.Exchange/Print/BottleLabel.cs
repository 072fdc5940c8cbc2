namespace Ledger.Exchange.Print;

/// <summary>
/// The label of a bottle or of a waste jug: what is in it, how it is diluted, since when, until when, and the cautions.
/// </summary>
public static class BottleLabel
{
    private const string Hazard = "Chemical: not food or drink. Gloves and eye protection. Nothing with bleach.";

    private const string NotForDrinking = "For the darkroom: not for drinking.";

    /// <summary>The label of a container.</summary>
    public static Label Of(Container container, Item item, MeasureStyle style) => new(
        item.Name,
        [
            $"{container.Code}{(container.Lot.Batch.Length > 0 ? $", batch {container.Lot.Batch}" : "")}",
            item.Dilution is { } dilution ? $"use {dilution}" : item.Role == ItemRole.Other ? "" : item.Role.Name(),
            container.OpenedOn is { } opened ? $"opened {Dates.Text(opened)}" : "opened ____-__-__",
            DiscardBy(container.GoodUntil(item.Keeping)),
            $"holds {container.Size.ToText(style)} when full",
        ],
        Foot(item));

    /// <summary>The label of a working solution.</summary>
    public static Label Of(Bath bath, Item item, MeasureStyle style) => new(
        $"{bath.Code}: {item.Name}",
        [
            $"{bath.Role.Name()} for {bath.Material.Name()}, {bath.WorkingVolume.ToText(style)} {bath.Dilution}",
            $"mixed {Dates.Text(bath.MixedOn)}",
            DiscardBy(GoodUntil.OfWorkingSolution(bath.Keeping, bath.MixedOn)),
            bath.TotalCapacity is { } capacity ? $"capacity {capacity.ToText(style)} ({bath.Capacity!.Basis})"
                : "no capacity is set",
        ],
        [.. Foot(item),
            .. item.Role == ItemRole.Fixer ? ["Used fixer holds silver: collect it."] : Array.Empty<string>()]);

    /// <summary>The label of a waste jug.</summary>
    public static Label Of(WasteJug jug, MeasureStyle style) => new(
        $"{jug.Code}: {jug.Contents}",
        [
            $"waste: {jug.Waste.Name()}",
            $"started {Dates.Text(jug.StartedOn)}, holds {jug.Size.ToText(style)} when full",
            "to be handed over, not emptied into a sink",
            "handed over ____-__-__ to ____________",
        ],
        [jug.Waste.Hazard(), Hazard, UsualCautions.Governs]);

    /// <summary>
    /// The labels of what is named: a bath, a jug, a bottle, or all the bottles of an item; none when it is none of
    /// them.
    /// </summary>
    public static IEnumerable<Label> Named(string what, Holdings holdings)
    {
        var style = holdings.Settings.Style;
        if (holdings.Bath(what) is { } bath)
            return [Of(bath, holdings.Item(bath.Item)!, style)];
        if (holdings.Jug(what) is { } jug)
            return [Of(jug, style)];
        if (holdings.Container(what) is { } container)
            return [OfAny(container, holdings.Item(container.Lot.Item)!, style)];
        return holdings.ContainersOf(what).Select(known => OfAny(known, holdings.Item(what)!, style));
    }

    /// <summary>
    /// A box of film or paper must not be opened in the light, whatever command its label is asked of.
    /// </summary>
    private static Label OfAny(Container container, Item item, MeasureStyle style) =>
        item.Kind == ItemKind.Film ? BoxLabel.Unexposed(item, container) : Of(container, item, style);

    /// <summary>A page of labels.</summary>
    public static PrintedPage Page(IReadOnlyList<Label> labels, LabelSheet sheet) =>
        new("Bottle labels", [new Labels(labels, sheet)]);

    private static string DiscardBy(GoodUntil? good) =>
        good is null ? "discard by ____-__-__" : $"discard by {Dates.Text(good.Date)} ({good.Rule.Name()})";

    private static IReadOnlyList<string> Foot(Item item) =>
        item.Kind != ItemKind.Chemical ? []
        : [
            .. item.Cautions.Length > 0 ? [item.Cautions] : Array.Empty<string>(),
            item.Role == ItemRole.Water ? NotForDrinking : Hazard, UsualCautions.Governs,
        ];
}
