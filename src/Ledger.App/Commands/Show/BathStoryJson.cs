using System.Text.Json;
using Ledger.App.Output;
using Ledger.Core.Baths;
using Ledger.Core.Keeping;

namespace Ledger.App.Commands.Show;

/// <summary>What ends a bath, in JSON: its capacities side by side, its ends, its tests and what they foretell.</summary>
internal static class BathStoryJson
{
    public static void Write(Utf8JsonWriter json, BathReading reading, View view)
    {
        var bath = reading.Bath;
        json.WriteString("standsIn", (bath.Standings is [.., var last] ? last.Container : WorkingContainer.FullBottle).Name());
        WriteBases(json, reading, view);
        json.WriteStartArray("ends");
        foreach (var end in reading.Ends)
            WriteEnd(json, end);
        json.WriteEndArray();
        if (reading.ComesFirst is { } next)
        {
            json.WritePropertyName("comesFirst");
            WriteEnd(json, next);
        }
        else
            json.WriteNull("comesFirst");
        WriteTests(json, reading);
        WriteSigns(json, bath);
        WriteTopUps(json, reading);
    }

    private static void WriteBases(Utf8JsonWriter json, BathReading reading, View view)
    {
        json.WriteStartArray("capacities");
        foreach (var basis in reading.Bases)
        {
            json.WriteStartObject();
            json.WriteString("basis", basis.Capacity.Basis);
            json.WriteArea("sqInPerLitre", basis.Capacity.PerLitre);
            json.WriteFigure("usedPercent", basis.UsedPercent);
            json.WriteArea("remainingSqIn", basis.Remaining);
            json.WriteStartObject("remainingSheets");
            foreach (var format in BathText.Formats(reading.Bath.Material, view))
                json.WriteNumber(format.Code, basis.RemainingSheets(format));
            json.WriteEndObject();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteEnd(Utf8JsonWriter json, EndReached end)
    {
        json.WriteStartObject();
        json.WriteString("by", end.By.Name());
        json.WriteDate("on", end.On);
        json.WriteString("reason", end.Because);
        json.WriteEndObject();
    }

    private static void WriteTests(Utf8JsonWriter json, BathReading reading)
    {
        json.WriteStartArray("clearingTests");
        foreach (var test in reading.Bath.ClearingTests)
        {
            json.WriteStartObject();
            json.WriteDate("date", test.Date);
            json.WriteString("film", test.Film);
            json.WriteFigure("seconds", test.Seconds);
            json.WriteFigure("freshSeconds", test.FreshSeconds);
            json.WriteFigure("ratio", test.Ratio);
            json.WriteBoolean("isFresh", test.IsFresh);
            json.WriteArea("weightedAreaSqIn", test.Worked);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        var trend = reading.Clearing;
        json.WriteStartObject("clearingTrend");
        json.WriteFigure("limit", (decimal)trend.Limit);
        json.WriteFigure("reachedAtSqInPerLitre", Figure(trend.ReachedAt));
        json.WriteFigure("notBeforeSqInPerLitre", Figure(trend.NotBefore));
        json.WriteFigure("notAfterSqInPerLitre", Figure(trend.NotAfter));
        json.WriteString("text", trend.Text);
        json.WriteEndObject();
        json.WriteFigure("fixingSeconds", reading.FixingSeconds);
    }

    private static void WriteSigns(Utf8JsonWriter json, Bath bath)
    {
        json.WriteStartArray("observations");
        foreach (var seen in bath.Observations)
        {
            json.WriteStartObject();
            json.WriteDate("date", seen.Date);
            json.WriteString("sign", seen.Sign);
            json.WriteBoolean("endsUse", seen.EndsUse);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("silverTests");
        foreach (var silver in bath.SilverReadings)
        {
            json.WriteStartObject();
            json.WriteDate("date", silver.Date);
            json.WriteFigure("gramsPerLitre", silver.GramsPerLitre);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteFigure("silverLimitGramsPerLitre", bath.Limits.SilverMilligramsPerLitre / 1000m);
        json.WriteStartArray("residualTests");
        foreach (var test in bath.ResidualTests)
        {
            json.WriteStartObject();
            json.WriteDate("date", test.Date);
            json.WriteString("kind", test.Kind);
            json.WriteString("result", test.Result);
            json.WriteBoolean("hasPassed", test.HasPassed);
            json.WriteString("session", test.Session);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("controlStrips");
        foreach (var strip in bath.ControlStrips)
        {
            json.WriteStartObject();
            json.WriteDate("date", strip.Date);
            json.WriteString("result", strip.Result);
            json.WriteBoolean("isWithinLimits", strip.IsWithinLimits);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteTopUps(Utf8JsonWriter json, BathReading reading)
    {
        json.WriteStartArray("topUps");
        foreach (var top in reading.Bath.TopUps)
        {
            json.WriteStartObject();
            json.WriteDate("date", top.Date);
            json.WriteQuantity("added", top.Added);
            json.WriteQuantity("pouredOff", top.Bled);
            json.WriteArea("weightedAreaSqIn", top.Worked);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteQuantity("replenisherDue", reading.Replenishment?.Due);
        json.WriteQuantity("replenisherCeiling", reading.Replenishment?.Ceiling);
    }

    private static decimal? Figure(double? number) => number is { } known && Math.Abs(known) < 1e12 ? (decimal)known : null;
}
