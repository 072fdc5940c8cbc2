namespace Ledger.Core.Tests.Reordering;

public sealed class ForecastTests
{
    [Theory]
    [InlineData("8 9 8 9 8 9 8 9 8 9", ForecastMethod.SimpleSmoothing)]
    [InlineData("0 0 4 0 0 4 0 0 4 0 0 4", ForecastMethod.CorrectedCroston)]
    [InlineData("1 9 2 12 1 10 1 9 2 12", ForecastMethod.CorrectedCroston)]
    [InlineData("0 0 1 0 12 0 0 1 0 0 15", ForecastMethod.CorrectedCroston)]
    [InlineData("4 0 4 0 4 0 4 0 0 0 0 0 0 0 0 0 0 0 0 0 0", ForecastMethod.DyingAway)]
    [InlineData("4 0 0 0 0 4 0 0 0 0 4 0 0 0 0 0 0 0 0 0 0", ForecastMethod.CorrectedCroston)]
    public void The_method_follows_the_pattern(string uses, ForecastMethod method) =>
        Assert.Equal(method, Forecast.Of(Series(uses))!.Method);

    [Theory]
    [InlineData("")]
    [InlineData("0 0 0 0 0 0 0 0 0 0")]
    [InlineData("4 0 0 4 0 0 0 0 0")] // two uses
    [InlineData("4 4 4 4 4 4 4")] // seven weeks
    public void Too_little_history_has_no_forecast(string uses) => Assert.Null(Forecast.Of(Series(uses)));

    [Fact]
    public void Steady_use_is_forecast_as_it_is() =>
        Assert.Equal(5, Forecast.Of(Series("5 5 5 5 5 5 5 5"))!.PerPeriod, 12);

    [Fact]
    public void Simple_smoothing_starts_with_the_mean_of_eight_periods_and_moves_by_a_fifth()
    {
        // Mean of 1 to 8 is 4.5; then nine steps by hand.
        long[] uses = [1, 2, 3, 4, 5, 6, 7, 8, 10];
        var level = 4.5;
        foreach (var use in uses)
            level = 0.8 * level + 0.2 * use;
        Assert.Equal(level, SimpleSmoothing.Forecast(uses), 12);
    }

    [Fact]
    public void Use_that_dies_away_is_forecast_lower_each_week()
    {
        var earlier = Forecast.Of(Series("4 0 4 0 4 0 4 0 0 0 0 0 0 0 0 0 0 0"))!;
        var later = Forecast.Of(Series("4 0 4 0 4 0 4 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0"))!;
        Assert.Equal((ForecastMethod.DyingAway, ForecastMethod.DyingAway), (earlier.Method, later.Method));
        Assert.True(later.PerPeriod < earlier.PerPeriod);
    }

    [Fact]
    public void Deliveries_are_believed_from_the_third_on()
    {
        Assert.Equal((14, LeadTimeSource.Entered), Told(14, 47, 30));
        Assert.Equal((35, LeadTimeSource.Observed), Told(14, 47, 30, 26)); // 34.3 up
        Assert.Equal((14, LeadTimeSource.Assumed), Told(null));
        Assert.Equal(0, LeadTime.Of(14, [47, 30]).DeviationDays);
        Assert.Equal(11.150486, LeadTime.Of(14, [47, 30, 26]).DeviationDays, 1e-6);

        static (int, LeadTimeSource) Told(int? entered, params int[] observed)
        {
            var lead = LeadTime.Of(entered, observed);
            return (lead.Days, lead.Source);
        }
    }

    private static DemandSeries Series(string uses) => new(
        "fen80", 7, Some.Today,
        [.. uses.Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Select(use => long.Parse(use, System.Globalization.CultureInfo.InvariantCulture))]);
}
