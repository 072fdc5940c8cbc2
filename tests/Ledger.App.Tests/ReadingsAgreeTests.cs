using System.Text.RegularExpressions;

namespace Ledger.App.Tests;

/// <summary>One thing is told one way, wherever it is read, and nothing that was recorded is shown nowhere.</summary>
public class ReadingsAgreeTests
{
    [Fact]
    public void Number_place_and_index_of_a_box_stand_wherever_the_box_is_shown()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("record", "exposure-index", "fen80/6", "64");
        var shelf = room.Run("show", "shelf", "--json").Json.GetProperty("items").EnumerateArray()
            .Single(item => item.GetProperty("item").GetString() == "fen80").GetProperty("containers").EnumerateArray()
            .Single(box => box.GetProperty("container").GetString() == "fen80/6");
        var (number, place) = (shelf.GetProperty("batch").GetString()!, shelf.GetProperty("storage").GetString()!);
        Assert.Equal(64, shelf.GetProperty("exposureIndex").GetInt32());
        foreach (var shown in new[] { room.Do("show", "shelf"), room.Do("show", "item", "fen80") })
            Assert.Matches($"fen80/6 +{Regex.Escape(number)} +{Regex.Escape(place)} +EI 64", shown);

        Assert.Contains($"emulsion {number}, from fen80/6, EI 64",
            Regex.Replace(room.Do("show", "holders"), "\\s+", " "), StringComparison.Ordinal);
        var side = room.Run("show", "holders", "--json").Json.GetProperty("holders").EnumerateArray()
            .SelectMany(holder => holder.GetProperty("sides").EnumerateArray())
            .First(one => one.GetProperty("box").GetString() == "fen80/6");
        Assert.Equal((number, 64),
            (side.GetProperty("batch").GetString(), side.GetProperty("exposureIndex").GetInt32()));
    }

    /// <summary>The yen has no minor unit (ISO 4217).</summary>
    [Fact]
    public void Money_has_the_digits_of_its_currency()
    {
        using var room = Darkroom.WithEmptyLedger();
        room.Do("record", "setting", "currency", "JPY");
        room.Do("record", "item", "pan", "--kind", "film", "--format", "4x5", "--pack", "25", "--name", "Invented pan");
        Assert.Contains("for 9800", room.Do("record", "delivery", "pan", "2", "--price", "4900"),
            StringComparison.Ordinal);
        foreach (var shown in new[]
            { room.Do("show", "shelf"), room.Do("show", "item", "pan"), room.Do("show", "costs"),
                room.Do("show", "prices") })
        {
            Assert.Contains("9800", shown, StringComparison.Ordinal);
            Assert.DoesNotContain("9800.0", shown, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_fresh_clearing_test_is_held_against_what_the_bath_had_taken_by_then()
    {
        using var room = Darkroom.WithDemoYear();
        var baths = room.Run("show", "baths", "--json").Json.GetProperty("baths").EnumerateArray();
        var mixed = baths.Single(bath => bath.GetProperty("bath").GetString() == "F4").GetProperty("mixedOn")
            .GetString()!;
        var before = room.Run("record", "clearing-test", "F4", "fen80", "45", "--fresh", "--date", mixed, "--dry-run");
        Assert.Equal(0, before.Status);
        Assert.DoesNotContain("had gone through bath F4", before.Error, StringComparison.Ordinal);
        var late = room.Run("record", "clearing-test", "F4", "fen80", "45", "--fresh", "--dry-run");
        Assert.Contains("1600 sq in of film had gone through bath F4 by then", late.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_in_a_jug_stands_there_and_all_places_add_up()
    {
        using var room = Darkroom.WithDemoYear();
        var shown = room.Do("show", "item", "tarnfix");
        Assert.Matches("in jug J2 +300 ml", shown);
        Assert.Matches("handed over with jug J1 +600 ml", shown);
        var places = room.Run("show", "item", "tarnfix", "--json").Json.GetProperty("places").EnumerateArray()
            .Select(place => place.GetProperty("quantity").GetProperty("value").GetDecimal()).ToList();
        Assert.True(places.Count > 3);
        Assert.Equal(0m, places.Sum());
    }
}
