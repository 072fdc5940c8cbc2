namespace Ledger.Published.Tests;

/// <summary>
/// Cost formulas on worked examples that print their results. In each, what was used and what is on hand add up to what
/// was bought.
/// </summary>
public sealed class CostFlowTests
{
    /// <summary>A sale by specific identification names its lots.</summary>
    private const string OpenStax = """
        date   | event | lot | units | unit cost
        1 Jul  | buy   | 1   | 150   | 21
        5 Jul  | sell  | 1   | 120   |
        10 Jul | buy   | 2   | 225   | 27
        15 Jul | sell  | 1   | 20    |
        15 Jul | sell  | 2   | 160   |
        25 Jul | buy   | 3   | 210   | 33
        """;

    [Published("Franklin, Graybeal, Cooper: Principles of Accounting, vol. 1, OpenStax 2019, section 10.3",
        Columns = "5 Jul, 15 Jul, used, on hand")]
    private const string OpenStaxResults = """
        formula          | 5 Jul | 15 Jul  | used | on hand
        SpecificLot      | 2520  | 4740    | 7260 | 8895
        FirstInFirstOut  | 2520  | 4680    | 7200 | 8955
        MovingAverage    | 2520  | 4733    | 7253 | 8902
        """;

    [Fact]
    public void OpenStax_sales_and_stock_come_out_as_printed() => Assert.All(Table.Read(OpenStaxResults), row =>
    {
        var run = Run(Enum.Parse<CostFormula>(row["formula"]), OpenStax);
        Printed.Agrees(row, "5 Jul", run.CostOn("5 Jul").Amount);
        Printed.Agrees(row, "15 Jul", run.CostOn("15 Jul").Amount);
        Printed.Agrees(row, "used", run.Used.Amount);
        Printed.Agrees(row, "on hand", run.Flow.OnHand.Amount);
        Assert.Equal(285, run.Flow.Quantity);
        Assert.Equal(Money.Of(16_155), run.Bought);
    });

    [Fact]
    [Published("Franklin, Graybeal, Cooper: Principles of Accounting, vol. 1, OpenStax 2019, section 10.3: revenue and "
        + "gross margins", Values = 4)]
    public void OpenStax_gross_margins_come_out_as_printed()
    {
        // Revenue 120 at 36 and 180 at 39: 11,340 (printed).
        var revenue = Money.Of(120 * 36 + 180 * 39);
        Assert.Equal(Money.Of(11_340), revenue);
        Assert.Equal(Money.Of(4_080), revenue - Run(CostFormula.SpecificLot, OpenStax).Used);
        Assert.Equal(Money.Of(4_140), revenue - Run(CostFormula.FirstInFirstOut, OpenStax).Used);
        Assert.Equal("4087.06", (revenue - Run(CostFormula.MovingAverage, OpenStax).Used).Text(MeasureStyle.Metric));
    }

    [Fact]
    public void OpenStax_moving_average_is_exact_to_the_last_millionth()
    {
        // Exact: sale 80,460/17, on hand 151,335/17, used 123,300/17. The sale is cut at a millionth; the rest stays in
        // the stock.
        var run = Run(CostFormula.MovingAverage, OpenStax);
        Assert.Equal("4732.941176", run.CostOn("15 Jul").ToString());
        Assert.Equal("8902.058824", run.Flow.OnHand.ToString());
        Assert.Equal("7252.941176", run.Used.ToString());
        Assert.InRange(run.Used.Amount - 123_300m / 17, -0.000001m, 0);
        Assert.InRange(run.Flow.OnHand.Amount - 151_335m / 17, 0, 0.000001m);
    }

    [Fact]
    [Published("Franklin, Graybeal, Cooper: Principles of Accounting, vol. 1, OpenStax 2019, section 10.3: averages of "
        + "a unit", Values = 2)]
    public void OpenStax_unit_averages_come_out_as_printed()
    {
        // 26.29 after 10 July, 31.24 after 25 July.
        var flow = new CostFlow(CostFormula.MovingAverage);
        flow.Receive(new(1), 150, Money.Of(150 * 21));
        flow.Use(new(1), 120);
        flow.Receive(new(2), 225, Money.Of(225 * 27));
        Assert.Equal(Money.Of(6_705), flow.OnHand);
        Assert.Equal("26.29", flow.OnHand.Per(flow.Quantity)!.Value.Text(MeasureStyle.Metric));
        flow.Use(new(2), 180);
        flow.Receive(new(3), 210, Money.Of(210 * 33));
        Assert.Equal("31.24", flow.OnHand.Per(flow.Quantity)!.Value.Text(MeasureStyle.Metric));
    }

    /// <summary>Arithmetic, no source: 97 of 130 sold at the end.</summary>
    private const string Exercise = """
        date | event | lot | units | unit cost
        1    | buy   | 1   | 13    | 88
        2    | buy   | 2   | 45    | 91
        3    | buy   | 3   | 50    | 92
        4    | buy   | 4   | 22    | 93
        5    | sell  | 1   | 97    |
        """;

