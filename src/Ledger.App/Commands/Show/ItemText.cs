using Ledger.App.Output;
using Ledger.Core.Costing;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.App.Commands.Show;

/// <summary>An item as a person reads it.</summary>
internal static class ItemText
{
    public static void Write(ItemShown shown, View view, TextWriter output)
    {
        var item = shown.Shelf.Item;
        output.WriteProse($"{item.Code}: {item.Name}", view.Width);
        WriteSettings(item, view, output);
        output.WriteLine();
        WriteStock(shown, view, output);
        output.WriteLine();
        WritePlaces(shown, view, output);
        WriteMoves(shown, view, output);
    }

    private static void WriteSettings(Item item, View view, TextWriter output)
    {
        var table = new TextTable(Column.Left(""), Column.Left(""));
        void Line(string name, string? text)
        {
            if (!string.IsNullOrEmpty(text))
                table.Add("  " + name, text);
        }

        Line("kind", item.Kind == ItemKind.Chemical ? $"{item.Kind.Name()}, {item.Role.Name()}" : item.Kind.Name());
        Line("format", item.Format?.Code);
        Line("pack", item.Pack.ToText(view.Style));
        Line("dilution", item.Dilution?.Text);
        Line("capacity", item.Capacity is { } capacity ? $"{capacity.PerLitre.ToText(view.Style)} per litre ({capacity.Basis})" : null);
        Line("at least", item.MinimumPer80SquareInches is { } least
            ? $"{least.ToText(view.Style)} for each {Area.Unit80.ToText(view.Style)}"
            : null);
        foreach (var other in item.OtherCapacities)
            Line("or", $"{other.PerLitre.ToText(view.Style)} per litre ({other.Basis})");
        Line("mixed from", item.StockOf);
        Line("density", item.Density is { } density ? $"{Scaled.ToText(density.GramsPerMillilitre, 3)} g per ml" : null);
        Line("not drawn", item.DeadVolume is { } dead ? $"{dead.ToText(view.Style)} in each bottle" : null);
        Line(
            "replenisher",
            item.ReplenisherPer80SquareInches is { } rate ? $"{rate.ToText(view.Style)} for each {Area.Unit80.ToText(view.Style)}" : null);
        Line("ceiling", item.ReplenisherCeilingPercent is { } ceiling ? $"{ceiling} % of its volume in replenisher" : null);
        Line("spent when", item.Indicator is { } colour ? $"its indicator is {colour}" : null);
        Line("fixer weight", item.Kind == ItemKind.Film ? Scaled.InUnits(item.FixerWeightThousandths, 1000) : null);
        Line("keeps", string.Join("; ", Keeping(item)));
        Line("lead time", item.LeadTimeDays is { } days ? $"{days} days" : null);
        Line("minimum", item.MinimumOnHand?.ToText(view.Style));
        Line("formula", item.Formula);
        Line("cautions", item.Cautions);
        table.WriteTo(output, view.Width);
    }

    private static IEnumerable<string> Keeping(Item item)
    {
        var keeping = item.Keeping;
        if (keeping.SealedDays is { } days)
            yield return $"sealed {days} days";
        if (keeping.OpenedFullDays is { } opened)
            yield return $"opened {opened} days";
        if (keeping.OpenedPartDays is { } part)
            yield return $"below half full {part} days";
        if (keeping.WorkingFullDays is { } full)
            yield return $"mixed {full} days";
        if (keeping.WorkingPartDays is { } working)
            yield return $"mixed, part-full {working} days";
        if (keeping.FloatingLidDays is { } lid)
            yield return $"mixed, under a floating lid {lid} days";
        if (keeping.TrayHours is { } hours)
            yield return $"in a tray {hours} hours";
    }

    private static void WriteStock(ItemShown shown, View view, TextWriter output)
    {
        var shelf = shown.Shelf;
        if (shelf.Containers.Count == 0)
        {
            output.WriteLine("Nothing of it is on hand.");
            return;
        }

        output.WriteLine($"{shelf.OnHand.ToText(view.Style)} on hand, {shelf.Usable.ToText(view.Style)} of it still good");
        output.WriteLine($"worth{(view.Currency.Length == 0 ? "" : $" in {view.Currency}")}, had its uses been costed by");
        var values = new TextTable(Column.Left(""), Column.Right(""));
        foreach (var (formula, value) in shown.Values)
            values.Add("  " + formula.Name(), value?.Rounded() ?? "-");
        values.WriteTo(output, view.Width);
        output.WriteLine();
        var containers = ContainerText.Table();
        foreach (var container in shelf.Containers)
            ContainerText.Add(containers, container, view);
        containers.WriteTo(output, view.Width);
    }

    /// <summary>Where all of it went, so that the places add up to what was received.</summary>
    private static void WritePlaces(ItemShown shown, View view, TextWriter output)
    {
        if (shown.Places.Count == 0)
            return;
        var places = new TextTable(Column.Left("where"), Column.Right("how much"));
        foreach (var kind in shown.Places.Where(place => place.Kind != "supplier").GroupBy(place => place.Kind))
            places.Add(
                kind.Key is "container" ? "boxes and bottles" : kind.Key is "holder side" ? "in holders" : kind.Key is "exposed box"
                    ? "exposed, in boxes" : kind.Key,
                shown.Shelf.Item.Of(kind.Sum(place => place.Held.Base)).ToText(view.Style));
        places.Add(
            "received in all",
            shown.Shelf.Item.Of(-shown.Places.Where(place => place.Kind == "supplier").Sum(place => place.Held.Base)).ToText(view.Style));
        places.WriteTo(output, view.Width);
        output.WriteLine();
    }

    private static void WriteMoves(ItemShown shown, View view, TextWriter output)
    {
        if (shown.Moves.Count == 0)
            output.WriteLine("It never came and never went.");
        var moves = new TextTable(
            Column.Left("date"), Column.Left("container"), Column.Right("change"), Column.Right("value"),
            Column.Right("entry"), Column.Left("what"));
        foreach (var move in shown.Moves)
            moves.Add(
                Dates.Text(move.Date), move.Container, (move.Change > 0 ? "+" : "") + shown.Shelf.Item.Of(move.Change).ToText(view.Style),
                move.Value.Rounded(), Scaled.ToText(move.Number, 0), move.Summary);
        moves.WriteTo(output, view.Width);
    }
}
