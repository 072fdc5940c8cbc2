namespace Ledger.App.Commands.Show;

/// <summary>show shelf: all items and their containers.</summary>
internal sealed class ShowShelf(Workbench bench)
    : ShowCommand<IReadOnlyList<ShelfReading>>(bench, "shelf",
        "Shows every item on hand, and every box and bottle with the day until which it is good.",
        "Example: trayledger show shelf --as-of 2026-01-01", _shape)
{
    private static readonly Shape<IReadOnlyList<ShelfReading>> _shape = new Shape<IReadOnlyList<ShelfReading>>()
        .AsOf()
        .Table("items", Rows, new Shape<ShelfRow>()
            .Text("item", row => row.Shelf.Item.Code)
            .Text("name", row => row.Shelf.Item.Name)
            .Text("kind", row => row.Shelf.Item.Kind.Name())
            .With((row, _) => row, ItemShape.Stock)
            .Flag("belowMinimum", row => row.Shelf.IsBelowMinimum)
            .Table("containers", (row, _) => row.Shelf.Containers, ContainerShape.Of),
            (_, rows) => [.. rows.Select(row => row.Shelf)]);

    protected override IReadOnlyList<ShelfReading> Read(View view, ParseResult parse) =>
    [
        .. view.Holdings.Items.Select(item => new ShelfReading(item, view.Holdings.ContainersOf(item.Code), view.AsOf)),
    ];

    protected override void WriteText(IReadOnlyList<ShelfReading> shelf, View view, TextWriter output)
    {
        if (shelf.Count == 0)
        {
            output.WriteLine("The shelf is empty: record an item and its delivery, or import them.");
            return;
        }

        var items = new TextTable(
            Column.Left("item"), Column.Right("on hand"), Column.Right("usable"), Column.Right("value"),
            Column.Left("name"));
        var containers = ContainerText.Table();
        var ahead = new StockAhead(view);
        foreach (var reading in shelf)
        {
            items.Add(
                reading.Item.Code, reading.OnHand.ToText(view.Style), reading.Usable.ToText(view.Style),
                UnpricedStock.Mark(reading.Value, reading.Unpriced.IsZero, view.Style),
                reading.Item.Name + Remarks(reading, ahead, view.Style));
            foreach (var container in reading.Containers)
                ContainerText.Add(containers, container, view);
        }

        items.WriteTo(output, view.Width);
        var total = new Money(shelf.Sum(reading => reading.Value.Millionths));
        var isComplete = shelf.All(reading => reading.Unpriced.IsZero);
        output.WriteLine(
            $"{UnpricedStock.Mark(total, isComplete, view.Style)} {view.Currency}".TrimEnd()
                + $" in all on {Dates.Text(view.AsOf)}");
        if (!isComplete)
            output.WriteProse(
                $"Without a price: {string.Join(", ", shelf.Where(reading => !reading.Unpriced.IsZero)
                    .Select(reading => $"{reading.Unpriced.ToText(view.Style)} of {reading.Item.Code}"))}. "
                        + $"{UnpricedStock.Legend}", view.Width);
        if (containers.IsEmpty)
            return;
        output.WriteLine();
        containers.WriteTo(output, view.Width);
        ContainerText.WriteMarks(shelf.SelectMany(reading => reading.Containers), view, output);
    }

    private static IEnumerable<ShelfRow> Rows(IReadOnlyList<ShelfReading> shelf, View view)
    {
        var ahead = new StockAhead(view);
        return shelf.Select(reading => new ShelfRow(reading, ahead));
    }

    private static string Remarks(ShelfReading reading, StockAhead ahead, MeasureStyle style)
    {
        var remarks = string.Join(", ", new[]
        {
            reading.Suspect.IsZero ? "" : $"{reading.Suspect.ToText(style)} under suspicion", reading.IsBelowMinimum
                ? "below your minimum" : "",
        }.Where(remark => remark.Length > 0).Concat(ahead.InWords(reading.Item)));
        return remarks.Length == 0 ? "" : $" ({remarks})";
    }
}
