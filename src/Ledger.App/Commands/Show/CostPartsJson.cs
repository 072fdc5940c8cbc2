using System.Text.Json;
using Ledger.App.Output;
using Ledger.Core.Costing;
using Ledger.Core.Journal;
using Ledger.Core.Stock;

namespace Ledger.App.Commands.Show;

/// <summary>The parts of a period's costs, practice, another formula, the next session and the budget, in JSON.</summary>
internal static class CostPartsJson
{
    public static void Write(CostsShown shown, View view, Utf8JsonWriter json)
    {
        json.WriteString("by", shown.Grouping is { } grouping ? CostSlices.Groupings[(int)grouping] : null);
        json.WriteStartArray("parts");
        foreach (var slice in shown.Slices)
            WriteSlice(slice, view, json);
        json.WriteEndArray();
        WritePractice(shown, view, json);
        WriteFormula(shown, view, json);
        WriteNext(shown.Next, view, json);
        WriteBudget(shown, view, json);
    }

    private static void WriteSlice(CostSlice slice, View view, Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("part", slice.Name);
        CostsJson.WriteSheetFigures(slice.PerSheet, view, json);
        json.WriteMoney("film", slice.Film, view.Currency);
        json.WriteMoney("chemistry", slice.Chemistry, view.Currency);
        json.WriteMoney("supplies", slice.Supplies, view.Currency);
        json.WriteMoney("prints", slice.Prints, view.Currency);
        json.WriteMoney("waste", slice.Waste, view.Currency);
        json.WriteMoney("used", slice.Used, view.Currency);
        json.WriteFigure("filmPercent", slice.Percent(slice.Film, 2));
        json.WriteFigure("chemistryPercent", slice.Percent(slice.Chemistry, 2));
        json.WriteFigure("suppliesPercent", slice.Percent(slice.Supplies, 2));
        json.WriteFigure("wastePercent", slice.Percent(slice.Waste, 2));
        json.WriteEndObject();
    }

    private static void WritePractice(CostsShown shown, View view, Utf8JsonWriter json)
    {
        json.WriteStartObject("practice");
        json.WriteBoolean("counts", shown.Costs.CountsPractice);
        json.WriteNumber("sheets", shown.Practice.SheetsUsed);
        json.WriteMoney("total", shown.Practice.Total, view.Currency);
        json.WriteEndObject();
    }

    private static void WriteFormula(CostsShown shown, View view, Utf8JsonWriter json)
    {
        json.WriteString("formula", shown.Formula.Name());
        if (shown.Revaluation is not { } revaluation)
            return;
        json.WriteBoolean("formulaReconciles", revaluation.Reconciles);
        json.WriteStartArray("stock");
        foreach (var item in shown.StockShown)
        {
            json.WriteStartObject();
            json.WriteString("item", item.Item);
            json.WriteString("kind", item.Kind.Name());
            json.WriteMoney("before", item.Before, view.Currency);
            json.WriteMoney("bought", item.Bought, view.Currency);
            json.WriteMoney("mixed", item.Mixed, view.Currency);
            json.WriteMoney("used", item.Used, view.Currency);
            json.WriteMoney("lost", item.Lost, view.Currency);
            json.WriteMoney("onHand", item.OnHand, view.Currency);
            json.WriteMoney("postedAsUsed", item.PostedAsUsed, view.Currency);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteNext(NextSession? next, View view, Utf8JsonWriter json)
    {
        if (next is null)
        {
            json.WriteNull("nextSession");
            return;
        }

        json.WriteStartObject("nextSession");
        json.WriteString("like", next.Like);
        json.WriteString("obstacle", next.Obstacle);
        json.WriteMoney("film", next.Estimate?.Film, view.Currency);
        json.WriteMoney("developer", next.Estimate?.Developer, view.Currency);
        json.WriteMoney("otherChemistry", next.Estimate?.OtherChemistry, view.Currency);
        json.WriteMoney("baths", next.Estimate?.Baths, view.Currency);
        json.WriteMoney("supplies", next.Estimate?.Supplies, view.Currency);
        json.WriteMoney("total", next.Estimate?.Total, view.Currency);
        json.WriteMoney("perSheet", next.Estimate?.PerSheet, view.Currency);
        json.WriteBoolean("isComplete", next.Estimate?.IsComplete ?? false);
        json.WriteEndObject();
    }

    private static void WriteBudget(CostsShown shown, View view, Utf8JsonWriter json)
    {
        var monthly = view.Holdings.Settings.MonthlyBudget;
        var reading = shown.Film is null ? BudgetReading.Of(shown.Costs, monthly ?? default) : null;
        json.WriteMoney("monthlyBudget", monthly, view.Currency);
        json.WriteMoney("usedPerMonth", reading?.UsedPerMonth, view.Currency);
        json.WriteMoney("boughtPerMonth", reading?.BoughtPerMonth, view.Currency);
        json.WriteStartArray("priceRises");
        foreach (var rise in shown.PriceRises)
        {
            json.WriteStartObject();
            json.WriteString("item", rise.About);
            json.WriteString("text", rise.Text);
            json.WriteString("reason", rise.Reason);
            json.WriteDate("by", rise.By);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
