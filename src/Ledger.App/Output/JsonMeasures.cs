using System.Text.Json;

namespace Ledger.App.Output;

/// <summary>
/// How measures stand in JSON: dates as ISO text, money as exact text with its currency, quantities as number and unit.
/// </summary>
internal static class JsonMeasures
{
    public static void WriteDate(this Utf8JsonWriter json, string name, LocalDate? date)
    {
        if (date is { } day)
            json.WriteString(name, Dates.Text(day));
        else
            json.WriteNull(name);
    }

    public static void WriteQuantity(this Utf8JsonWriter json, string name, Quantity? quantity) =>
        json.WriteQuantity(name, quantity?.Value, quantity?.Unit ?? default);

    /// <summary>A quantity that is an average and may be a part of a sheet.</summary>
    public static void WriteQuantity(this Utf8JsonWriter json, string name, decimal? value, Unit unit)
    {
        if (value is not { } known)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteNumber("value", Scaled.Plain(known));
        json.WriteString("unit", unit.Name());
        json.WriteEndObject();
    }

    public static void WriteQuantity(this Utf8JsonWriter json, string name, Volume? volume) =>
        json.WriteQuantity(name, volume is { } known ? Quantity.Of(known) : (Quantity?)null);

    public static void WriteMoney(this Utf8JsonWriter json, string name, Money? money, string currency)
    {
        if (money is not { } known)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteString("amount", known.ToString());
        json.WriteString("currency", currency);
        json.WriteEndObject();
    }

    /// <summary>A number, to the millionth, without trailing zeros.</summary>
    public static void WriteFigure(this Utf8JsonWriter json, string name, decimal? number)
    {
        if (number is { } known)
            json.WriteNumber(name, Scaled.Plain(Math.Round(known, 6, MidpointRounding.AwayFromZero)));
        else
            json.WriteNull(name);
    }

    public static void WriteArea(this Utf8JsonWriter json, string name, Area? area) =>
        json.WriteFigure(name, area?.SquareInches);
}
