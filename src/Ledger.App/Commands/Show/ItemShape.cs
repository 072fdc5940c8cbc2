namespace Ledger.App.Commands.Show;

/// <summary>An item in its document.</summary>
internal static class ItemShape
{
    private static readonly Shape<KeepingLimits> _keeping = new Shape<KeepingLimits>()
        .Whole("sealedDays", keeping => keeping.SealedDays)
        .Whole("openedFullDays", keeping => keeping.OpenedFullDays)
        .Whole("openedPartDays", keeping => keeping.OpenedPartDays)
        .Whole("workingFullDays", keeping => keeping.WorkingFullDays)
        .Whole("workingPartDays", keeping => keeping.WorkingPartDays)
        .Whole("trayHours", keeping => keeping.TrayHours)
        .Whole("floatingLidDays", keeping => keeping.FloatingLidDays);

    private static readonly Shape<Item> _settings = new Shape<Item>()
        .Text("item", item => item.Code)
        .Text("name", item => item.Name)
        .Text("kind", item => item.Kind.Name())
        .Text("role", item => item.Role.Name())
        .Word("format", item => item.Format?.Code)
        .Text("unit", item => item.Unit.Name())
        .Quantity("pack", item => item.Pack)
        .Word("dilution", item => item.Dilution?.Text)
        .Area("capacitySqInPerLitre", item => item.Capacity?.PerLitre)
        .Word("capacityBasis", item => item.Capacity?.Basis)
        .Volume("minimumPer80SqIn", item => item.MinimumPer80SquareInches,
            "the least concentrate for 80 square inches of film")
        .Figure("fixerFactor", item => item.FixerFactorThousandths / 1000m)
        .Object("keeping", (item, _) => item.Keeping, _keeping)
        .Table("otherCapacities", (item, _) => item.OtherCapacities, new Shape<Capacity>()
            .Text("basis", capacity => capacity.Basis)
            .Area("sqInPerLitre", capacity => capacity.PerLitre))
        .Figure("densityGramsPerMl", item => item.Density?.GramsPerMillilitre)
        .Quantity("deadVolume", item => item.DeadVolume)
        .Volume("replenisherPer80SqIn", item => item.ReplenisherPer80SquareInches)
        .Whole("replenisherCeilingPercent", item => item.ReplenisherCeilingPercent)
        .Word("indicator", item => item.Indicator)
        .Word("stockOf", item => item.StockOf)
        .Texts("otherParts", item => item.OtherParts)
        .Whole("freezerDays", item => item.FreezerDays)
        .Whole("fridgeDays", item => item.FridgeDays)
        .Whole("thawHours", item => item.ThawHours)
        .Whole("leadTimeDays", item => item.LeadTimeDays)
        .Figure("serviceLevel", item => item.ServiceLevel)
        .Quantity("minimumOnHand", item => item.MinimumOnHand)
        .Word("formula", item => item.Formula)
        .Word("cautions", item => item.Cautions);

    private static readonly Shape<(ItemMove Move, Item Item)> _move = new Shape<(ItemMove Move, Item Item)>()
        .Whole("entry", row => row.Move.Number)
        .Date("date", row => row.Move.Date)
        .Text("summary", row => row.Move.Summary)
        .Word("container", row => row.Move.Container)
        .Whole("lot", row => row.Move.Lot.Value)
        .Quantity("change", row => row.Item.Of(row.Move.Change))
        .Money("value", row => row.Move.Value);

    /// <summary>What is on hand of an item, and what is to come and to go.</summary>
    public static Shape<ShelfRow> Stock { get; } = new Shape<ShelfRow>()
        .Quantity("onHand", row => row.Shelf.OnHand)
        .Quantity("usable", row => row.Shelf.Usable)
        .Quantity("expired", row => row.Shelf.Expired)
        .Quantity("suspect", row => row.Shelf.Suspect, "what is under suspicion")
        .Quantity("onOrder", row => row.Ahead.OnOrder(row.Shelf.Item))
        .Quantity("planned", row => row.Ahead.Planned(row.Shelf.Item), "what the open plans will use")
        .Money("value", row => row.Shelf.Value)
        .Quantity("unpriced", row => row.Shelf.Unpriced, "what came without a price");

    public static Shape<ItemShown> Of { get; } = new Shape<ItemShown>()
        .AsOf()
        .With((shown, _) => shown.Shelf.Item, _settings)
        .With((shown, view) => new ShelfRow(shown.Shelf, new StockAhead(view)), Stock)
        .Table("values", (shown, _) => shown.Values, new Shape<(CostFormula Formula, Money? Value)>()
            .Text("formula", value => value.Formula.Name())
            .Money("value", value => value.Value))
        .Table("containers", (shown, _) => shown.Shelf.Containers, ContainerShape.Of)
        .Table("places", (shown, _) => shown.Places, new Shape<PlaceHeld>()
            .Text("place", place => place.Place)
            .Text("kind", place => place.Kind)
            .Quantity("quantity", place => place.Held)
            .Money("value", place => place.Value))
        .Table("moves", (shown, _) => shown.Moves.Select(move => (Move: move, Item: shown.Shelf.Item)), _move,
            (shown, rows) => shown with { Moves = [.. rows.Select(row => row.Move)] })
        .Leading("moves");
}

/// <summary>An item's stock, with what is to come and to go.</summary>
/// <param name="Shelf">Its stock.</param>
/// <param name="Ahead">What is on order and planned.</param>
internal sealed record ShelfRow(ShelfReading Shelf, StockAhead Ahead);
