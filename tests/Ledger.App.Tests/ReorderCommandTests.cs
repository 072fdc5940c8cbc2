using System.Text.Json;

namespace Ledger.App.Tests;

/// <summary>Ordering by commands: what is planned, ordered and changed shows wherever stock is shown.</summary>
public sealed class ReorderCommandTests
{
    [Fact]
    public void What_is_planned_and_on_order_is_the_same_on_the_shelf_the_reorder_page_and_the_item()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("record", "plan", "north", "--as", "trip", "--on", "2026-04-19", "--sheets", "40 fen80");
        var (shelf, reorder) = (Items(room, "shelf"), Items(room, "reorder"));
        Assert.Equal("56 sheet",
            Of(shelf["fen80"], "planned")); // the demo year's trip takes 16; its session takes sheets that are exposed
        Assert.All(reorder, item =>
        {
            Assert.Equal(Of(item.Value, "planned"), Of(shelf[item.Key], "planned"));
            Assert.Equal(Of(item.Value, "onOrder"), Of(shelf[item.Key], "onOrder"));
        });
        Assert.Equal("56 sheet", Of(room.Run("show", "item", "fen80", "--json").Json, "planned"));
        Assert.Contains("25 sheets on order, 56 sheets planned", room.Do("show", "item", "fen80"),
            StringComparison.Ordinal);
        Assert.Contains("on order", room.Do("show", "shelf"), StringComparison.Ordinal);
    }

    [Fact]
    public void Developer_and_fixer_are_told_in_batches_and_sessions_too()
    {
        using var room = Darkroom.WithDemoYear();
        var reorder = Items(room, "reorder");
        Assert.Equal(("null", "2", "1", "S22"), Enough(reorder["syrup"])); // 64 ml: 25 a batch, 50 in S22
        // 500 ml make one bath of 1.5 l with 300 ml; it fixes 3000 sq in: S22 had 480 in two batches
        Assert.Equal(("1", "12", "6", "S22"), Enough(reorder["tarnfix"]));
        Assert.Empty(reorder["fen80"].GetProperty("enoughFor").EnumerateArray());
        var text = room.Do("show", "reorder").ReplaceLineEndings(" ");
        Assert.Contains("enough for 2 batches of film, 1 session like S22", text, StringComparison.Ordinal);
        Assert.Contains("1 fresh bath of film, 12 batches, 6 sessions like S22", text, StringComparison.Ordinal);

        static (string?, string?, string?, string?) Enough(JsonElement item)
        {
            var film = item.GetProperty("enoughFor").EnumerateArray()
                .Single(one => one.GetProperty("process").GetString() == "film");
            return (Raw(film, "freshBaths"), Raw(film, "batches"), Raw(film, "sessions"),
                film.GetProperty("like").GetString());
        }

        static string Raw(JsonElement item, string name) => item.GetProperty(name).GetRawText();
    }

    [Fact]
    public void A_trip_that_needs_more_than_there_is_is_ordered_for_in_time()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("record", "order-cancellation", "spring-film", "--reason", "too late");
        room.Do("record", "item", "fen80", "--minimum-on-hand", "none");
        room.Do("record", "plan", "north", "--as", "trip", "--on", "2026-05-19", "--sheets", "60 fen80");
        var film = Items(room, "reorder")["fen80"];
        Assert.Equal("2026-04-28",
            film.GetProperty("orderBy").GetString()); // a delivery takes 14 days, and a week is kept
        Assert.Contains("76 sheets are planned in 2 plans", film.GetProperty("basis").GetString(),
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_delivery_takes_from_its_order_what_is_not_said()
    {
        using var room = new Darkroom();
        room.Do("record", "item", "pan", "--kind", "film", "--format", "8x10", "--pack", "25sheet");
        room.Do("record", "setting", "currency", "EUR");
        room.Do("record", "order", "spring", "--line", "3 pan at 186");
        var none = room.Run("record", "delivery", "pan");
        Assert.Equal(
            (3, "how many packs of pan came is not said; say it, or name the order that they came from\n"),
            (none.Status, none.Error));
        Assert.Contains("no order \"autumn\" is open", room.Run("record", "delivery", "pan", "--order", "autumn").Error,
            StringComparison.Ordinal);

        var first = room.Run("record", "delivery", "pan", "1", "--order", "spring");
        Assert.Contains("1 pack of pan, 25 sheets for 186.00", first.Out, StringComparison.Ordinal);
        Assert.Contains("price 186.00 taken from order spring", first.Error, StringComparison.Ordinal);
        Assert.Contains(
            "say what a pack of pan cost",
            room.Run("record", "delivery", "pan", "--order", "spring", "--currency", "USD", "--rate", "0.9").Error,
            StringComparison.Ordinal);
        var rest = room.Run("record", "delivery", "pan", "--order", "spring", "--price", "0");
        Assert.Contains("2 packs of pan, 50 sheets for 0.00", rest.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("taken from order", rest.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void An_order_is_changed_part_delivered_and_cancelled()
    {
        using var room = new Darkroom();
        room.Do("record", "item", "pan", "--kind", "film", "--format", "8x10", "--pack", "25sheet",
            "--lead-time-days", "14");
        room.Do("record", "order", "spring", "--line", "2 pan at 186", "--prepaid");
        room.Do("record", "order-change", "spring", "--packs", "3", "--price", "191.50", "--expected", "2026-05-01");
        room.Do("record", "delivery", "pan", "1", "--price", "191.50", "--order", "spring");
        var line = room.Run("show", "reorder", "--json").Json.GetProperty("orders")[0].GetProperty("lines")[0];
        Assert.Equal(
            ("3", "50 sheet", "191.500000", "part delivered"),
            (line.GetProperty("packs").GetRawText(), Of(line, "outstanding"),
                line.GetProperty("price").GetProperty("amount").GetString(), line.GetProperty("state").GetString()));
        var refused = room.Run("record", "order-change", "spring", "--packs", "1");
        Assert.Equal(3, refused.Status);
        Assert.Contains("cancel the rest", refused.Error, StringComparison.Ordinal);
        room.Do("record", "order-cancellation", "spring", "--reason", "too late");
        Assert.Equal(0, room.Run("show", "reorder", "--json").Json.GetProperty("orders").GetArrayLength());
    }

    private static Dictionary<string, JsonElement> Items(Darkroom room, string what) =>
        room.Run("show", what, "--json").Json.GetProperty("items")
            .EnumerateArray().ToDictionary(item => item.GetProperty("item").GetString()!);

    private static string Of(JsonElement item, string quantity) =>
        $"{item.GetProperty(quantity).GetProperty("value").GetRawText()} "
            + $"{item.GetProperty(quantity).GetProperty("unit").GetString()}";
}
