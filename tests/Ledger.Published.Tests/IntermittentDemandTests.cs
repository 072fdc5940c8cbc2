namespace Ledger.Published.Tests;

/// <summary>Croston, Syntetos-Boylan and TSB on published series, and the demand classes.</summary>
public sealed class IntermittentDemandTests
{
    /// <summary>42 periods, 14 demands, sum 82: this project's choice. Built from its sizes and intervals.</summary>
    private static readonly long[] A = FromIntervals("4 6 4 6 8 6 4 10 8 6 4 6 4 6", "3 3 4 2 3 5 1 4 2 3 2 3 3 4", 0);

    /// <summary>20 periods, 7 demands, sum 19, three trailing zeros: this project's choice.</summary>
    private static readonly long[] B = FromIntervals("2 3 1 2 2 5 4", "1 3 4 2 1 3 3", 3);

    /// <summary>
    /// productC, 36 months: Hyndman and Athanasopoulos, Forecasting: Principles and Practice, 2nd ed., OTexts 2018,
    /// section 12.2.
    /// </summary>
    private static readonly long[] ProductC = Numbers(
        "0 2 0 1 0 11 0 0 0 0 2 0 6 3 0 0 0 0 0 7 0 0 0 0 0 0 0 3 1 0 0 1 0 1 0 0");

    /// <summary>Twenty weeks: this project's choice.</summary>
    private static readonly long[] TwentyWeeks = Numbers("0 0 5 0 0 0 0 3 0 0 8 0 0 0 0 0 4 0 0 0");

    /// <summary>204 monthly counts, July 1991 to June 2008, sum 331: the data set PBS as shipped with sktime.</summary>
    private static readonly long[] Monthly = Numbers("""
        1 1 1 0 0 1 3 1 1 1 1 1   2 1 1 0 0 2 0 0 1 2 0 1   0 0 1 1 1 1 0 0 2 1 0 0   0 1 0 3 3 2 4 1 1 3 3 1
        0 4 1 3 0 1 2 5 14 2 0 0  3 6 2 2 2 5 1 6 3 3 2 0   1 1 0 0 0 1 4 12 4 0 7 0  2 1 4 1 3 1 0 6 9 3 1 3
        1 7 1 3 3 3 5 6 10 5 1 3  1 1 1 2 1 3 7 11 10 5 5 2 2 1 0 3 6 5 8 9 1 1 0 0   0 1 2 2 0 0 0 0 1 0 0 0
        2 1 1 0 1 0 0 0 0 0 0 0   0 0 0 0 0 0 1 0 1 3 0 0   0 0 0 0 0 0 0 0 0 0 0 0   0 0 0 0 0 0 0 0 0 0 0 0
        0 0 0 0 0 0 0 0 0 0 0 0
        """);

    /// <summary>Computed with the R package forecast 8.20 (CRAN 2023), fifteen significant digits.</summary>
    private const string Exact = """
        series | alpha | size            | interval       | croston          | sba
        A      | 0.1   | 5.4155638329162 | 3.008142377599 | 1.80030169889722 | 1.71028661395236
        A      | 0.2   | 5.6414773100544 | 3.063420616704 | 1.84156144908504 | 1.65740530417653
        B      | 0.1   | 2.463439        | 1.767828       | 1.39348341580742 | 1.32380924501705
        B      | 0.2   | 2.863616        | 2.199232       | 1.30209818700346 | 1.17188836830312
        """;

    [Fact]
    public void Croston_and_its_correction_agree_with_R_to_all_digits() => Assert.All(Table.Read(Exact), row =>
    {
        var croston = Croston.Over(row["series"] == "A" ? A : B, (double)row.Number("alpha"));
        Assert.Equal((double)row.Number("size"), croston.Size, 1e-13);
        Assert.Equal((double)row.Number("interval"), croston.Interval, 1e-12);
        Assert.Equal((double)row.Number("croston"), croston.Forecast, 5e-15);
        Assert.Equal((double)row.Number("sba"), croston.Corrected, 5e-15);
    });

