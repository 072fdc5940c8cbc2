using System.Text.Json;
using Ledger.App.Output;
using Ledger.Core.Costing;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.App.Commands.Show;

/// <summary>An item in JSON.</summary>
internal static class ItemJson
{
    public static void Write(ItemShown shown, View view, Utf8JsonWriter json)
    {
        var shelf = shown.Shelf;
        WriteSettings(shelf.Item, json);
        json.WriteQuantity("onHand", shelf.OnHand);
        json.WriteQuantity("usable", shelf.Usable);
        json.WriteQuantity("expired", shelf.Expired);
        json.WriteQuantity("suspect", shelf.Suspect);
        var ahead = new StockAhead(view);
        json.WriteQuantity("onOrder", ahead.OnOrder(shelf.Item));
        json.WriteQuantity("planned", ahead.Planned(shelf.Item));
        json.WriteMoney("value", shelf.Value, view.Currency);
        json.WriteQuantity("unpriced", shelf.Unpriced);
        json.WriteStartArray("values");
        foreach (var (formula, value) in shown.Values)
        {
            json.WriteStartObject();
            json.WriteString("formula", formula.Name());
            json.WriteMoney("value", value, view.Currency);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        ContainerText.Write(json, shelf, view);
        WritePlaces(shown, view, json);
        WriteMoves(shown, view, json);
    }

    private static void WritePlaces(ItemShown shown, View view, Utf8JsonWriter json)
    {
        json.WriteStartArray("places");
        foreach (var place in shown.Places)
        {
            json.WriteStartObject();
            json.WriteString("place", place.Place);
            json.WriteString("kind", place.Kind);
            json.WriteQuantity("quantity", place.Held);
            json.WriteMoney("value", place.Value, view.Currency);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteSettings(Item item, Utf8JsonWriter json)
    {
        json.WriteString("item", item.Code);
        json.WriteString("name", item.Name);
        json.WriteString("kind", item.Kind.Name());
        json.WriteString("role", item.Role.Name());
        json.WriteString("format", item.Format?.Code);
        json.WriteString("unit", item.Unit.Name());
        json.WriteQuantity("pack", item.Pack);
        json.WriteString("dilution", item.Dilution?.Text);
        json.WriteArea("capacitySqInPerLitre", item.Capacity?.PerLitre);
        json.WriteString("capacityBasis", item.Capacity?.Basis);
        json.WriteQuantity("minimumPer80SqIn", item.MinimumPer80SquareInches);
        json.WriteFigure("fixerFactor", item.FixerFactorThousandths / 1000m);
        json.WriteStartObject("keeping");
        json.WriteFigure("sealedDays", item.Keeping.SealedDays);
        json.WriteFigure("openedFullDays", item.Keeping.OpenedFullDays);
        json.WriteFigure("openedPartDays", item.Keeping.OpenedPartDays);
        json.WriteFigure("workingFullDays", item.Keeping.WorkingFullDays);
        json.WriteFigure("workingPartDays", item.Keeping.WorkingPartDays);
        json.WriteFigure("trayHours", item.Keeping.TrayHours);
        json.WriteFigure("floatingLidDays", item.Keeping.FloatingLidDays);
        json.WriteEndObject();
        json.WriteStartArray("otherCapacities");
        foreach (var capacity in item.OtherCapacities)
        {
            json.WriteStartObject();
            json.WriteString("basis", capacity.Basis);
            json.WriteArea("sqInPerLitre", capacity.PerLitre);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteFigure("densityGramsPerMl", item.Density?.GramsPerMillilitre);
        json.WriteQuantity("deadVolume", item.DeadVolume);
        json.WriteQuantity("replenisherPer80SqIn", item.ReplenisherPer80SquareInches);
        json.WriteFigure("replenisherCeilingPercent", item.ReplenisherCeilingPercent);
        json.WriteString("indicator", item.Indicator);
        json.WriteString("stockOf", item.StockOf);
        json.WriteStartArray("otherParts");
        foreach (var part in item.OtherParts)
            json.WriteStringValue(part);
        json.WriteEndArray();
        json.WriteFigure("freezerDays", item.FreezerDays);
        json.WriteFigure("fridgeDays", item.FridgeDays);
        json.WriteFigure("thawHours", item.ThawHours);
        json.WriteFigure("leadTimeDays", item.LeadTimeDays);
        json.WriteFigure("serviceLevel", item.ServiceLevel);
        json.WriteQuantity("minimumOnHand", item.MinimumOnHand);
        json.WriteString("formula", item.Formula);
        json.WriteString("cautions", item.Cautions);
    }

    private static void WriteMoves(ItemShown shown, View view, Utf8JsonWriter json)
    {
        json.WriteStartArray("moves");
        foreach (var move in shown.Moves)
        {
            json.WriteStartObject();
            json.WriteNumber("entry", move.Number);
            json.WriteDate("date", move.Date);
            json.WriteString("summary", move.Summary);
            json.WriteString("container", move.Container);
            json.WriteNumber("lot", move.Lot.Value);
            json.WriteQuantity("change", shown.Shelf.Item.Of(move.Change));
            json.WriteMoney("value", move.Value, view.Currency);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
