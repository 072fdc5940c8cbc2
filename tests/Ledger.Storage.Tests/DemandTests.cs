namespace Ledger.Storage.Tests;

/// <summary>
/// What counts as use. The stock comes on 2 January 2025 and the bath F1 is mixed of 300 ml on 1 February.
/// </summary>
public sealed class DemandTests : IDisposable
{
    private readonly TemporaryLedger _file = new();

    public DemandTests() => Some.Stock(_file);

    public void Dispose() => _file.Dispose();

    [Fact]
    public void Periods_end_with_the_day_and_reach_back_to_the_first_delivery()
    {
        _file.Accept(Some.Session("S01", 4, month: 3)); // 1 March
        _file.Accept(Some.Session("S02", 3, month: 3) with { Date = Some.Day(3, 8) });
        var series = Demand("pan", Some.Day(3, 8));
        Assert.Equal((7, Some.Day(3, 8), 10),
            (series.PeriodDays, series.LastDay, series.Periods)); // 66 days: nine whole weeks and three days
        Assert.Equal([0, 0, 0, 0, 0, 0, 0, 0, 4, 3], series.Uses);
        Assert.Equal([0, 0, 0, 0, 0, 0, 0, 4, 3],
            Demand("pan", Some.Day(3, 9), 8).Uses); // 2 to 9 March, and 22 February to 1 March
    }

    [Fact]
    public void Negatives_keepers_and_rejects_count_and_tests_and_practice_do_not()
    {
        foreach (var fate in new[] { Fate.Negative, Fate.Keeper, Fate.Reject, Fate.Test, Fate.Practice })
            _file.Accept(Some.Session($"S-{fate}", 2, fate));
        Assert.Equal(6, Demand("pan", Some.Day(3, 1)).Uses[^1]);
        Assert.Equal(5 * 25_000,
            Demand("syrup", Some.Day(3, 1)).Uses[^1]); // the developer of a test is gone all the same
        Assert.Equal(5, Demand("gloves", Some.Day(3, 1)).Uses[^1]);
    }

    [Fact]
    public void A_bath_counts_when_it_is_mixed_and_not_when_it_is_poured_out()
    {
        _file.Accept(new Discard { Key = Some.Key(), Date = Some.Day(3, 1), What = "F1", Reason = "spent" });
        Assert.Equal(300_000, Demand("fix", Some.Day(3, 1)).Uses.Sum());
        Assert.Equal(300_000, Demand("fix", Some.Day(2, 1)).Uses[^1]);
    }

    [Fact]
    public void What_was_thrown_away_counted_or_corrected_does_not_count()
    {
        _file.Accept(new Discard { Key = Some.Key(), Date = Some.Day(3, 1), What = "pan", Quantity = new(3, Unit.Sheet),
            Reason = "fogged" });
        _file.Accept(new StockCount { Key = Some.Key(), Date = Some.Day(3, 1), What = "syrup",
            Found = Quantity.Of(900, Unit.Millilitre), Reason = "dregs" });
        var wrong = _file.Accept(Some.Session());
        _file.Accept(new Undo { Key = Some.Key(), Date = Some.Day(3, 1), Number = wrong.Number, Reason = "mistaken" });
        Assert.All(new[] { "pan", "syrup", "gloves" },
            item => Assert.Equal(0, Demand(item, Some.Day(3, 1)).Uses.Sum()));
    }

    [Fact]
    public void A_day_before_shows_what_was_known_then()
    {
        _file.Accept(Some.Session());
        Assert.Equal(0, Demand("pan", Some.Day(2, 28)).Uses.Sum());
        Assert.Empty(_file.Ledger.Demand(Some.Day(1, 1), 7));
    }

    [Fact]
    public void Delivery_times_are_those_of_the_deliveries_that_name_an_order()
    {
        _file.Accept(new OrderPlacement { Key = Some.Key(), Date = Some.Day(4, 1), Order = "A",
            Lines = [new() { Item = "pan", Packs = 2 }] });
        var first = _file.Accept(Some.Delivery("pan", 1, 186, order: "A") with { Date = Some.Day(4, 11) });
        _file.Accept(Some.Delivery("pan", 1, 186, order: "A") with { Date = Some.Day(5, 21) });
        _file.Accept(Some.Delivery("pan", 1, 186) with { Date = Some.Day(5, 22) });
        Assert.Equal([new("pan", Some.Day(4, 1), 10), new("pan", Some.Day(4, 1), 50)],
            _file.Ledger.DeliveryTimes(Some.Day(12, 1)));
        Assert.Equal([new("pan", Some.Day(4, 1), 10)], _file.Ledger.DeliveryTimes(Some.Day(5, 20)));
        _file.Accept(new Undo { Key = Some.Key(), Date = Some.Day(6, 1), Number = first.Number, Reason = "mistaken" });
        Assert.Equal([new("pan", Some.Day(4, 1), 50)], _file.Ledger.DeliveryTimes(Some.Day(12, 1)));
    }

    [Fact]
    public void The_last_price_is_that_of_the_latest_delivery_in_the_ledgers_currency()
    {
        _file.Accept(Some.Delivery("pan", 1, 100, month: 5) with { Currency = "USD", Rate = 0.9m });
        _file.Accept(Some.Delivery("pan", 1, 80, month: 4));
        Assert.Equal(new LastPrice("pan", Some.Day(5, 2), Money.Of(90)), Price(Some.Day(6, 1)));
        Assert.Equal(new LastPrice("pan", Some.Day(4, 2), Money.Of(80)), Price(Some.Day(4, 30)));
    }

    private LastPrice Price(LocalDate day) => _file.Ledger.LastPrices(day).Single(price => price.Item == "pan");

    private DemandSeries Demand(string item, LocalDate asOf, int days = 7) =>
        _file.Ledger.Demand(asOf, days).Single(series => series.Item == item);
}
