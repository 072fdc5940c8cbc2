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
        foreach (var (label, text) in ItemFacts.Of(item, view.Style))
            table.Add("  " + label, text);
        table.WriteTo(output, view.Width);
    }

    private static void WriteStock(ItemShown shown, View view, TextWriter output)
    {
        var shelf = shown.Shelf;
        if (string.Join(", ", new StockAhead(view).InWords(shelf.Item)) is { Length: > 0 } ahead)
            output.WriteLine(ahead);
        if (shelf.Containers.Count == 0)
        {
            output.WriteLine("Nothing of it is on hand.");
            return;
        }

        output.WriteLine($"{shelf.OnHand.ToText(view.Style)} on hand, {shelf.Usable.ToText(view.Style)} of it usable");
        output.WriteLine(
            $"worth{(view.Currency.Length == 0 ? "" : $" in {view.Currency}")}, if its uses were costed by");
        var values = new TextTable(Column.Left(""), Column.Right(""));
        foreach (var (formula, value) in shown.Values)
            values.Add("  " + formula.Name(), value?.Text(view.Style) ?? "-");
        values.WriteTo(output, view.Width);
        output.WriteLine();
        var containers = ContainerText.Table();
        foreach (var container in shelf.Containers)
            ContainerText.Add(containers, container, view);
        containers.WriteTo(output, view.Width);
        ContainerText.WriteMarks(shelf.Containers, view, output);
    }

    /// <summary>Where all of it went, so that the places add up to what was received.</summary>
    private static void WritePlaces(ItemShown shown, View view, TextWriter output)
    {
        if (shown.Places.Count == 0)
            return;
        var places = new TextTable(Column.Left("where"), Column.Right("how much"));
        foreach (var kind in shown.Places.Where(place => place.Kind != "supplier").GroupBy(Where))
            places.Add(kind.Key, shown.Shelf.Item.Of(kind.Sum(place => place.Held.Base)).ToText(view.Style));
        places.Add(
            "delivered in all",
            shown.Shelf.Item.Of(-shown.Places.Where(place => place.Kind == "supplier").Sum(place => place.Held.Base))
                .ToText(view.Style));
        places.WriteTo(output, view.Width);
        output.WriteLine();
    }

    private static string Where(PlaceHeld place) => place.Kind switch
    {
        "container" => "boxes and bottles",
        "holder side" => "in holders",
        "exposed box" => "exposed, in boxes",
        "jug" => $"in jug {place.Place}",
        "jug handed over" => $"handed over with jug {place.Place}",
        var single => single,
    };

    private static void WriteMoves(ItemShown shown, View view, TextWriter output)
    {
        if (shown.Moves.Count == 0)
            output.WriteLine("No delivery and no use so far.");
        var moves = new TextTable(
            Column.Left("date"), Column.Left("container"), Column.Right("change"), Column.Right("value"),
            Column.Right("entry"), Column.Left("what"));
        foreach (var move in shown.Moves)
            moves.Add(
                Dates.Text(move.Date), move.Container,
                (move.Change > 0 ? "+" : "") + shown.Shelf.Item.Of(move.Change).ToText(view.Style),
                move.Value.Text(view.Style), Scaled.ToText(move.Number, 0), move.Summary);
        moves.WriteTo(output, view.Width);
    }
}