    [Fact]
    public void A_sale_over_three_lots_takes_each_at_its_cost()
    {
        var run = Run(CostFormula.FirstInFirstOut, Exercise);
        Assert.Equal(Money.Of(8_827), run.Used);
        Assert.Equal(Money.Of(3_058), run.Flow.OnHand);

        // 11,885 × 97/130 = 8,868.04.
        var average = Run(CostFormula.MovingAverage, Exercise);
        Assert.Equal("8868.04", average.Used.Text(MeasureStyle.Metric));
        Assert.Equal("3016.96", average.Flow.OnHand.Text(MeasureStyle.Metric));
    }

    /// <summary>
    /// Arithmetic, no source. From an average rounded to 2.77 the second sale would cost 692.50 and 138.50 be left,
    /// which is 831.00 out of 830.00: one unit of money too much. Exact are 691.67 and 138.33.
    /// </summary>
    private const string RoundedAverage = """
        date | event | lot | units | unit cost
        1    | buy   | 1   | 500   | 2.40
        2    | sell  | 1   | 300   |
        3    | buy   | 2   | 100   | 3.50
        4    | sell  | 1   | 250   |
        5    | buy   | 3   | 300   | 4.00
        """;

    [Fact]
    public void A_moving_average_loses_no_money_to_a_rounded_unit_cost()
    {
        var run = Run(CostFormula.MovingAverage, RoundedAverage);
        Assert.Equal(Money.Of(720), run.CostOn("2"));
        Assert.Equal("691.67", run.CostOn("4").Text(MeasureStyle.Metric));
        Assert.Equal("1338.33", run.Flow.OnHand.Text(MeasureStyle.Metric));
        Assert.Equal(Money.Of(830), run.CostOn("4") + run.Flow.OnHand - Money.Of(1_200));
    }

    /// <summary>Arithmetic, no source: a moving average step by step.</summary>
    private const string Averages = """
        event | units | unit cost | average after
        buy   | 8     | 71        | 71
        sell  | 6     |           | 71
        buy   | 3     | 76        | 74
        sell  | 3     |           | 74
        buy   | 5     | 82        | 79.71
        sell  | 3     |           | 79.71
        """;

    [Fact]
    public void A_moving_average_moves_with_each_delivery()
    {
        var flow = new CostFlow(CostFormula.MovingAverage);
        Assert.All(Table.Read(Averages), row =>
        {
            if (row["event"] == "buy")
                flow.Receive(new(1), row.Count("units"), Money.Of(row.Count("units") * row.Number("unit cost")));
            else
                flow.Use(new(1), row.Count("units"));
            Printed.Agrees(row, "average after", flow.OnHand.Per(flow.Quantity)!.Value.Amount);
        });
        Assert.Equal(4, flow.Quantity);
        Assert.Equal(318.857m, Math.Round(flow.OnHand.Amount, 3));
    }

    /// <summary>Arithmetic, no source: traced lots.</summary>
    private const string Traced = """
        date | event | lot | units | unit cost
        1    | buy   | 1   | 400   | 14
        1    | buy   | 2   | 200   | 15
        1    | buy   | 3   | 300   | 16
        1    | buy   | 4   | 250   | 20
        1    | buy   | 5   | 100   | 21
        2    | sell  | 1   | 200   |
        3    | sell  | 2   | 200   |
        4    | sell  | 1   | 200   |
        4    | sell  | 4   | 100   |
        """;

    [Fact]
    public void Traced_lots_cost_what_they_cost()
    {
        var run = Run(CostFormula.SpecificLot, Traced);
        Assert.Equal(Money.Of(20_500), run.Bought);
        Assert.Equal(Money.Of(10_600), run.Used);
        Assert.Equal(Money.Of(9_900), run.Flow.OnHand);
    }

    /// <summary>Runs a table of events; after each, used + on hand = bought.</summary>
    private static Outcome Run(CostFormula formula, string events)
    {
        var outcome = new Outcome(new CostFlow(formula));
        foreach (var row in Table.Read(events))
        {
            var (lot, units) = (new LotId(row.Count("lot")), row.Count("units"));
            if (row["event"] == "buy")
                outcome.Buy(lot, units, Money.Of(units * row.Number("unit cost")));
            else
                outcome.Sell(row["date"], lot, units);
            Assert.Equal(outcome.Bought, outcome.Used + outcome.Flow.OnHand);
        }

        return outcome;
    }

    private sealed class Outcome(CostFlow flow)
    {
        private readonly List<(string Date, Money Cost)> _sales = [];

        public CostFlow Flow => flow;

        public Money Bought { get; private set; }

        public Money Used => _sales.Aggregate(Money.Zero, (sum, sale) => sum + sale.Cost);

        public Money CostOn(string date) =>
            _sales.Where(sale => sale.Date == date).Aggregate(Money.Zero, (sum, sale) => sum + sale.Cost);

        public void Buy(LotId lot, long units, Money cost)
        {
            flow.Receive(lot, units, cost);
            Bought += cost;
        }

        public void Sell(string date, LotId lot, long units) => _sales.Add((date, flow.Use(lot, units)));
    }
}
