using Ledger.App.Tests.Support;

namespace Ledger.App.Tests;

public class AsOfTests
{
    [Fact]
    public void Every_reading_stands_as_it_stood_on_that_day()
    {
        using var room = Darkroom.WithDemoYear();
        string[] asOf = ["--as-of", "2025-07-05", "--json"];
        var baths = room.Run(["show", "baths", .. asOf]).Json.GetProperty("baths");
        Assert.Equal(2480, baths[0].GetProperty("weightedAreaSqIn").GetDecimal());
        Assert.Equal(["F1", "F2"], baths.EnumerateArray().Select(bath => bath.GetProperty("bath").GetString()));
        Assert.Equal(6, room.Run(["show", "sessions", .. asOf]).Json.GetProperty("sessions").GetArrayLength());
        Assert.Equal("2025-07-05", room.Run(["show", "shelf", .. asOf]).Json.GetProperty("asOf").GetString());
        Assert.Equal("2025-07-05", room.Run(["show", "costs", .. asOf]).Json.GetProperty("to").GetString());
        Assert.Equal("2024-07-06", room.Run(["show", "costs", .. asOf]).Json.GetProperty("from").GetString());
        Assert.True(room.Run(["show", "bath", "F1", .. asOf]).Json.GetProperty("inUse").GetBoolean());
        Assert.False(room.Run("show", "bath", "F1", "--json").Json.GetProperty("inUse").GetBoolean());
        Assert.Equal(775, room.Run(["show", "item", "syrup", .. asOf]).Json.GetProperty("onHand").GetProperty("value").GetDecimal());
    }

    [Fact]
    public void A_day_to_come_shows_what_will_have_expired()
    {
        using var room = Darkroom.WithDemoYear();
        Assert.DoesNotContain("syrup/5 expired", room.Do("show", "today"), StringComparison.Ordinal);
        Assert.Contains("syrup/5 expired", room.Do("show", "today", "--as-of", "2027-01-01"), StringComparison.Ordinal);
    }

    [Fact]
    public void Before_the_first_entry_there_is_nothing()
    {
        using var room = Darkroom.WithDemoYear();
        Assert.Contains("No session yet", room.Do("show", "sessions", "--as-of", "2020-01-01"), StringComparison.Ordinal);
        Assert.Contains("The journal is empty", room.Do("show", "journal", "--as-of", "2020-01-01"), StringComparison.Ordinal);
        Assert.Contains("No bath is in use", room.Do("show", "baths", "--as-of", "2020-01-01"), StringComparison.Ordinal);
    }
}