    /// <summary>The levels after each demand, computed with the R package forecast 8.20 (CRAN 2023).</summary>
    private const string StepsOfB = """
        k | period | size 0.1 | interval 0.1 | ratio 0.1     | size 0.2 | interval 0.2 | ratio 0.2
        1 | 1      | 2        | 1            | 2             | 2        | 1            | 2
        2 | 4      | 2.1      | 1.2          | 1.75          | 2.2      | 1.4          | 1.57142857143
        3 | 8      | 1.99     | 1.48         | 1.34459459459 | 1.96     | 1.92         | 1.02083333333
        4 | 10     | 1.991    | 1.532        | 1.29960835509 | 1.968    | 1.936        | 1.01652892562
        5 | 11     | 1.9919   | 1.4788       | 1.34697051664 | 1.9744   | 1.7488       | 1.12900274474
        6 | 14     | 2.29271  | 1.63092      | 1.4057771074  | 2.57952  | 1.99904      | 1.2903793821
        7 | 17     | 2.463439 | 1.767828     | 1.39348341581 | 2.863616 | 2.199232     | 1.302098187
        """;

    private const string StepsOfA = """
        k  | period | size 0.1    | interval 0.1 | ratio 0.1     | size 0.2    | interval 0.2 | ratio 0.2
        1  | 3      | 4           | 3            | 1.33333333333 | 4           | 3            | 1.33333333333
        2  | 6      | 4.2         | 3            | 1.4           | 4.4         | 3            | 1.46666666667
        3  | 10     | 4.18        | 3.1          | 1.34838709677 | 4.32        | 3.2          | 1.35
        4  | 12     | 4.362       | 2.99         | 1.45886287625 | 4.656       | 2.96         | 1.57297297297
        5  | 15     | 4.7258      | 2.991        | 1.58000668673 | 5.3248      | 2.968        | 1.79407008086
        6  | 20     | 4.85322     | 3.1919       | 1.52047996491 | 5.45984     | 3.3744       | 1.61801801802
        7  | 21     | 4.767898    | 2.97271      | 1.6038893804  | 5.167872    | 2.89952      | 1.78231983225
        8  | 25     | 5.2911082   | 3.075439     | 1.72043997621 | 6.1342976   | 3.119616     | 1.96636303955
        9  | 27     | 5.56199738  | 2.9678951    | 1.87405457154 | 6.50743808  | 2.8956928    | 2.24728192162
        10 | 30     | 5.605797642 | 2.97110559   | 1.88677159804 | 6.405950464 | 2.91655424   | 2.19641053684
        11 | 32     | 5.445217878 | 2.873995031  | 1.89465111076 | 5.924760371 | 2.733243392  | 2.16766658562
        12 | 35     | 5.50069609  | 2.886595528  | 1.90559987946 | 5.939808297 | 2.786594714  | 2.13156519244
        13 | 38     | 5.350626481 | 2.897935975  | 1.84635772735 | 5.551846638 | 2.829275771  | 1.96228543527
        14 | 42     | 5.415563833 | 3.008142378  | 1.8003016989  | 5.64147731  | 3.063420617  | 1.84156144909
        """;

    [Fact]
    public void Every_step_of_Croston_agrees_with_the_tables()
    {
        Assert.All(Table.Read(StepsOfA), row => Step(row, A));
        Assert.All(Table.Read(StepsOfB), row => Step(row, B));
    }

    /// <summary>
    /// One demand is its size over its position, whatever alpha is; no demand is nothing; zeros at the end change
    /// nothing.
    /// </summary>
    [Theory]
    [InlineData("0 0 5 0", 1.6666666666666667)]
    [InlineData("5 0 0 0", 5)]
    [InlineData("0 0 0", 0)]
    public void Croston_of_a_single_demand_or_none(string uses, double forecast)
    {
        Assert.Equal(forecast, Croston.Over(Numbers(uses)).Forecast);
        Assert.Equal(forecast, Croston.Over(Numbers(uses + " 0 0 0"), 0.5).Forecast);
    }

