using System.Text.Json;
using Ledger.App.Output;
using Ledger.Core.Baths;
using Ledger.Core.Keeping;
using Ledger.Core.Journal;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.App.Commands.Show;

/// <summary>A bath's fields in JSON, the same among all baths and alone.</summary>
internal static class BathJson
{
    public static void Write(Utf8JsonWriter json, BathReading reading, View view)
    {
        var bath = reading.Bath;
        json.WriteString("bath", bath.Code);
        json.WriteString("item", bath.Item);
        json.WriteString("role", bath.Role.Name());
        json.WriteString("material", bath.Material.Name());
        json.WriteQuantity("workingVolume", bath.WorkingVolume);
        json.WriteString("dilution", bath.Dilution.Text);
        json.WriteDate("mixedOn", bath.MixedOn);
        json.WriteArea("areaSqIn", bath.Worked);
        json.WriteArea("weightedAreaSqIn", bath.WorkedWeighted);
        json.WriteFigure("throughputSqInPerLitre", reading.ThroughputSquareInchesPerLitre);
        json.WriteArea("capacitySqInPerLitre", bath.Capacity?.PerLitre);
        json.WriteString("capacityBasis", bath.Capacity?.Basis);
        json.WriteArea("totalCapacitySqIn", bath.TotalCapacity);
        json.WriteFigure("usedPercent", reading.UsedPercent);
        json.WriteArea("remainingSqIn", reading.Remaining);
        WriteSheets(json, reading, view);
        json.WriteString("indicator", bath.Indicator);
        json.WriteNumber("ageDays", reading.AgeDays);
        json.WriteDate("goodUntil", reading.GoodUntil?.Date);
        json.WriteString("goodUntilRule", reading.GoodUntil?.Rule.Name());
        json.WriteString("endsBy", reading.EndedBy?.Name());
        json.WriteString("state", reading.State.Name());
        json.WriteString("suspicion", bath.Suspicion?.Reason);
        json.WriteDate("suspectSince", bath.Suspicion?.Since);
        json.WriteString("pairedWith", bath.PairedWith);
        json.WriteBoolean("isSecond", view.Holdings.IsSecond(bath));
        json.WriteNumber("rotations", bath.Rotations);
        json.WriteMoney("value", bath.Value, view.Currency);
        BathStoryJson.Write(json, reading, view);
    }

    /// <summary>
    /// Whole sheets of every format the ledger has, the usual ones when it has none: of the film that asks for most, and of each film.
    /// </summary>
    private static void WriteSheets(Utf8JsonWriter json, BathReading reading, View view)
    {
        json.WriteStartObject("remainingSheets");
        var rooms = RoomForFilm.Of(reading, view.Holdings);
        foreach (var room in RoomForFilm.Heaviest(rooms))
            json.WriteNumber(room.Format.Code, room.Sheets);
        json.WriteEndObject();
        json.WriteStartArray("remainingByFilm");
        foreach (var room in rooms)
        {
            json.WriteStartObject();
            json.WriteString("format", room.Format.Code);
            json.WriteFigure("fixerFactor", room.FactorThousandths / 1000m);
            json.WriteStartArray("films");
            foreach (var film in room.Films)
                json.WriteStringValue(film);
            json.WriteEndArray();
            json.WriteNumber("sheets", room.Sheets);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
