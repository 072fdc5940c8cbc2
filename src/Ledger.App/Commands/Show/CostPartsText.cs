using Ledger.App.Output;
using Ledger.Core.Costing;
using Ledger.Core.Measures;

namespace Ledger.App.Commands.Show;

/// <summary>What stands below the costs of a period: its parts, practice, another formula, the next session, the budget.</summary>
internal static class CostPartsText
{
    public static void Write(CostsShown shown, View view, TextWriter output)
    {
        WriteSlices(shown, view, output);
        if (!shown.Costs.CountsPractice && shown.Practice is { SheetsUsed: > 0 } practice)
            output.WriteProse(
                $"{practice.SheetsUsed} for practice, {practice.Total.Rounded()}, are left out of these figures; "
                + "--with-practice counts them.", view.Width);
        WriteFormula(shown, view, output);
        WriteNext(shown, view, output);
        WriteBudget(shown, view, output);
        WritePriceRises(shown, view, output);
    }

    private static void WriteSlices(CostsShown shown, View view, TextWriter output)
    {
        if (shown.Slices.Count == 0)
            return;
        output.WriteLine();
        var hasPrints = shown.Slices.Any(slice => slice.Prints != Money.Zero);
        var table = new TextTable([
            Column.Left("by " + CostSlices.Groupings[(int)shown.Grouping!]), Column.Right("film"), Column.Right("chemistry"),
            Column.Right("supplies"), .. hasPrints ? [Column.Right("prints")] : Array.Empty<Column>(),
            Column.Right("waste"), Column.Right("used"), Column.Right("negatives"), Column.Right("a sheet"), Column.Right("a negative"),
        ]);
        foreach (var slice in shown.Slices)
            table.Add([
                slice.Name, slice.Film.Rounded(), slice.Chemistry.Rounded(), slice.Supplies.Rounded(),
                .. hasPrints ? [slice.Prints.Rounded()] : Array.Empty<string>(), slice.Waste.Rounded(), slice.Used.Rounded(),
                Scaled.ToText(slice.PerSheet.Negatives, 0), slice.PerSheet.PerSheetUsed?.Rounded() ?? "-",
                slice.PerSheet.PerNegative?.Rounded() ?? "-",
            ]);
        table.WriteTo(output, view.Width);
        if (shown.Grouping is CostGrouping.Month or CostGrouping.Year && CostChange.Latest(shown.Slices) is { } change)
            output.WriteProse(change.Sentence, view.Width);
    }

    private static void WriteFormula(CostsShown shown, View view, TextWriter output)
    {
        if (shown.Revaluation is not { } revaluation)
            return;
        output.WriteLine();
        output.WriteProse(
            $"the stock by {shown.Formula.Name()}, and what the ledger posted as used: each unit at the cost of its own lot",
            view.Width);
        var table = new TextTable(
            Column.Left("item"), Column.Right("before"), Column.Right("bought"), Column.Right("mixed"), Column.Right("used"),
            Column.Right("lost"),
            Column.Right("on hand"), Column.Right("posted"));
        foreach (var item in shown.StockShown)
            table.Add(
                item.Item, item.Before.Rounded(), item.Bought.Rounded(), item.Mixed.Rounded(), item.Used.Rounded(), item.Lost.Rounded(),
                item.OnHand.Rounded(), item.PostedAsUsed.Rounded());
        table.WriteTo(output, view.Width);
        output.WriteLine(revaluation.Reconciles ? CostsText.Reconciled : CostsText.Unreconciled);
    }

    private static void WriteNext(CostsShown shown, View view, TextWriter output)
    {
        if (shown.Next is not { } next)
            return;
        output.WriteLine();
        output.WriteProse(next.Sentence, view.Width);
    }

    private static void WriteBudget(CostsShown shown, View view, TextWriter output)
    {
        if (shown.Film is not null || view.Holdings.Settings.MonthlyBudget is not { } monthly || BudgetReading.Of(shown.Costs, monthly) is not { } budget)
            return;
        output.WriteProse(budget.Sentence, view.Width);
    }

    private static void WritePriceRises(CostsShown shown, View view, TextWriter output)
    {
        foreach (var rise in shown.PriceRises)
            output.WriteProse(rise.Sentence, view.Width);
    }
}
