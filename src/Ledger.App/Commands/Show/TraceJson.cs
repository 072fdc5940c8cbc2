using System.Text.Json;
using Ledger.App.Output;
using Ledger.Core.Baths;
using Ledger.Core.Faults;
using Ledger.Core.Film;
using Ledger.Core.Sessions;
using Ledger.Core.Tracing;

namespace Ledger.App.Commands.Show;

/// <summary>Traces, what is at risk, and the cards of sheets in JSON.</summary>
internal static class TraceJson
{
    public static void Write(TraceReading trace, Utf8JsonWriter json)
    {
        json.WriteString("what", trace.Name);
        json.WriteStartArray("start");
        for (var i = 0; i < trace.Start.Count; i++)
        {
            json.WriteStartObject();
            Write(trace.Start[i], trace.StartLabels[i], json);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("back");
        foreach (var step in trace.Back)
            Write(step, trace.Card is not null, json);
        json.WriteEndArray();
        json.WriteStartArray("forward");
        foreach (var sheet in trace.Sheets)
        {
            json.WriteStartObject();
            Fields(sheet.Card, json);
            json.WriteDate("reachedOn", sheet.On);
            json.WriteBoolean("isShared", sheet.IsShared);
            json.WriteStartArray("through");
            foreach (var name in sheet.Through)
                json.WriteStringValue(name);
            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("things");
        foreach (var thing in trace.Things)
            Write(thing, hasCount: false, json);
        json.WriteEndArray();
        Cards("sameBatch", trace.Mates, json);
        json.WriteStartArray("sameBathSince");
        foreach (var (bath, since) in trace.BathMates)
        {
            json.WriteStartObject();
            json.WriteString("bath", bath.Label.Name);
            Cards("sheets", since, json);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    public static void Write(RiskReading risk, Utf8JsonWriter json)
    {
        json.WriteString("what", risk.Name);
        json.WriteDate("by", risk.By);
        json.WriteStartArray("sheets");
        foreach (var sheet in risk.Sheets)
        {
            json.WriteStartObject();
            Fields(sheet.Card, json);
            json.WriteString("level", sheet.Level.Name());
            json.WriteDate("reachedOn", sheet.On);
            json.WriteString("reason", sheet.Reason);
            json.WriteString("toDo", sheet.ToDo);
            json.WriteBoolean("isFirst", sheet.IsFirst);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("things");
        foreach (var thing in risk.Things)
        {
            json.WriteStartObject();
            json.WriteString("name", thing.Name);
            json.WriteString("text", thing.Text);
            json.WriteString("toDo", thing.ToDo);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>The cards of sheets.</summary>
    public static void Cards(string name, IEnumerable<SheetCard> cards, Utf8JsonWriter json)
    {
        json.WriteStartArray(name);
        foreach (var card in cards)
        {
            json.WriteStartObject();
            Fields(card, json);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Fields(SheetCard card, Utf8JsonWriter json)
    {
        json.WriteString("sheet", card.Id.ToString());
        json.WriteString("negative", card.Negative);
        json.WriteDate("date", card.Date);
        json.WriteString("subject", card.Subject);
        json.WriteString("item", card.Item);
        json.WriteString("batch", card.Emulsion);
        json.WriteString("box", card.Box);
        json.WriteString("side", card.Side);
        json.WriteString("group", card.Group);
        json.WriteDate("loadedOn", card.LoadedOn);
        json.WriteDate("exposedOn", card.ExposedOn);
        json.WriteString("session", card.Session);
        json.WriteDate("developedOn", card.DevelopedOn);
        json.WriteFigure("inBatch", card.Batch);
        json.WriteString("process", card.Process);
        json.WriteStartArray("baths");
        foreach (var bath in card.Baths)
            json.WriteStringValue(bath);
        json.WriteEndArray();
        json.WriteString("fate", card.Fate?.Name());
        json.WriteString("cause", card.Cause?.Name());
        json.WriteString("place", card.Place);
        json.WriteString("filedIn", card.FiledIn);
        json.WriteString("lastFinding", card.LastFinding?.Text);
    }

    private static void Write(TraceStep step, bool hasCount, Utf8JsonWriter json)
    {
        json.WriteStartObject();
        Write(step.Node, step.Label, json);
        json.WriteDate("on", step.On);
        json.WriteBoolean("isShared", step.IsShared);
        if (hasCount)
        {
            json.WriteNumber("otherSheets", step.OtherSheets);
            json.WriteBoolean("areMore", step.AreMore);
        }

        if (step.Bath is { } bath)
            Write(bath, json);
        json.WriteEndObject();
    }

    private static void Write(TraceNode node, TraceLabel label, Utf8JsonWriter json)
    {
        json.WriteString("kind", node.Kind.Name());
        json.WriteString("name", label.Name);
        json.WriteString("text", label.Text);
    }

    private static void Write(BathMoment moment, Utf8JsonWriter json)
    {
        json.WriteArea("beforeSqIn", moment.Before);
        json.WriteArea("afterSqIn", moment.After);
        json.WriteFigure("throughputSqInPerLitre", moment.SquareInchesPerLitre);
        json.WriteNumber("ageDays", moment.AgeDays);
        json.WriteNumber("rotations", moment.Bath.Rotations);
        json.WriteDate("lastTestOn", moment.LastTest?.Date);
        json.WriteString("lastTest", moment.LastTest?.Text);
        json.WriteString("pastLimit", moment.PastLimit);
    }
}
