using System.Text.Json;
using Ledger.App.Commands.Show;
using Ledger.App.Output;
using Ledger.Core.Planning;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.App.Commands.Plan;

/// <summary>A plan's fields in JSON.</summary>
internal sealed class PlanJson(View view)
{
    public void Write(SessionPlan plan, Utf8JsonWriter json)
    {
        json.WriteDate("asOf", view.AsOf);
        json.WriteDate("day", plan.Day);
        json.WriteString("process", plan.Process.Name);
        json.WriteNumber("processVersion", plan.Process.Version);
        json.WriteBoolean("canRun", plan.CanRun);
        json.WriteNumber("sheets", plan.Sheets);
        json.WriteArea("areaSqIn", plan.Area);
        Array(json, "batches", plan.Batches, batch => Write(batch, json));
        Array(json, "trays", plan.Trays, tray => Write(tray, json));
        Array(json, "uses", plan.Uses, use => Write(use, json));
        Array(json, "shortages", plan.Shortages, shortage => Write(shortage, json));
        Array(json, "baths", plan.Baths, bath => Write(bath, json));
        Write(plan.Cost, json);
        json.WriteStartArray("cautions");
        foreach (var caution in plan.Advice.Concat(plan.Cautions))
            json.WriteStringValue(caution);
        json.WriteEndArray();
    }

    private static void Write(PlannedBatch batch, Utf8JsonWriter json)
    {
        json.WriteNumber("number", batch.Number);
        json.WriteString("item", batch.Film.Code);
        json.WriteString("group", batch.Group);
        json.WriteNumber("sheets", batch.Sheets.Count);
        json.WriteBoolean("dummy", batch.HasDummy);
        json.WriteArea("areaSqIn", batch.Area);
        Write(batch.Developer, json);
        json.WriteFigure("shuffleEverySeconds", batch.ShuffleEverySeconds);
        json.WriteFigure("turnAtMinutes", batch.TurnAtMinutes);
        json.WriteFigure("minutes", batch.Minutes);
        Array(json, "order", batch.Sheets, sheet =>
        {
            json.WriteNumber("number", sheet.Number);
            json.WriteString("sheet", sheet.Known?.Id.ToString());
            json.WriteString("subject", sheet.Subject);
            json.WriteString("holder", sheet.Holder);
        });
    }

    private static void Write(BatchDeveloper? developer, Utf8JsonWriter json)
    {
        if (developer is null)
        {
            json.WriteNull("developer");
            return;
        }

        json.WriteStartObject("developer");
        json.WriteString("item", developer.Item.Code);
        json.WriteString("dilution", developer.Dilution?.Text);
        json.WriteFigure("concentrateMl", developer.Measured.Millilitres);
        json.WriteFigure("exactMl", developer.Need.Concentrate.Millilitres);
        Array(json, "otherParts", developer.OtherParts, part =>
        {
            json.WriteString("item", part.Item);
            json.WriteFigure("ml", part.Measured.Millilitres);
            json.WriteFigure("exactMl", part.Exact.Millilitres);
        });
        json.WriteFigure("waterMl", developer.Water.Millilitres);
        json.WriteFigure("workingMl", developer.Need.WorkingVolume.Millilitres);
        json.WriteFigure("minimumMl", developer.Need.ByArea.Millilitres);
        json.WriteBoolean("isEnough", developer.Need.IsEnough);
        json.WriteEndObject();
    }

    private static void Write(PlannedTray tray, Utf8JsonWriter json)
    {
        json.WriteNumber("number", tray.Number);
        json.WriteString("name", tray.Name);
        json.WriteString("role", tray.Role.Name());
        json.WriteQuantity("volume", tray.Volume);
        json.WriteFigure("minutes", tray.Minutes);
        json.WriteFigure("celsius", tray.Celsius);
        json.WriteBoolean("perBatch", tray.IsPerBatch);
        Array(json, "parts", tray.Parts, part =>
        {
            json.WriteString("what", part.What);
            json.WriteQuantity("amount", part.Amount);
        });
        json.WriteString("note", tray.Note);
    }

    private void Write(PlannedUse use, Utf8JsonWriter json)
    {
        json.WriteString("item", use.Item.Code);
        json.WriteQuantity("needed", use.Needed);
        json.WriteQuantity("usable", use.Usable);
        json.WriteQuantity("expired", use.Expired);
        Array(json, "from", use.Sources, source =>
        {
            json.WriteString("container", source.From.Code);
            json.WriteNumber("lot", source.From.Lot.Id.Value);
            json.WriteString("batch", source.From.Lot.Batch);
            json.WriteQuantity("quantity", source.Quantity);
            json.WriteDate("goodUntil", source.From.GoodUntil(use.Item.Keeping)?.Date);
        });
        json.WriteMoney("cost", use.Cost, view.Currency);
    }

    private static void Write(Shortage shortage, Utf8JsonWriter json)
    {
        json.WriteString("item", shortage.Item.Code);
        json.WriteQuantity("needed", shortage.Needed);
        json.WriteQuantity("usable", shortage.Usable);
        json.WriteQuantity("missing", shortage.Missing);
        json.WriteString("cure", shortage.Cure);
    }

    private static void Write(BathOutlook bath, Utf8JsonWriter json)
    {
        json.WriteString("bath", bath.Bath?.Code);
        json.WriteString("item", bath.Item);
        json.WriteBoolean("isFirst", bath.IsFirst);
        json.WriteArea("beforeSqIn", bath.Before);
        json.WriteArea("afterSqIn", bath.After);
        json.WriteArea("capacitySqIn", bath.Bath?.TotalCapacity);
        if (bath.Fits is { } fits)
            json.WriteBoolean("fits", fits);
        else
            json.WriteNull("fits");
        json.WriteString("reason", bath.Word);
        json.WriteString("proposal", bath.Proposal);
    }

    private void Write(PlanCost cost, Utf8JsonWriter json)
    {
        json.WriteStartObject("cost");
        json.WriteMoney("film", cost.Film, view.Currency);
        json.WriteMoney("developer", cost.Developer, view.Currency);
        json.WriteMoney("otherChemistry", cost.OtherChemistry, view.Currency);
        json.WriteMoney("baths", cost.Baths, view.Currency);
        json.WriteMoney("supplies", cost.Supplies, view.Currency);
        json.WriteMoney("total", cost.Total, view.Currency);
        json.WriteMoney("perSheet", cost.PerSheet, view.Currency);
        json.WriteMoney("short", cost.ShortCost, view.Currency);
        json.WriteStartArray("atLastPrice");
        foreach (var (item, _) in cost.AtLastPrice)
            json.WriteStringValue(item);
        json.WriteEndArray();
        json.WriteStartArray("unpriced");
        foreach (var item in cost.Unpriced)
            json.WriteStringValue(item);
        json.WriteEndArray();
        json.WriteBoolean("isComplete", cost.IsComplete);
        json.WriteEndObject();
    }

    private static void Array<T>(Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
