using Ledger.App.Commands.Show;
using Ledger.Exchange.Print;

namespace Ledger.App.Commands.Print;

/// <summary>print cost-report: what a period cost, with charts.</summary>
internal sealed class PrintCostReport : PrintCommand
{
    private readonly CostOptions _costs = new();

    public PrintCostReport(Workbench bench)
        : base(bench, "cost-report",
            "Prints what a period cost, with charts: a negative by month, what the money went for, the prices.", """
            The HTML page carries its charts in itself and loads nothing; they are made for
            black and white. As plain text the bars are drawn in plain characters.
            Example: trayledger print cost-report --from 2026-01-01 --html costs.html
            """)
    {
        for (var i = 0; i < _costs.All.Count; i++)
            Options.Insert(i, _costs.All[i]);
    }

    protected override PrintedPage Page(ParseResult parse, ILedger ledger, Holdings holdings)
    {
        var costs = _costs.Read(parse, ledger, holdings);
        return CostReport.Of(
            costs, _costs.Formula(parse, holdings), ledger.Prices(costs.Facts.To), holdings.Settings,
            [.. Ahead(costs, ledger, holdings)]);
    }

    /// <summary>What lies ahead belongs to a report that ends today.</summary>
    private static IEnumerable<string> Ahead(CostReading costs, ILedger ledger, Holdings holdings)
    {
        if (costs.Facts.To == ledger.Today && NextSession.Of(ledger, holdings) is { } next)
            yield return next.Sentence(holdings.Settings.Style);
        if (holdings.Settings.MonthlyBudget is { } monthly && BudgetReading.Of(costs, monthly) is { } budget)
            yield return budget.Sentence(holdings.Settings.Style);
        if (costs.Facts.To == ledger.Today)
            foreach (var rise in TodayReading.PriceRises(ledger, holdings))
                yield return rise.Sentence;
    }
}
