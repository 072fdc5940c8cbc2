using MathNet.Numerics.Distributions;

namespace Ledger.Published.Tests;

/// <summary>Reorder points, order-up-to levels and order quantities as textbooks print them.</summary>
public sealed class ReorderPointTests
{
    /// <summary>
    /// Use d and its deviation a period, lead time L and its deviation, service level; inputs of textbook exercises,
    /// results computed with R's qnorm. R1 and R7 give the lead time's use itself, R4 its deviation (15 over four
    /// days).
    /// </summary>
    private const string Examples = """
        row | d   | sd   | L  | sd L | service | exact safety  | exact point
        R1  | 50  | 5    | 1  | 0    | 0.97    | 9.40396804    | 59.40396804
        R2  | 90  | 15   | 3  | 0    | 0.80    | 21.8659610592 | 291.865961059
        R3  | 30  | 3    | 7  | 4    | 0.90    | 154.122228    | 364.122228
        R4  | 70  | 7.5  | 4  | 0    | 0.95    | 24.672804     | 304.672804
        R5  | 25  | 7.55 | 14 | 0    | 0.90    | 36.203208     | 386.203208
        R6  | 30  | 5    | 10 | 0    | 0.95    | 26.007419     | 326.007419
        R7  | 154 | 25   | 1  | 0    | 0.95    | 41.121341     | 195.121341
        R8  | 5   | 0    | 3  | 2    | 0.95    | 16.448536     | 31.448536
        R9  | 50  | 3    | 2  | 0    | 0.90    | 5.437163      | 105.437163
        """;

    [Fact]
    public void Worked_examples_come_out_to_the_last_figure_given() => Assert.All(Table.Read(Examples), row =>
    {
        var demand = NormalLeadTimeDemand.Of(Double(row, "d"), Double(row, "sd"), Double(row, "L"),
            Double(row, "sd L"));
        var service = Double(row, "service");
        Assert.Equal(Double(row, "exact safety"), demand.SafetyStock(service), 5e-7);
        Assert.Equal(Double(row, "exact point"), demand.Level(service), 5e-7);
    });

    [Fact]
    public void The_deviation_over_a_varying_lead_time_is_the_printed_one() =>
        Assert.Equal(120.262214, NormalLeadTimeDemand.Of(30, 3, 7, 4).Deviation, 5e-7); // R3

    [Theory]
    [InlineData(90, 15, 3, 0.80, 292)] // 291.87
    [InlineData(154, 25, 1, 0.95, 196)] // 195 is below 195.12 and misses the service level
    [InlineData(33.333333333333336, 0, 5, 0.5, 167)] // 166.67
    [InlineData(24.90421455938697, 7, 4, 0.96, 125)] // 99.617 + 24.5
    [InlineData(50, 0, 2, 0.95, 100)] // what is whole stays as it is
    public void A_reorder_point_is_rounded_up(double use, double deviation, double lead, double service, long point) =>
        Assert.Equal(point, NormalLeadTimeDemand.Of(use, deviation, lead).ReorderPoint(service));

    [Fact]
    public void The_periodic_review_of_the_cat_hotel_comes_out()
    {
        // R2: EOQ 400, reviewed every 4.444 weeks; target level 704.4448334, safety stock 34.44483348, 12.57887242 more
        // than continuously.
        var order = new EconomicOrder(90 * 52, 54, 0.27 * 11.70);
        Assert.Equal(400, order.Quantity, 1e-9);
        var periodic = NormalLeadTimeDemand.Of(90, 15, 3 + order.Quantity / 90);
        Assert.Equal(704.444833485, periodic.Level(0.8), 5e-9);
        Assert.Equal(34.4448334855, periodic.SafetyStock(0.8), 5e-10);
        Assert.Equal(12.57887242, periodic.SafetyStock(0.8) - NormalLeadTimeDemand.Of(90, 15, 3).SafetyStock(0.8),
            1e-8);
    }

    /// <summary>
    /// As worked in the documentation of the package Stockpyl; the service level is p ÷ (p + h).
    /// </summary>
    [Theory]
    [Published("Snyder, Shen: Fundamentals of Supply Chain Theory, 2nd ed., Wiley 2019, examples 4.3 and 5.5",
        Values = 3)]
    [InlineData(50, 8, 0.70 / 0.88, 56.60395592743389)]
    [InlineData(120, 10, 18.0 / 20, 132.815515655446)]
    [InlineData(1300 / 12.0, 43.30127018922193, 7.5 / 7.725, 190.3369965715624)]
    public void Snyder_and_Shen_levels_come_out_to_the_last_figure(double mean, double deviation,
        double service, double level) =>
        Assert.Equal(level, new NormalLeadTimeDemand(mean, deviation).Level(service), 1e-11);

    [Fact]
    [Published("Snyder, Shen: Fundamentals of Supply Chain Theory, 2nd ed., Wiley 2019, example 5.1", Values = 1)]
    public void Snyder_and_Shen_deviation_over_a_month_is_that_of_a_year_by_the_root_of_time() =>
        Assert.Equal(43.30127018922193, NormalLeadTimeDemand.Of(1300, 150, 1 / 12.0).Deviation, 1e-12);

    /// <summary>Yearly demand, cost of an order, cost of keeping one for a year.</summary>
    [Published("Snyder, Shen: Fundamentals of Supply Chain Theory, 2nd ed., Wiley 2019, example 3.1",
        Columns = "exact")]
    private const string OrderQuantities = """
        D     | S   | H     | exact
        1300  | 8   | 0.225 | 304.0467800264368
        """;