    /// <summary>
    /// To seven figures as printed; to all digits as computed with the R package forecast 8.20 (CRAN 2023).
    /// </summary>
    [Fact]
    [Published("sktime (Alan Turing Institute 2019 and on), tests of the Croston forecaster, checked against the R "
        + "package forecast", Values = 3)]
    public void Croston_agrees_with_published_results()
    {
        Assert.Equal(0.8688921, Croston.Over(Monthly, 0.1).Forecast, 5e-8);
        Assert.Equal(0.6754646, Croston.Over(Monthly, 0.5).Forecast, 5e-8);
        Assert.Equal(1.405808, Croston.Over(Monthly, 0.05).Forecast, 5e-7);
        Assert.Equal(0.8688921082506832, Croston.Over(Monthly, 0.1).Forecast, 1e-14);
        Assert.Equal(0.6754646269605121, Croston.Over(Monthly, 0.5).Forecast, 1e-14);
        Assert.Equal(1.4058076892050029, Croston.Over(Monthly, 0.05).Forecast, 1e-14);
        Assert.Equal(0.8254475028, Croston.Over(Monthly, 0.1).Corrected, 5e-11);
        Assert.Equal(0.984596521357774, Croston.Over(ProductC, 0.1).Forecast, 5e-15);
        Assert.Equal(0.848411662175547, Croston.Over(ProductC, 0.2).Forecast, 5e-15);
        Assert.Equal(0.9353666953, Croston.Over(ProductC, 0.1).Corrected, 5e-11);
        Assert.Equal(1.44656268053148, Croston.Over(TwentyWeeks, 0.1).Forecast, 5e-15);
        Assert.Equal(1.30290456431535, Croston.Over(TwentyWeeks, 0.2).Forecast, 5e-15);
    }

    /// <summary>
    /// Start: first amount and mean chance, updates after the first use. Their stated tolerance is five decimals.
    /// </summary>
    [Theory]
    [Published("sktime (Alan Turing Institute 2019 and on), tests of the TSB forecaster: printed results", Values = 3)]
    [InlineData(0.1, 0.1, 0.015194, 0.0151935911)]
    [InlineData(0.4, 0.05, 0.106244, 0.1062459511)]
    [InlineData(0.5, 0.05, 0.116315, 0.1163170022)]
    public void TSB_agrees_with_printed_results_within_their_tolerance(double alpha, double beta,
        double printed, double recomputed)
    {
        var forecast = Tsb.Forecast(Monthly, alpha, beta, TsbStart.FirstUseMeanChance(Monthly));
        Assert.Equal(printed, forecast, 5e-6);
        Assert.Equal(recomputed, forecast, 5e-11);
    }

    /// <summary>Both start rules, computed twice by independent programs; not printed.</summary>
    private const string TsbStarts = """
        series | alpha | first use         | means
        A      | 0.1   | 1.92697353132274  | 2.0790731446255
        A      | 0.2   | 2.11528637468844  | 2.14594725368909
        B      | 0.1   | 0.939832328595453 | 0.848501513686114
        B      | 0.2   | 0.678482540357637 | 0.691391672952177
        """;

    [Fact]
    public void TSB_agrees_under_each_start_rule() => Assert.All(Table.Read(TsbStarts), row =>
    {
        var (series, alpha) = (row["series"] == "A" ? A : B, (double)row.Number("alpha"));
        Assert.Equal((double)row.Number("first use"),
            Tsb.Forecast(series, alpha, alpha, TsbStart.FirstUse(series)), 5e-14);
        Assert.Equal((double)row.Number("means"), Tsb.Forecast(series, alpha, alpha, TsbStart.Means(series)), 5e-14);
    });

