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
        Assert.Equal(775,
            room.Run(["show", "item", "syrup", .. asOf]).Json.GetProperty("onHand").GetProperty("value").GetDecimal());
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
        Assert.Contains("No session yet", room.Do("show", "sessions", "--as-of", "2020-01-01"),
            StringComparison.Ordinal);
        Assert.Contains("The journal is empty", room.Do("show", "journal", "--as-of", "2020-01-01"),
            StringComparison.Ordinal);
        Assert.Contains("No bath is in use", room.Do("show", "baths", "--as-of", "2020-01-01"),
            StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_known_on_a_day_is_told_apart_from_what_happened_by_then()
    {
        using var room = new Darkroom(new(2026, 3, 1));
        room.Do("record", "item", "pan", "--name", "Pan film", "--kind", "film", "--format", "8x10", "--pack", "25");
        room.Do("record", "delivery", "pan", "1", "--price", "100", "--currency", "EUR", "--date", "2026-02-01");
        room.Today = new(2026, 3, 10);
        room.Do("record", "delivery", "pan", "1", "--price", "120", "--currency", "EUR", "--date", "2026-02-02");
        Assert.Equal(50, OnHand("--as-of", "2026-03-01"));
        Assert.Equal(25, OnHand("--known-on", "2026-03-01"));
        Assert.Equal(0, OnHand("--known-on", "2026-03-01", "--as-of", "2026-01-31"));
        Assert.Equal(50, OnHand("--known-on", "2026-03-10"));
        Assert.Equal(0, OnHand("--as-of", "2026-01-31"));

        decimal OnHand(params string[] options) =>
            room.Run(["show", "item", "pan", "--json", .. options]).Json.GetProperty("onHand")
                .GetProperty("value").GetDecimal();
    }

    [Fact]
    public void The_entries_of_a_day_are_shown_in_the_order_in_which_they_count_and_moved_in_it()
    {
        using var room = new Darkroom(new(2026, 3, 1));
        room.Do("record", "item", "pan", "--name", "Pan film", "--kind", "film", "--format", "8x10", "--pack", "25");
        room.Do("record", "delivery", "pan", "1", "--price", "100", "--currency", "EUR");
        room.Do("record", "delivery", "pan", "2", "--price", "120", "--currency", "EUR", "--before", "2");
        Assert.Equal([1, 3, 2], Day());
        room.Do("record", "amendment", "3", "before=", "--reason", "mistyped");
        Assert.Equal([1, 2, 3], Day());
        Assert.Contains("Nothing that counts was recorded of that day.",
            room.Do("show", "journal", "--day", "2026-02-01"), StringComparison.Ordinal);

        IEnumerable<int> Day() =>
            room.Run("show", "journal", "--day", "2026-03-01", "--json").Json.GetProperty("entries").EnumerateArray()
                .Select(entry => entry.GetProperty("entry").GetInt32());
    }

    [Fact]
    public void A_setting_says_from_which_day_it_has_effect()
    {
        using var room = new Darkroom(new(2026, 3, 1));
        room.Do("record", "item", "pan", "--name", "Pan film", "--kind", "film", "--format", "8x10", "--pack", "25");
        room.Do("record", "delivery", "pan", "1", "--price", "100", "--currency", "EUR", "--date", "2026-02-01");
        room.Do("record", "item", "pan", "--fixer-factor", "1.5", "--from-day", "2026-02-15");
        Assert.Equal(1, Factor("2026-02-10"));
        Assert.Equal(1.5m, Factor("2026-02-20"));
        room.Do("record", "item", "pan", "--fixer-factor", "2", "--from-day", "always");
        Assert.Equal(2, Factor("2026-02-10"));
        var refused = room.Run("record", "item", "pan", "--fixer-factor", "2", "--from-day", "never");
        Assert.Equal(ExitStatus.WrongCommandLine, refused.Status);
        Assert.Contains("always", refused.Error, StringComparison.Ordinal);

        decimal Factor(string day) =>
            room.Run("show", "item", "pan", "--json", "--as-of", day).Json.GetProperty("fixerFactor").GetDecimal();
    }

    [Fact]
    public void A_gap_among_the_negatives_says_why()
    {
        using var room = Darkroom.WithDemoYear();
        var session = room.Run("show", "journal", "--json").Json.GetProperty("entries").EnumerateArray()
            .First(entry => entry.GetProperty("kind").GetString() == "session").GetProperty("entry").GetInt32();
        string negative;
        using (var ledger = LedgerFile.Open(room.Ledger, room.Clock))
            negative = ledger.SheetsOf("S22", room.Today)[0].Negative!;
        room.Do("record", "amendment", $"{session}", "1.fate=reject", "--reason", "mistyped");
        var gap = room.Run("show", "sheet", negative).Error;
        Assert.Matches(
            $@"^{negative} was the number of sheet #\d+ of entry {session}, which is not a negative now; a number is not given twice", gap);
        room.Do("record", "undo", $"{session}", "--reason", "mistyped");
        Assert.Contains(
            $"{negative} was given by entry {session}, which was undone; a number is not given "
                + "twice", room.Run("show", "sheet", negative).Error,
            StringComparison.Ordinal);
        Assert.Contains("there is no sheet", room.Run("show", "sheet", "2026-999").Error, StringComparison.Ordinal);
    }
}