    /// <summary>√(2DS/H): arithmetic.</summary>
    private const string OtherQuantities = """
        D     | S   | H     | exact
        4680  | 54  | 3.159 | 400
        1000  | 10  | 0.50  | 200
        10000 | 150 | 0.75  | 2000
        40000 | 200 | 2     | 2828.42712475
        12000 | 50  | 2     | 774.596669
        6500  | 15  | 68.40 | 53.393
        """;

    [Fact]
    public void Economic_order_quantities_come_out() =>
        Assert.All(Table.Read(OrderQuantities).Concat(Table.Read(OtherQuantities)), row =>
        {
            var exact = row.Printed("exact");
            var order = new EconomicOrder(Double(row, "D"), Double(row, "S"), Double(row, "H"));
            Assert.Equal((double)exact.Value, order.Quantity, Math.Pow(10, -Math.Min(exact.Decimals, 9)));
        });

    [Fact]
    [Published("Snyder, Shen: Fundamentals of Supply Chain Theory, 2nd ed., Wiley 2019, example 3.1: cost of a year",
        Values = 1)]
    public void What_the_order_quantities_cost_comes_out()
    {
        Assert.Equal(68.41052550594829, new EconomicOrder(1300, 8, 0.225).YearlyCost(304.0467800264368), 1e-11);
        Assert.Equal(1500, new EconomicOrder(10_000, 150, 0.75).YearlyCost(2000), 1e-9);
        var cats = new EconomicOrder(4680, 54, 3.159);
        Assert.Equal(2 * 631.80, cats.YearlyCost(400), 1e-9);
        Assert.Equal(789.75 + 505.44, cats.YearlyCost(500), 1e-9);
    }

    /// <summary>Computed with R 4.2.2's qnorm, to sixteen digits.</summary>
    [Theory]
    [InlineData(0.80, 0.8416212335729144)]
    [InlineData(0.84134, 0.9999803859660789)]
    [InlineData(0.8413447460685429, 1)]
    [InlineData(0.90, 1.281551565544601)]
    [InlineData(0.95, 1.644853626951472)]
    [InlineData(0.97, 1.88079360815125)]
    [InlineData(0.975, 1.959963984540054)]
    [InlineData(0.98, 2.053748910631822)]
    [InlineData(0.99, 2.326347874040841)]
    [InlineData(0.995, 2.5758293035489)]
    [InlineData(0.999, 3.090232306167813)]
    public void Normal_quantiles_agree_with_the_published_ones(double probability, double z)
    {
        Assert.Equal(z, NormalQuantile.Of(probability), 1e-12);
        Assert.Equal(-z, NormalQuantile.Of(1 - probability), 1e-12);
    }

    /// <summary>Student's t with infinite degrees of freedom: three decimals.</summary>
    [Theory]
    [Published("NIST/SEMATECH e-Handbook of Statistical Methods, National Institute of Standards and Technology, "
        + "section 1.3.6.7.2, last row", Values = 6)]
    [InlineData(0.90, 1.282)]
    [InlineData(0.95, 1.645)]
    [InlineData(0.975, 1.960)]
    [InlineData(0.99, 2.326)]
    [InlineData(0.995, 2.576)]
    [InlineData(0.999, 3.090)]
    public void Normal_quantiles_agree_with_the_handbook(double probability, double printed) =>
        Assert.Equal(printed, Math.Round(NormalQuantile.Of(probability), 3));

    [Fact]
    public void Normal_quantiles_agree_with_MathNet()
    {
        foreach (var probability in Enumerable.Range(1, 9999).Select(i => i / 10_000.0)
            .Concat([1e-4, 1e-6, 1e-9, 1e-12, 1e-20, 1e-100, 1e-300]))
        {
            var expected = Normal.InvCDF(0, 1, probability);
            Assert.True(
                Math.Abs(NormalQuantile.Of(probability) - expected) <= 1e-9 * Math.Max(1, Math.Abs(expected)),
                $"{probability}: {NormalQuantile.Of(probability)} instead of {expected}");
        }
    }

    private static double Double(Row row, string column) => (double)row.Number(column);

    /// <summary>A period as a die of 20 faces: ten show nothing, six one unit, four two.</summary>
    [Fact]
    [Published("Boylan, J. E. and Syntetos, A. A.: Intermittent Demand Forecasting, Wiley 2021, chapter 3, table 3.2: "
        + "faces 10, 6 and 4", Values = 3)]
    public void The_demand_of_a_period_is_the_printed_die()
    {
        var demand = OnePeriod([.. Enumerable.Repeat(0L, 10), .. Enumerable.Repeat(1L, 6),
            .. Enumerable.Repeat(2L, 4)]);
        Assert.Equal([10.0 / 20, 16.0 / 20, 1],
            new double[] { 0, 1, 2 }.Select(amount => Math.Round(demand.Reached(amount), 9)));
        Assert.Equal((0, 1, 2), (demand.Level(0.5m), demand.Level(0.8m), demand.Level(0.81m)));
    }

    /// <summary>Six periods were seen; short costs six where over costs three, so that a level of 6 / 9 pays.</summary>
    [Fact]
    [Published("IEOR notes: Newsvendor with discrete demand (neoprimate.github.io/IEOR, read 2025): 10, 12, 14, 14, "
        + "16, 20 give 14", Values = 1)]
    public void The_best_quantity_of_six_observed_periods_is_the_printed_one() =>
        Assert.Equal(14, OnePeriod([10, 12, 14, 14, 16, 20]).Level(6m / 9));

    private static LeadTimeDemand OnePeriod(IReadOnlyList<long> uses) =>
        LeadTimeDemand.Of(new("die", 7, new(2026, 3, 15), uses), [7], UseScale.None);
}
