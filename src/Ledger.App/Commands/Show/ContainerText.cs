using System.Text.Json;
using Ledger.App.Output;
using Ledger.Core.Keeping;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.App.Commands.Show;

/// <summary>Boxes and bottles as a table and as JSON, the same on the shelf and beside an item.</summary>
internal static class ContainerText
{
    public static TextTable Table() => new(
        Column.Left("container"), Column.Right("holds"), Column.Left("opened"), Column.Left("good until"), Column.Left("by its"));

    public static void Add(TextTable table, ContainerReading reading, View view)
    {
        var container = reading.Container;
        table.Add(
            container.Code,
            container.Held.ToText(view.Style),
            container.OpenedOn is { } opened ? Dates.Text(opened) : "sealed",
            reading.GoodUntil is { } good ? Dates.Text(good.Date) : "-",
            (reading.GoodUntil?.Because ?? "no limit set") + (reading.IsPast ? ", past" : ""));
    }

    public static void Write(Utf8JsonWriter json, ShelfReading shelf, View view)
    {
        json.WriteStartArray("containers");
        foreach (var reading in shelf.Containers)
        {
            var container = reading.Container;
            json.WriteStartObject();
            json.WriteString("container", container.Code);
            json.WriteNumber("lot", container.Lot.Id.Value);
            json.WriteString("batch", container.Lot.Batch);
            json.WriteString("storage", container.Storage);
            json.WriteDate("opensFrom", container.OpensFrom);
            json.WriteFigure("exposureIndex", container.Lot.ExposureIndex);
            json.WriteDate("receivedOn", container.Lot.ReceivedOn);
            json.WriteQuantity("quantity", container.Held);
            json.WriteQuantity("size", container.Size);
            json.WriteDate("openedOn", container.OpenedOn);
            json.WriteDate("expiresOn", container.Lot.ExpiresOn);
            json.WriteDate("goodUntil", reading.GoodUntil?.Date);
            json.WriteString("goodUntilRule", reading.GoodUntil?.Rule.Name());
            json.WriteNumber("coldStorageDays", reading.GoodUntil?.ColdDays ?? 0);
            json.WriteDate("mixedOn", container.Lot.IsMixed ? container.Lot.ReceivedOn : null);
            json.WriteDate("halfEmptyOn", container.HalfEmptyOn);
            json.WriteString("formula", container.Lot.Formula);
            json.WriteBoolean("isExpired", reading.IsPast);
            json.WriteMoney("unitCost", container.Lot.UnitCost, view.Currency);
            json.WriteMoney("value", container.Value, view.Currency);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