    /// <summary>ADI is periods ÷ demands, CV2 over n: computed by hand.</summary>
    [Fact]
    public void Series_are_classified_as_in_the_worked_table()
    {
        Classified(A, DemandPattern.Intermittent, 3, 0.091017251636);
        Classified(B, DemandPattern.Intermittent, 2.857142857143, 0.221606648199);
        Classified(Numbers("5 4 5 6 5 4"), DemandPattern.Smooth, 1, 0.020214030916);
        Classified(Numbers("1 9 2 12 1 10"), DemandPattern.Erratic, 1, 0.621224489796);
        Classified(Numbers("0 0 1 0 12 0 0 1 0 0 15"), DemandPattern.Lumpy, 2.75, 0.764565992866);
        Classified(ProductC, DemandPattern.Lumpy, 3.272727272727, 0.797783933518);
        Classified(TwentyWeeks, DemandPattern.Intermittent, 5, 0.14);
    }

    [Fact]
    [Published("Syntetos, Boylan, Croston: On the categorization of demand patterns, Journal of the Operational "
        + "Research Society 56 (2005): 1.32", Values = 1)]
    public void Thirty_three_periods_with_twenty_five_demands_are_exactly_on_the_cut_off()
    {
        // 33/25 = 1.32, which binary fractions cannot hold; the cut-off belongs to the upper side.
        long[] onIt = [.. Enumerable.Repeat(4L, 25), .. new long[8]];
        Assert.Equal(DemandPattern.Intermittent, DemandPatterns.Of(onIt));
        Assert.Equal(DemandPattern.Smooth, DemandPatterns.Of(onIt[..^1]));
    }

    [Fact]
    [Published("Syntetos, Boylan, Croston: On the categorization of demand patterns, Journal of the Operational "
        + "Research Society 56 (2005): 0.49", Values = 1)]
    public void A_squared_variation_of_exactly_0_49_is_on_the_upper_side()
    {
        // 3 and 17: mean 10, variance 49 over n, 49/100 = 0.49.
        Assert.Equal(DemandPattern.Erratic, DemandPatterns.Of([3, 17]));
        Assert.Equal(DemandPattern.Smooth, DemandPatterns.Of([3_001, 17_000]));
        Assert.Equal(DemandPattern.Lumpy, DemandPatterns.Of([3, 0, 17]));
    }

    [Fact]
    public void Nothing_used_has_no_pattern() => Assert.Null(DemandPatterns.Of([0, 0, 0]));

    private static void Classified(long[] series, DemandPattern pattern, double interval, double variation)
    {
        Assert.Equal(pattern, DemandPatterns.Of(series));
        Assert.Equal(interval, DemandPatterns.AverageInterval(series), 5e-13);
        Assert.Equal(variation, DemandPatterns.SquaredVariation(series), 5e-13);
    }

    private static void Step(Row row, long[] series)
    {
        foreach (var alpha in new[] { "0.1", "0.2" })
        {
            var croston = Croston.Over(series.Take((int)row.Number("period")),
                double.Parse(alpha, CultureInfo.InvariantCulture));
            Agrees(row, $"size {alpha}", croston.Size);
            Agrees(row, $"interval {alpha}", croston.Interval);
            Agrees(row, $"ratio {alpha}", croston.Forecast);
        }
    }

    private static void Agrees(Row row, string column, double exact)
    {
        var (value, decimals) = row.Printed(column);
        Assert.Equal((double)value, exact, 0.5 * Math.Pow(10, -decimals) + 1e-12);
    }

    private static long[] Numbers(string text) =>
        [.. text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
            .Select(number => long.Parse(number, CultureInfo.InvariantCulture))];

    private static long[] FromIntervals(string sizes, string intervals, int zerosAtTheEnd) =>
        [.. Numbers(sizes).Zip(Numbers(intervals),
            (size, interval) => Enumerable.Repeat(0L, (int)interval - 1).Append(size)).SelectMany(part => part),
                .. new long[zerosAtTheEnd]];
}
