using System.Text.Json;
using Ledger.App.Output;
using Ledger.Core.Costing;
using Ledger.Core.Sessions;

namespace Ledger.App.Commands.Show;

/// <summary>The costs of a period in JSON.</summary>
internal static class CostsJson
{
    public static void Write(CostsShown shown, View view, Utf8JsonWriter json)
    {
        var costs = shown.Costs;
        json.WriteDate("from", costs.Facts.From);
        json.WriteDate("to", costs.Facts.To);
        json.WriteString("fates", shown.CountsThen ? "then" : "now");
        json.WriteString("item", shown.Film);
        WriteSheetFigures(shown.PerFilm, view, json);
        if (shown.Account is { } account)
            WriteAccount(account, view, json);
        else
            WriteAccount(costs, view, json);
        json.WriteBoolean("isComplete", shown.IsComplete);
        json.WriteStartArray("unpriced");
        foreach (var stock in shown.Unpriced)
            WriteUnpriced(stock, json);
        json.WriteEndArray();
        json.WriteStartArray("films");
        foreach (var film in shown.Films)
            WriteFilm(film, view, json);
        json.WriteEndArray();
        CostPartsJson.Write(shown, view, json);
        json.WriteStartArray("sheets");
        foreach (var sheet in shown.Sheets)
            WriteSheet(sheet, view, json);
        json.WriteEndArray();
    }

    private static void WriteAccount(CostReading costs, View view, Utf8JsonWriter json)
    {
        json.WriteMoney("film", costs.Film, view.Currency);
        json.WriteMoney("chemistry", costs.Chemistry, view.Currency);
        json.WriteMoney("supplies", costs.Supplies, view.Currency);
        json.WriteMoney("prints", costs.Prints, view.Currency);
        json.WriteMoney("waste", costs.Waste, view.Currency);
        json.WriteMoney("spoiledFilm", costs.SpoiledFilm, view.Currency);
        json.WriteMoney("neverUsedInBaths", costs.NeverUsedInBaths, view.Currency);
        json.WriteMoney("spent", costs.Spent, view.Currency);
        json.WriteMoney("onHand", costs.OnHand, view.Currency);
        json.WriteMoney("stillInBaths", costs.StillInBaths, view.Currency);
        json.WriteMoney("opening", costs.Opening, view.Currency);
        json.WriteMoney("bought", costs.Facts.Bought, view.Currency);
        json.WriteBoolean("reconciles", costs.Reconciles);
    }

    /// <summary>Of one film; what is left in baths belongs to none.</summary>
    private static void WriteAccount(FilmAccount film, View view, Utf8JsonWriter json)
    {
        json.WriteMoney("film", film.Film, view.Currency);
        json.WriteMoney("chemistry", film.Chemistry, view.Currency);
        json.WriteMoney("supplies", film.Supplies, view.Currency);
        json.WriteMoney("prints", film.Prints, view.Currency);
        json.WriteMoney("waste", film.Waste, view.Currency);
        json.WriteMoney("spoiledFilm", film.SpoiledFilm, view.Currency);
        json.WriteNull("neverUsedInBaths");
        json.WriteMoney("spent", film.Spent, view.Currency);
        json.WriteMoney("onHand", film.OnHand, view.Currency);
        json.WriteNull("stillInBaths");
        json.WriteMoney("opening", film.Opening, view.Currency);
        json.WriteMoney("bought", film.Bought, view.Currency);
        json.WriteBoolean("reconciles", film.Reconciles);
    }

    private static void WriteUnpriced(UnpricedStock stock, Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("item", stock.Item);
        json.WriteNumber("entry", stock.Entry);
        json.WriteQuantity("used", stock.Used);
        json.WriteQuantity("onHand", stock.OnHand);
        json.WriteEndObject();
    }

    internal static void WriteSheetFigures(FilmCost film, View view, Utf8JsonWriter json)
    {
        json.WriteNumber("sheetsUsed", film.SheetsUsed);
        json.WriteNumber("negatives", film.Negatives);
        json.WriteNumber("keepers", film.Keepers);
        json.WriteNumber("unpricedSheets", film.Unpriced);
        json.WriteMoney("perSheetUsed", film.PerSheetUsed, view.Currency);
        json.WriteMoney("perNegative", film.PerNegative, view.Currency);
        json.WriteMoney("perKeeper", film.PerKeeper, view.Currency);
    }

    private static void WriteFilm(FilmCost film, View view, Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("item", film.Item);
        WriteSheetFigures(film, view, json);
        json.WriteMoney("film", film.Film, view.Currency);
        json.WriteMoney("chemistry", film.Chemistry, view.Currency);
        json.WriteMoney("supplies", film.Supplies, view.Currency);
        json.WriteMoney("total", film.Total, view.Currency);
        json.WriteEndObject();
    }

    private static void WriteSheet(SheetCost sheet, View view, Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("sheet", sheet.Sheet);
        json.WriteString("negative", sheet.Negative);
        json.WriteString("session", sheet.Session);
        json.WriteString("item", sheet.Item);
        json.WriteDate("date", sheet.Date);
        json.WriteString("fate", sheet.Fate.Name());
        json.WriteMoney("film", sheet.Film, view.Currency);
        json.WriteMoney("developer", sheet.Developer, view.Currency);
        json.WriteMoney("otherChemistry", sheet.OtherChemistry, view.Currency);
        json.WriteMoney("supplies", sheet.Supplies, view.Currency);
        json.WriteMoney("total", sheet.Total, view.Currency);
        json.WriteBoolean("isComplete", sheet.IsComplete);
        json.WriteEndObject();
    }
}
