using System.Text.Json;

namespace Ledger.App.Tests;

/// <summary>Costs in parts, by other formulas, prices over time, and deliveries of several lines.</summary>
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
        foreach (var what in new[] { "film", "chemistry", "supplies", "prints", "waste" })
            Assert.Equal(Amount(costs.GetProperty(what)), parts.Sum(part => Amount(part.GetProperty(what))));
        Assert.Contains($"by {by}", room.Do("show", "costs", "--by", by), StringComparison.Ordinal);
    }

    /// <summary>Paper becomes prints, not negatives; its parts hold them, by whatever it is divided.</summary>
    [Theory]
    [InlineData("film")]
    [InlineData("session")]
    [InlineData("month")]
    [InlineData("year")]
    public void The_parts_of_a_paper_add_up_to_its_prints_and_waste(string by)
    {
        using var room = Darkroom.WithDemoYear();
        var costs = room.Run("show", "costs", "--film", "fibre-vc", "--by", by, "--json").Json;
        Assert.True(Amount(costs.GetProperty("prints")) > 0);
        foreach (var what in new[] { "prints", "waste" })
            Assert.Equal(Amount(costs.GetProperty(what)),
                costs.GetProperty("parts").EnumerateArray().Sum(part => Amount(part.GetProperty(what))));
    }

    [Fact]
    public void Opening_and_bought_are_used_wasted_or_on_hand()
    {
        using var room = Darkroom.WithDemoYear();
        var costs = room.Run("show", "costs", "--json").Json;
        Assert.Equal(
            Amount(costs.GetProperty("opening")) + Amount(costs.GetProperty("bought")),
            new[] { "film", "chemistry", "supplies", "prints", "waste", "onHand",
                "stillInBaths" }.Sum(what => Amount(costs.GetProperty(what))));
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
        Assert.Equal(Amount(costs.GetProperty("onHand")), onHand);
        Assert.True(costs.GetProperty("reconciles").GetBoolean());
        Assert.Equal(2, room.Run("show", "costs", "--formula", "dearest").Status);
    }

    /// <summary>
    /// Of ortho16 the new film was taken before the expired: 4 sheets at 11.14, which first in, first out are 4 at
    /// 8.40.
    /// </summary>
    [Fact]
    public void The_formula_of_the_settings_is_that_of_every_figure()
    {
        using var room = Darkroom.WithDemoYear();
        var byLot = Amount(Ortho(room));
        room.Do("record", "setting", "cost-formula", "fifo");
        Assert.Equal("first in first out", room.Run("show", "costs", "--json").Json.GetProperty("formula").GetString());
        Assert.Equal(4 * (11.14m - 8.40m), byLot - Amount(Ortho(room)));
        Assert.StartsWith("By first in first out:", room.Do("show", "costs").Split('\n')[1], StringComparison.Ordinal);
        Assert.True(room.Run("check", "--json").Json.GetProperty("ok").GetBoolean());
        Assert.Equal(2, room.Run("record", "setting", "cost-formula", "lifo").Status);

        static JsonElement Ortho(Darkroom room) =>
            room.Run("show", "costs", "--film", "ortho16", "--json").Json.GetProperty("films")[0].GetProperty("film");
    }

    [Fact]
    public void By_month_it_says_why_a_negative_cost_more_or_less_than_the_month_before()
    {
        using var room = Darkroom.WithDemoYear();
        var parts = room.Run("show", "costs", "--by", "month", "--json").Json.GetProperty("parts")
            .EnumerateArray().ToList();
        var (before, last) = (Amount(parts[^2].GetProperty("perNegative")),
            Amount(parts[^1].GetProperty("perNegative")));
        Assert.Contains(
            $"a negative cost {Cents(last)}, {Cents(Math.Abs(last - before))} {(last < before ? "less" : "more")} than "
                + "in "
            + $"{parts[^2].GetProperty("part").GetString()}: ",
            room.Do("show", "costs", "--by", "month").ReplaceLineEndings(" "), StringComparison.Ordinal);

        static string Cents(decimal amount) =>
            Math.Round(amount, 2, MidpointRounding.AwayFromZero).ToString("0.00", CultureInfo.InvariantCulture);
    }

    [Fact]
    public void A_rise_is_shown_with_what_buying_before_it_saves()
    {
        using var room = Darkroom.WithDemoYear();
        var rise = room.Run("show", "costs", "--json").Json.GetProperty("priceRises")[0];
        Assert.Equal("fen80", rise.GetProperty("item").GetString());
        Assert.Matches("^[0-9]+ packs? at the old price .*, and cost [0-9.]+ EUR less$",
            rise.GetProperty("reason").GetString());
        Assert.Contains("fen80 costs 6 % more from 2026-05-01", room.Do("show", "costs").ReplaceLineEndings(" "),
            StringComparison.Ordinal);
    }

    [Fact]
    public void The_report_stands_on_one_page_with_charts_or_in_plain_text()
    {
        using var room = Darkroom.WithDemoYear();
        var file = room.PathOf("costs.html");
        room.Do("print", "cost-report", "--html", file);
        var html = File.ReadAllText(file);
        Assert.Contains("<svg", html, StringComparison.Ordinal);
        Assert.DoesNotContain("://", html, StringComparison.OrdinalIgnoreCase);
        var costs = room.Run("show", "costs", "--json").Json;
        foreach (var figure in new[] { "opening", "bought", "film", "waste", "onHand" })
            Assert.Contains(costs.GetProperty(figure).GetProperty("amount").GetString()!, html,
                StringComparison.Ordinal);
        Assert.Equal(3, room.Run("print", "cost-report", "--html", file).Status);
        var text = room.Do("print", "cost-report", "--formula", "average");
        Assert.Contains("By moving average", text, StringComparison.Ordinal);
        Assert.All(text.Split('\n'), line => Assert.InRange(line.Length, 0, 72));
        Assert.Equal(2, room.Run("print", "cost-report", "--from", "2026-02-01", "--to", "2026-01-01").Status);
    }

    /// <summary>The tables say to the millionth what the readings say.</summary>
    [Fact]
    public void The_export_holds_the_readings_of_the_costs()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("export", room.PathOf("export"));
        var year = Csv(room, "cost_reconciled").Single(row => row["year"] == "2025");
        var costs = room.Run("show", "costs", "--from", "2025-01-01", "--to", "2025-12-31", "--json").Json;
        foreach (var (column, field) in new[] { ("film_cost", "film"), ("waste", "waste"),
            ("on_hand", "onHand"), ("in_baths", "stillInBaths"), ("bought", "bought") })
            Assert.Equal(costs.GetProperty(field).GetProperty("amount").GetString(), year[column]);
        var years = Csv(room, "cost_reconciled");
        Assert.All(years, row => Assert.Equal(
            Sum([row], "opening", "bought"),
            Sum([row], "film_cost", "chemistry", "supplies", "prints", "waste", "on_hand", "in_baths")));
        foreach (var by in new[] { "month", "year", "film", "session" })
            Assert.Equal(Sum(years, "film_cost", "chemistry", "supplies", "prints", "waste"),
                Sum(Csv(room, $"cost_by_{by}"), "used"));
        Assert.Equal(
            Sum(Csv(room, "cost_by_session"), "film_cost", "chemistry", "supplies"),
            Sum(Csv(room, "cost_by_sheet").Where(row => row["fate"] is "negative" or "keeper"), "film_cost")
                + Sum(Csv(room, "cost_by_sheet"), "developer", "other_chemistry", "supplies"));
        Assert.Contains(Csv(room, "price_history"), row => row["item"] == "water" && row["per_unit"] == "0.000320");
    }

    /// <summary>The demo year's prices of fen80: 6.20 twice, then 6.77, 7.41, 7.73.</summary>
    [Fact]
    public void Prices_go_up_over_the_demo_year()
    {
        using var room = Darkroom.WithDemoYear();
        var prices = room.Run("show", "prices", "fen80", "--json").Json.GetProperty("prices").EnumerateArray().ToList();
        Assert.Equal([6.20m, 6.20m, 6.77m, 7.41m, 7.73m], prices.Select(price => Amount(price.GetProperty("perUnit"))));
        Assert.Contains("+9.5 %", room.Do("show", "prices", "fen80"), StringComparison.Ordinal);
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
            "than the 37.50 that you mean to spend", room.Do("show", "costs").ReplaceLineEndings(" "),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Another_session_is_costed_at_todays_lots()
    {
        using var room = Darkroom.WithDemoYear();
        Assert.Equal("S22",
            room.Run("show", "costs", "--json").Json.GetProperty("nextSession").GetProperty("like").GetString());
        Assert.Contains("nother session like S22", room.Do("show", "costs").ReplaceLineEndings(" "),
            StringComparison.Ordinal);
        Assert.Equal(
            JsonValueKind.Null,
            room.Run("show", "costs", "--as-of", "2026-01-01", "--json").Json.GetProperty("nextSession").ValueKind);
    }

    [Fact]
    public void A_delivery_of_several_lines_is_recorded_as_one_entry()
    {
        using var room = Darkroom.WithDemoYear();
        var said = room.Do(
            "record", "delivery", "--reference", "inv-4711", "--shipping", "14.50", "--line",
            "2 fen80 at 186 expires 2028-01-31 batch CP-1 in freezer", "--line", "1 syrup at 42");
        Assert.Contains("fen80/", said, StringComparison.Ordinal);
        Assert.Contains("syrup/", said, StringComparison.Ordinal);
        Assert.Contains("delivery inv-4711, 428.50", room.Do("show", "journal", "--last", "1"),
            StringComparison.Ordinal);
        Assert.True(room.Run("check", "--json").Json.GetProperty("ok").GetBoolean());
        Assert.Equal(3, room.Run("record", "delivery", "--reference", "inv-4712", "--shipping",
            "0.005", "--line", "1 syrup at 42").Status);
    }

    private static List<Dictionary<string, string>> Csv(Darkroom room, string table)
    {
        var lines = File.ReadAllLines(Path.Combine(room.PathOf("export"), $"{table}.csv"))
            .Select(line => line.Split(',')).ToList();
        return [.. lines.Skip(1)
            .Select(cells => lines[0].Zip(cells).ToDictionary(pair => pair.First, pair => pair.Second))];
    }

    private static decimal Sum(IEnumerable<Dictionary<string, string>> rows, params string[] columns) =>
        rows.Sum(row => columns.Sum(column => decimal.Parse(row[column], CultureInfo.InvariantCulture)));

    private static decimal Amount(JsonElement money) =>
        decimal.Parse(money.GetProperty("amount").GetString()!, CultureInfo.InvariantCulture);

    /// <summary>
    /// What stands above a film's figures is the film's: it adds up by itself, and all films together give the
    /// ledger's.
    /// </summary>
    [Fact]
    public void With_a_film_every_figure_is_the_film_s()
    {
        using var room = Darkroom.WithDemoYear();
        var all = room.Run("show", "costs", "--by", "film", "--json").Json;
        foreach (var part in all.GetProperty("parts").EnumerateArray()
            .Where(part => part.GetProperty("part").GetString() is "fen80" or "ortho16" or "reed400"))
        {
            var film = part.GetProperty("part").GetString()!;
            var costs = room.Run("show", "costs", "--film", film, "--by", "month", "--json").Json;
            foreach (var figure in new[] { "film", "chemistry", "supplies", "waste" })
            {
                Assert.Equal(Amount(part.GetProperty(figure)), Amount(costs.GetProperty(figure)));
                Assert.Equal(
                    Amount(part.GetProperty(figure)),
                    costs.GetProperty("parts").EnumerateArray().Sum(month => Amount(month.GetProperty(figure))));
            }

            Assert.True(costs.GetProperty("reconciles").GetBoolean());
            Assert.Equal(
                Amount(costs.GetProperty("opening")) + Amount(costs.GetProperty("bought")),
                new[] { "film", "waste", "prints", "onHand" }.Sum(what => Amount(costs.GetProperty(what))));
            Assert.Equal(
                Amount(costs.GetProperty("spent")),
                new[] { "film", "chemistry", "supplies", "waste", "prints",
                    "onHand" }.Sum(what => Amount(costs.GetProperty(what))));
            Assert.NotEqual(Amount(all.GetProperty("onHand")), Amount(costs.GetProperty("onHand")));
        }
    }

    /// <summary>One name for one sheet: the costs bear the name by which `show sheet` finds it.</summary>
    [Fact]
    public void A_sheet_s_costs_bear_the_name_that_show_sheet_takes()
    {
        using var room = Darkroom.WithDemoYear();
        var sheets = room.Run("show", "costs", "--json").Json.GetProperty("sheets").EnumerateArray()
            .Where(sheet => !sheet.GetProperty("item").GetString()!.EndsWith("-120", StringComparison.Ordinal))
            .ToList();
        Assert.Contains(sheets, sheet => sheet.GetProperty("negative").ValueKind == JsonValueKind.Null);
        foreach (var sheet in sheets.Where((_, i) => i % 10 == 0)
            .Concat(sheets.Where(sheet => sheet.GetProperty("negative").ValueKind == JsonValueKind.Null)))
        {
            var story = room.Run("show", "sheet", sheet.GetProperty("sheet").GetString()!, "--json").Json;
            Assert.Equal(sheet.GetProperty("negative").GetString(), story.GetProperty("negative").GetString());
            Assert.Equal(Amount(sheet.GetProperty("total")), Amount(story.GetProperty("total")));
            Assert.Equal(sheet.GetProperty("session").GetString(), story.GetProperty("session").GetString());
        }

        room.Do("export", room.PathOf("tables"));
        var rows = File.ReadAllLines(Path.Combine(room.PathOf("tables"), "cost_by_sheet.csv"));
        Assert.StartsWith("sheet,negative,session,", rows[0], StringComparison.Ordinal);
        Assert.Contains(rows, row => row.StartsWith("2026-", StringComparison.Ordinal));
    }
}
