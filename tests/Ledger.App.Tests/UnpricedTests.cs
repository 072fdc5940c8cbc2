using System.Text.Json;
using Microsoft.Data.Sqlite;

namespace Ledger.App.Tests;

/// <summary>
/// A delivery without a price has no price: nothing takes it for a gift, and every figure that should hold it says so.
/// </summary>
public sealed class UnpricedTests : IDisposable
{
    private readonly Darkroom _room = new(new(2026, 3, 15));

    public UnpricedTests()
    {
        _room.Do("record", "setting", "currency", "EUR");
        _room.Do("record", "item", "pan", "--kind", "film", "--format", "8x10", "--pack", "25");
        _room.Do("record", "item", "dev", "--kind", "chemical", "--role", "developer", "--pack",
            "1l", "--dilution", "1+49");
        _room.Do("record", "process", "tray", "--step", "developer dev 1250ml per batch");
        _room.Do("record", "delivery", "--line", "1 dev at 42", "--date", "2026-01-05");
    }

    public void Dispose() => _room.Dispose();

    [Fact]
    public void What_a_delivery_without_a_price_cost_is_unknown_and_counted()
    {
        Assert.Contains("no price was said for pan", Deliver("deliveries:1"), StringComparison.Ordinal);
        _room.Do("record", "session", "S1", "--process", "tray", "--sheets", "4 pan N 25ml", "--date", "2026-02-01");
        var costs = Costs();
        Assert.False(costs.GetProperty("isComplete").GetBoolean());
        Assert.True(costs.GetProperty("reconciles").GetBoolean());
        var unpriced = Assert.Single(costs.GetProperty("unpriced").EnumerateArray());
        Assert.Equal(("pan", 4, 21), (
            unpriced.GetProperty("item").GetString(), unpriced.GetProperty("used").GetProperty("value").GetInt32(),
            unpriced.GetProperty("onHand").GetProperty("value").GetInt32()));
        Assert.Equal(4, costs.GetProperty("unpricedSheets").GetInt32());
        var text = _room.Do("show", "costs", "--by", "month");
        Assert.Contains("pan, without a price: 4 sheets used, 21 sheets on hand.", Flat(text),
            StringComparison.Ordinal);
        Assert.Contains("All of it that has a price is accounted for.", text, StringComparison.Ordinal);
        Assert.Contains("1.05+?", text, StringComparison.Ordinal); // 25 ml at 0.042, and film nobody knows the price of
        Assert.Contains("unknown", _room.Do("record", "delivery", "--help"), StringComparison.Ordinal);
        Assert.Contains("something in it came without a price", Flat(_room.Do("show", "sheet", "2026-001")),
            StringComparison.Ordinal);
        var container = _room.Run("show", "shelf", "--json").Json.GetProperty("items")[0].GetProperty("containers")[0];
        Assert.Equal((false, JsonValueKind.Null),
            (container.GetProperty("isPriced").GetBoolean(), container.GetProperty("value").ValueKind));
        Assert.Contains("Without a price: 21 sheets of pan.", Flat(_room.Do("show", "shelf")),
            StringComparison.Ordinal);
        Assert.True(_room.Run("check", "--json").Json.GetProperty("ok").GetBoolean());
    }

    [Fact]
    public void The_price_can_be_put_in_later_and_nothing_is_a_gift()
    {
        Deliver("deliveries:1");
        _room.Do("record", "amendment", "deliveries:1", "price=100", "--reason", "invoice came");
        Assert.True(Costs().GetProperty("isComplete").GetBoolean());
        _room.Do("record", "amendment", "deliveries:1", "price=0", "--reason", "it was a gift");
        Assert.True(Costs().GetProperty("isComplete").GetBoolean());
        Assert.Equal(0, Costs().GetProperty("unpriced").GetArrayLength());
        Assert.Empty(_room.Run("check", "--json").Json.GetProperty("remarks").EnumerateArray());
    }

    [Theory]
    [InlineData("cost_by_sheet.csv", ",no")]
    [InlineData("price_history.csv", "pan,2026-01-06,2,25,sheet,,,EUR")]
    public void Exported_tables_say_so(string file, string text)
    {
        Deliver("deliveries:1");
        _room.Do("record", "session", "S1", "--process", "tray", "--sheets", "4 pan N 25ml", "--date", "2026-02-01");
        _room.Do("export", _room.PathOf("out"));
        Assert.Contains(text, File.ReadAllText(Path.Combine(_room.PathOf("out"), file)), StringComparison.Ordinal);
    }

    [Fact]
    public void An_exported_ledger_comes_back_with_the_same_unknown()
    {
        Deliver("deliveries:1");
        _room.Do("export", _room.PathOf("out"));
        using var other = new Darkroom(new(2026, 3, 15));
        other.Do("import", "journal", Path.Combine(_room.PathOf("out"), "journal.jsonl"));
        Assert.Equal(_room.Do("show", "costs", "--json"), other.Do("show", "costs", "--json"));
    }

    /// <summary>Before 0.3.0 nothing told a gift from a price that nobody knew.</summary>
    [Fact]
    public void Check_lists_what_an_earlier_version_kept_at_nothing()
    {
        _room.Do("record", "delivery", "--line", "1 pan at 0", "--date", "2026-01-06");
        using (var file = new SqliteConnection($"Data Source={_room.Ledger};Pooling=False"))
        {
            file.Open();
            file.CreateFunction("only_trayledger_writes_here", () => 1L); // the guards of the tables ask for it
            using var forget = file.CreateCommand();
            forget.CommandText = "DELETE FROM said_name; DELETE FROM said";
            forget.ExecuteNonQuery();
        }

        _room.Do("check", "--mend"); // puts the guards back
        Assert.Contains(
            "pan came for 0.00; if that was no gift, what it cost is unknown", _room.Run("check").Out,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--line", "1 pan at 50", "--line", "1 dev at 10", "--discount", "60.01")]
    [InlineData("--line", "1 pan at 50", "--discount", "50.01", "--shipping", "20")]
    [InlineData("--line", "1 pan", "--discount", "0.01", "--shipping", "20")]
    public void A_discount_above_the_price_is_refused_whatever_else_was_paid(params string[] line)
    {
        Assert.Contains("is more than the", _room.Run(["record", "delivery", .. line]).Error, StringComparison.Ordinal);
        var price = line[1] == "1 pan" ? "" : "50";
        var file = _room.Write("deliveries.csv",
            $"date,reference,item,packs,price,discount,shipping\n2026-01-06,r1,pan,1,{price},50.01,20\n");
        Assert.Contains("is more than the", _room.Run("import", "deliveries", file).Error, StringComparison.Ordinal);
    }

    private string Deliver(string reference) =>
        Flat(_room.Run("record", "delivery", "--line", "1 pan", "--date", "2026-01-06", "--reference",
            reference).Error);

    private JsonElement Costs() => _room.Run("show", "costs", "--json").Json;

    private static string Flat(string text) =>
        string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
