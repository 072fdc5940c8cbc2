using System.Text.Json;
using Ledger.App.Output;
using Ledger.Core.Reordering;

namespace Ledger.App.Commands.Show;

/// <summary>A reorder reading and the open orders in JSON.</summary>
internal static class ReorderJson
{
    public static void Write(ReorderReading reading, View view, Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("item", reading.Item.Code);
        json.WriteString("name", reading.Item.Name);
        json.WriteString("pattern", reading.Pattern?.Name());
        json.WriteString("method", reading.Forecast?.Method.Name() ?? "minimum");
        json.WriteNumber("periodDays", reading.History.PeriodDays);
        json.WriteNumber("periods", reading.History.Periods);
        json.WriteNumber("periodsWithUse", reading.History.PeriodsWithUse);
        json.WriteQuantity("demandPerWeek", reading.PerWeek, reading.Item.Unit);
        json.WriteNumber("leadTimeDays", reading.LeadTime.Days);
        json.WriteString("leadTimeSource", reading.LeadTime.Source switch
        {
            LeadTimeSource.Entered => "entered",
            LeadTimeSource.Observed => "observed",
            _ => "assumed",
        });
        json.WriteFigure("enteredLeadTimeDays", reading.Item.LeadTimeDays);
        json.WriteStartArray("observedLeadTimes");
        foreach (var days in reading.LeadTime.Observed)
            json.WriteNumberValue(days);
        json.WriteEndArray();
        json.WriteFigure("serviceLevel", reading.ServiceLevel);
        json.WriteQuantity("leadTimeDemand", reading.LeadTimeDemand, reading.Item.Unit);
        json.WriteFigure("reachedLevel", reading.ReachedLevel);
        json.WriteQuantity("safetyStock", reading.SafetyStock, reading.Item.Unit);
        json.WriteQuantity("reorderPoint", reading.ReorderPoint);
        json.WriteQuantity("normalReorderPoint", reading.NormalReorderPoint);
        json.WriteQuantity("onHand", reading.OnHand);
        json.WriteQuantity("usable", reading.Usable);
        json.WriteFigure("monthsOfCover", reading.MonthsOfCover);
        json.WriteQuantity("onOrder", reading.OnOrder);
        json.WriteQuantity("planned", reading.Planned);
        json.WriteDate("runsOutOn", reading.RunsOutOn);
        json.WriteStartArray("enoughFor");
        foreach (var enough in reading.EnoughFor)
        {
            json.WriteStartObject();
            json.WriteString("process", enough.Process);
            json.WriteFigure("freshBaths", enough.Baths);
            json.WriteFigure("batches", enough.Batches);
            json.WriteFigure("sessions", enough.Sessions);
            json.WriteString("like", enough.Like);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteBoolean("orderNow", reading.Suggestion is { IsNow: true });
        json.WriteDate("orderBy", reading.Suggestion?.OrderBy);
        json.WriteNumber("orderPacks", reading.Suggestion?.Packs ?? 0);
        json.WriteDate("windowOpens", reading.Suggestion?.OpensOn);
        WriteRise(reading, view, json);
        json.WriteString("basis", reading.Basis);
        json.WriteEndObject();
    }

    public static void WriteOrders(View view, Utf8JsonWriter json)
    {
        json.WriteStartArray("orders");
        foreach (var order in view.Holdings.Orders.Open)
        {
            json.WriteStartObject();
            json.WriteString("order", order.Code);
            json.WriteDate("placedOn", order.PlacedOn);
            json.WriteString("supplier", order.Supplier);
            json.WriteBoolean("isPrepaid", order.IsPrepaid);
            json.WriteStartArray("lines");
            foreach (var line in order.Lines)
            {
                json.WriteStartObject();
                json.WriteString("item", line.Item);
                json.WriteNumber("packs", line.Packs);
                json.WriteMoney("price", line.Price, view.Currency);
                json.WriteQuantity("ordered", line.Ordered);
                json.WriteQuantity("delivered", line.Delivered);
                json.WriteQuantity("outstanding", line.Outstanding);
                json.WriteDate("expectedOn", line.ExpectedOn);
                json.WriteBoolean("isBackOrdered", line.IsBackOrdered);
                json.WriteBoolean("isLate", line.IsLate(view.AsOf));
                json.WriteString("state", line.State(view.AsOf));
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteRise(ReorderReading reading, View view, Utf8JsonWriter json)
    {
        if (reading.PriceRise is not { } rise)
        {
            json.WriteNull("priceRise");
            return;
        }

        json.WriteStartObject("priceRise");
        json.WriteDate("from", rise.From);
        json.WriteFigure("percent", rise.Thousandths / 10m);
        json.WriteNumber("packsBefore", reading.Suggestion?.PacksBeforeRise ?? 0);
        json.WriteMoney("saved", reading.Suggestion?.Saved, view.Currency);
        json.WriteEndObject();
    }
}
