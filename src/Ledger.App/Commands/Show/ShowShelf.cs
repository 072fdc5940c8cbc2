using System.CommandLine;
using System.Text.Json;
using Ledger.App.Output;
using Ledger.App.Wiring;
using Ledger.Core.Costing;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.App.Commands.Show;

/// <summary>show shelf: all items and their containers.</summary>
internal sealed class ShowShelf(Workbench bench)
    : ShowCommand<IReadOnlyList<ShelfReading>>(bench, "shelf",
        "Shows every item on hand, and every box and bottle with the day until which it is good.", "Example: trayledger show shelf --as-of 2026-01-01")
{
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
            Column.Left("item"), Column.Right("on hand"), Column.Right("usable"), Column.Right("value"), Column.Left("name"));
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
            $"{UnpricedStock.Mark(total, isComplete, view.Style)} {view.Currency}".TrimEnd() + $" in all on {Dates.Text(view.AsOf)}");
        if (!isComplete)
            output.WriteProse(
                $"Without a price: {string.Join(", ", shelf.Where(reading => !reading.Unpriced.IsZero)
                    .Select(reading => $"{reading.Unpriced.ToText(view.Style)} of {reading.Item.Code}"))}. {UnpricedStock.Legend}", view.Width);
        if (containers.IsEmpty)
            return;
        output.WriteLine();
        containers.WriteTo(output, view.Width);
        ContainerText.WriteMarks(shelf.SelectMany(reading => reading.Containers), view, output);
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

    protected override void WriteJson(IReadOnlyList<ShelfReading> shelf, View view, Utf8JsonWriter json)
    {
        var ahead = new StockAhead(view);
        json.WriteDate("asOf", view.AsOf);
        json.WriteStartArray("items");
        foreach (var reading in shelf)
        {
            json.WriteStartObject();
            json.WriteString("item", reading.Item.Code);
            json.WriteString("name", reading.Item.Name);
            json.WriteString("kind", reading.Item.Kind.Name());
            json.WriteQuantity("onHand", reading.OnHand);
            json.WriteQuantity("usable", reading.Usable);
            json.WriteQuantity("expired", reading.Expired);
            json.WriteQuantity("suspect", reading.Suspect);
            json.WriteQuantity("onOrder", ahead.OnOrder(reading.Item));
            json.WriteQuantity("planned", ahead.Planned(reading.Item));
            json.WriteMoney("value", reading.Value, view.Currency);
            json.WriteQuantity("unpriced", reading.Unpriced);
            json.WriteBoolean("belowMinimum", reading.IsBelowMinimum);
            ContainerText.Write(json, reading, view);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
