namespace Ledger.App.Commands.Show;

/// <summary>
/// What stands below the costs of a period: its parts, practice, another formula, the next session, the budget.
/// </summary>
internal static class CostPartsText
{
    public static void Write(CostsShown shown, View view, TextWriter output)
    {
        WriteSlices(shown, view, output);
        if (!shown.Costs.CountsPractice && shown.Practice is { SheetsUsed: > 0 } practice)
            output.WriteProse(
                $"{practice.SheetsUsed} for practice, {practice.Total.Text(view.Style)}, are left out of these "
                    + "figures; --with-practice counts them.", view.Width);
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
            Column.Left("by " + CostSlices.Groupings[(int)shown.Grouping!]), Column.Right("film"),
            Column.Right("chemistry"), Column.Right("supplies"),
            .. hasPrints ? [Column.Right("prints")] : Array.Empty<Column>(), Column.Right("waste"),
            Column.Right("used"), Column.Right("sheets"), Column.Right("negatives"),
                Column.Right("a sheet"), Column.Right("a negative"),
        ]);
        foreach (var slice in shown.Slices)
            table.Add([
                slice.Name, slice.Film.Text(view.Style), slice.Chemistry.Text(view.Style),
                slice.Supplies.Text(view.Style), .. hasPrints ? [slice.Prints.Text(view.Style)] : Array.Empty<string>(),
                slice.Waste.Text(view.Style), UnpricedStock.Mark(slice.Used, slice.PerSheet.IsComplete, view.Style),
                Scaled.ToText(slice.PerSheet.SheetsUsed, 0), Scaled.ToText(slice.PerSheet.Negatives, 0),
                UnpricedStock.Mark(slice.PerSheet.PerSheetUsed, slice.PerSheet.IsComplete, view.Style),
                UnpricedStock.Mark(slice.PerSheet.PerNegative, slice.PerSheet.IsComplete, view.Style),
            ]);
        table.WriteTo(output, view.Width);
        if (FewSheets(shown) is { } few)
            output.WriteProse(few, view.Width);
        if (shown.Grouping is CostGrouping.Month or CostGrouping.Year && CostChange.Latest(shown.Slices) is { } change)
            output.WriteProse(change.Sentence(view.Style), view.Width);
    }

    /// <summary>A comparison of a few sheets says little; that is said.</summary>
    private static string? FewSheets(CostsShown shown)
    {
        var few = shown.Slices.Where(slice => slice.PerSheet.SheetsUsed is > 0 and < CostSlices.FewSheets)
            .Select(slice => slice.Name).ToList();
        return shown.Grouping is CostGrouping.Month or CostGrouping.Year or CostGrouping.Session || few.Count == 0
            || shown.Slices.Count < 2 ? null
            : $"Fewer than {CostSlices.FewSheets} sheets, so that a single spoiled one changes the figures much: "
                + $"{string.Join(", ", few)}.";
    }

    private static void WriteFormula(CostsShown shown, View view, TextWriter output)
    {
        if (shown.Revaluation is not { } revaluation)
            return;
        output.WriteLine();
        output.WriteProse(
            $"the stock by {shown.Formula.Name()}, and what the ledger posted as used: each unit at the cost of its "
                + "own lot",
            view.Width);
        var table = new TextTable(
            Column.Left("item"), Column.Right("before"), Column.Right("bought"), Column.Right("mixed"),
            Column.Right("used"), Column.Right("lost"),
            Column.Right("on hand"), Column.Right("posted"));
        foreach (var item in shown.StockShown)
            table.Add(
                item.Item, item.Before.Text(view.Style), item.Bought.Text(view.Style), item.Mixed.Text(view.Style),
                item.Used.Text(view.Style), item.Lost.Text(view.Style),
                item.OnHand.Text(view.Style), item.PostedAsUsed.Text(view.Style));
        table.WriteTo(output, view.Width);
        output.WriteLine(revaluation.Reconciles ? CostsText.Reconciled : CostsText.Unreconciled);
    }

    private static void WriteNext(CostsShown shown, View view, TextWriter output)
    {
        if (shown.Next is not { } next)
            return;
        output.WriteLine();
        output.WriteProse(next.Sentence(view.Style), view.Width);
    }

    private static void WriteBudget(CostsShown shown, View view, TextWriter output)
    {
        if (shown.Film is not null || view.Holdings.Settings.MonthlyBudget is not { } monthly
            || BudgetReading.Of(shown.Costs, monthly) is not { } budget)
            return;
        output.WriteProse(budget.Sentence(view.Style), view.Width);
    }

    private static void WritePriceRises(CostsShown shown, View view, TextWriter output)
    {
        foreach (var rise in shown.PriceRises)
            output.WriteProse(rise.Sentence, view.Width);
    }
}
