namespace Ledger.App.Commands.Show;

/// <summary>
/// The parts of a period's costs, practice, another formula, the next session and the budget, in their document.
/// </summary>
internal static class CostPartsShape
{
    private static readonly Shape<CostSlice> _part = new Shape<CostSlice>()
        .Text("part", slice => slice.Name)
        .With((slice, _) => slice.PerSheet, CostsShape.PerSheet)
        .Money("film", slice => slice.Film)
        .Money("chemistry", slice => slice.Chemistry)
        .Money("supplies", slice => slice.Supplies)
        .Money("prints", slice => slice.Prints)
        .Money("waste", slice => slice.Waste)
        .Money("used", slice => slice.Used)
        .Figure("filmPercent", slice => slice.Percent(slice.Film, 2))
        .Figure("chemistryPercent", slice => slice.Percent(slice.Chemistry, 2))
        .Figure("suppliesPercent", slice => slice.Percent(slice.Supplies, 2))
        .Figure("wastePercent", slice => slice.Percent(slice.Waste, 2));

    private static readonly Shape<ItemValue> _stock = new Shape<ItemValue>()
        .Text("item", item => item.Item)
        .Text("kind", item => item.Kind.Name())
        .Money("before", item => item.Before)
        .Money("bought", item => item.Bought)
        .Money("mixed", item => item.Mixed)
        .Money("used", item => item.Used)
        .Money("lost", item => item.Lost)
        .Money("onHand", item => item.OnHand)
        .Money("postedAsUsed", item => item.PostedAsUsed);

    private static readonly Shape<NextSession> _next = new Shape<NextSession>()
        .Text("like", next => next.Like)
        .Word("obstacle", next => next.Obstacle)
        .Money("film", next => next.Estimate?.Film)
        .Money("developer", next => next.Estimate?.Developer)
        .Money("otherChemistry", next => next.Estimate?.OtherChemistry)
        .Money("baths", next => next.Estimate?.Baths)
        .Money("supplies", next => next.Estimate?.Supplies)
        .Money("total", next => next.Estimate?.Total)
        .Money("perSheet", next => next.Estimate?.PerSheet)
        .Flag("isComplete", next => next.Estimate?.IsComplete ?? false);

    public static Shape<CostsShown> Of { get; } = new Shape<CostsShown>()
        .Word("by", shown => shown.Grouping is { } grouping ? CostSlices.Groupings[(int)grouping] : null)
        .Table("parts", (shown, _) => shown.Slices, _part)
        .Object("practice", (shown, _) => shown, new Shape<CostsShown>()
            .Flag("counts", shown => shown.Costs.CountsPractice)
            .Whole("sheets", shown => shown.Practice.SheetsUsed)
            .Money("total", shown => shown.Practice.Total))
        .Text("formula", shown => shown.Formula.Name())
        .If((shown, _) => shown.Revaluation is not null, new Shape<CostsShown>()
            .Flag("formulaReconciles", shown => shown.Revaluation?.Reconciles)
            .Table("stock", (shown, _) => shown.StockShown, _stock))
        .Object("nextSession", (shown, _) => shown.Next, _next)
        .Money("monthlyBudget", shown => shown.MonthlyBudget)
        .Money("usedPerMonth", shown => Budget(shown)?.UsedPerMonth)
        .Money("boughtPerMonth", shown => Budget(shown)?.BoughtPerMonth)
        .Table("priceRises", (shown, _) => shown.PriceRises, new Shape<Notice>()
            .Text("item", rise => rise.About)
            .Text("text", rise => rise.Text)
            .Text("reason", rise => rise.Reason)
            .Date("by", rise => rise.By));

    private static BudgetReading? Budget(CostsShown shown) =>
        shown.Film is null ? BudgetReading.Of(shown.Costs, shown.MonthlyBudget ?? default) : null;
}
