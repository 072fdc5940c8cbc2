using System.Globalization;
using System.Text.Json;
using Ledger.App.Tests.Support;

namespace Ledger.App.Tests;

/// <summary>Costs in parts, by other formulas, prices over time, and purchases of several lines.</summary>
public class CostCommandsTests
{
    [Theory]
    [InlineData("film", 5)]
    [InlineData("session", 22)]
    [InlineData("month", 11)]
    [InlineData("year", 2)]
    public void The_parts_of_the_demo_year_add_up_to_all_that_was_used(string by, int least)
    {
        using var room = Darkroom.WithDemoYear();
        var costs = room.Run("show", "costs", "--by", by, "--json").Json;
        var parts = costs.GetProperty("parts").EnumerateArray().ToList();
        Assert.True(parts.Count >= least, $"only {parts.Count} parts");
        foreach (var what in new[] { "film", "chemistry", "supplies", "printing", "waste" })
            Assert.Equal(Amount(costs.GetProperty(what)), parts.Sum(part => Amount(part.GetProperty(what))));
        Assert.Contains($"by {by}", room.Do("show", "costs", "--by", by), StringComparison.Ordinal);
    }

    [Fact]
    public void Opening_and_bought_are_used_wasted_or_on_hand()
    {
        using var room = Darkroom.WithDemoYear();
        var costs = room.Run("show", "costs", "--json").Json;
        Assert.Equal(
            Amount(costs.GetProperty("opening")) + Amount(costs.GetProperty("bought")),
            new[] { "film", "chemistry", "supplies", "printing", "waste", "onHand", "stillInBaths" }.Sum(what => Amount(costs.GetProperty(what))));
    }

    [Theory]
    [InlineData("lot", "specific lot")]
    [InlineData("fifo", "first in first out")]
    [InlineData("average", "moving average")]
    public void The_stock_reconciles_by_every_formula(string formula, string name)
    {
        using var room = Darkroom.WithDemoYear();
        var costs = room.Run("show", "costs", "--formula", formula, "--json").Json;
        Assert.Equal(name, costs.GetProperty("formula").GetString());
        Assert.True(costs.GetProperty("formulaReconciles").GetBoolean());
        var onHand = costs.GetProperty("stock").EnumerateArray().Sum(item => Amount(item.GetProperty("onHand")));
        if (formula == "lot")
            Assert.Equal(Amount(costs.GetProperty("onHand")), onHand);
        Assert.Equal(2, room.Run("show", "costs", "--formula", "dearest").Status);
    }

    /// <summary>The demo year's prices of pan100: 6.20 twice, then 6.77, 7.41, 7.73.</summary>
    [Fact]
    public void Prices_go_up_over_the_demo_year()
    {
        using var room = Darkroom.WithDemoYear();
        var prices = room.Run("show", "prices", "pan100", "--json").Json.GetProperty("prices").EnumerateArray().ToList();
        Assert.Equal([6.20m, 6.20m, 6.77m, 7.41m, 7.73m], prices.Select(price => Amount(price.GetProperty("perUnit"))));
        Assert.Contains("+9.5 %", room.Do("show", "prices", "pan100"), StringComparison.Ordinal);
        Assert.Equal(3, room.Run("show", "prices", "nothing").Status);
    }

    [Fact]
    public void Sheets_for_practice_are_left_out_unless_they_are_asked_for()
    {
        using var room = Darkroom.WithDemoYear();
        var without = room.Run("show", "costs", "--json").Json;
        var with = room.Run("show", "costs", "--with-practice", "--json").Json;
        Assert.Equal(without.GetProperty("sheetsUsed").GetInt32() + 4, with.GetProperty("sheetsUsed").GetInt32());
        Assert.Equal(Amount(without.GetProperty("waste")), Amount(with.GetProperty("waste")));
        Assert.Contains("4 for practice", room.Do("show", "costs").ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void The_budget_is_held_against_the_rate_of_use()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("record", "setting", "monthly-budget", "37.50");
        Assert.Equal(37.50m, Amount(room.Run("show", "costs", "--json").Json.GetProperty("monthlyBudget")));
        Assert.Contains(
            "than the 37.50 that you mean to spend", room.Do("show", "costs").ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void Another_session_is_costed_at_todays_lots()
    {
        using var room = Darkroom.WithDemoYear();
        Assert.Equal("S22", room.Run("show", "costs", "--json").Json.GetProperty("nextSession").GetProperty("like").GetString());
        Assert.Contains("nother session like S22", room.Do("show", "costs").ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal(
            JsonValueKind.Null, room.Run("show", "costs", "--as-of", "2026-01-01", "--json").Json.GetProperty("nextSession").ValueKind);
    }

    [Fact]
    public void A_purchase_of_several_lines_is_recorded_as_one_entry()
    {
        using var room = Darkroom.WithDemoYear();
        var said = room.Do(
            "record", "purchase", "inv-4711", "--shipping", "14.50", "--line", "2 pan100 at 186 expires 2028-01-31 batch CP-1 in freezer",
            "--line", "1 syrup at 42");
        Assert.Contains("pan100/", said, StringComparison.Ordinal);
        Assert.Contains("syrup/", said, StringComparison.Ordinal);
        Assert.Contains("purchase inv-4711, 428.50", room.Do("show", "journal", "--last", "1"), StringComparison.Ordinal);
        Assert.True(room.Run("check", "--json").Json.GetProperty("ok").GetBoolean());
        Assert.Equal(3, room.Run("record", "purchase", "inv-4712", "--shipping", "0.005", "--line", "1 syrup at 42").Status);
    }

    private static decimal Amount(JsonElement money) =>
        decimal.Parse(money.GetProperty("amount").GetString()!, CultureInfo.InvariantCulture);
}
