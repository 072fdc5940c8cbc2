using System.Text.Json;
using Ledger.App.Output;
using Ledger.Core.Film;

namespace Ledger.App.Commands.Show;

/// <summary>The holders in JSON.</summary>
internal static class HoldersJson
{
    public static void Write(FilmRegister film, View view, Utf8JsonWriter json)
    {
        json.WriteDate("asOf", view.AsOf);
        json.WriteString("slideConvention", view.Holdings.Settings.Film.SlideConvention);
        json.WriteStartArray("holders");
        foreach (var holder in film.Holders)
            Write(holder, film, view, json);
        json.WriteEndArray();
        json.WriteStartArray("exposedBoxes");
        foreach (var box in film.ExposedBoxes)
            Write(box, film, json);
        json.WriteEndArray();
    }

    private static void Write(Holder holder, FilmRegister film, View view, Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("holder", holder.Code);
        json.WriteString("format", holder.Format.Code);
        json.WriteString("notch", holder.Notch);
        json.WriteDate("boughtOn", holder.BoughtOn);
        json.WriteDate("cleanedOn", holder.CleanedOn);
        json.WriteBoolean("isBagged", holder.IsBagged);
        json.WriteStartArray("sides");
        foreach (var side in holder.Sides)
            Write(film.Read(side, view.AsOf), view, json);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(SideReading reading, View view, Utf8JsonWriter json)
    {
        var (side, sheet, limits) = (reading.Side, reading.Sheet, view.Holdings.Settings.Film);
        json.WriteStartObject();
        json.WriteString("side", side.Code);
        json.WriteString("name", side.Name);
        json.WriteString("state", reading.StateName);
        json.WriteString("outOfService", side.OutOfService);
        json.WriteString("sheet", sheet?.Id.ToString());
        json.WriteString("item", sheet?.Item);
        json.WriteString("batch", sheet?.Lot.Batch);
        json.WriteFigure("exposureIndex", sheet?.Lot.ExposureIndex);
        json.WriteString("box", sheet?.BoxCode);
        json.WriteDate("loadedOn", sheet?.LoadedOn);
        json.WriteDate("exposedOn", sheet?.Exposure?.Date);
        json.WriteString("group", sheet?.Exposure?.Group);
        json.WriteString("subject", sheet?.Exposure?.Subject);
        json.WriteFigure("days", reading.Days);
        json.WriteBoolean("isOverdue", reading.IsOverdue(limits));
        json.WriteBoolean("isFlagged", reading.IsFlagged(limits));
        json.WriteStartArray("faults");
        foreach (var fault in side.Faults)
        {
            json.WriteStartObject();
            json.WriteString("cause", fault.Cause.Name());
            json.WriteNumber("sheets", fault.Sheets);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(ExposedBox box, FilmRegister film, Utf8JsonWriter json)
    {
        var sheets = film.At(box.Place).ToList();
        json.WriteStartObject();
        json.WriteString("box", box.Code);
        json.WriteString("item", box.Item);
        json.WriteString("group", box.Group);
        json.WriteNumber("sheets", sheets.Count);
        json.WriteDate("oldestExposure", sheets.Min(sheet => sheet.Exposure!.Date));
        json.WriteEndObject();
    }
}
