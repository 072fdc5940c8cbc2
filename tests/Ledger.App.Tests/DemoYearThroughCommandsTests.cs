namespace Ledger.App.Tests;

/// <summary>The whole demo year, typed entry by entry, against the same year from its CSV files.</summary>
public sealed class DemoYearThroughCommandsTests(TypedYear year) : IClassFixture<TypedYear>
{
    [Theory]
    [InlineData("today")]
    [InlineData("shelf")]
    [InlineData("baths")]
    [InlineData("holders")]
    [InlineData("forgotten")]
    [InlineData("sheet", "E07-2")]
    [InlineData("sessions")]
    [InlineData("prints")]
    [InlineData("jugs")]
    [InlineData("costs")]
    [InlineData("item", "syrup")]
    [InlineData("item", "fen80")]
    [InlineData("bath", "F4")]
    [InlineData("bath", "PF4")]
    public void What_is_typed_gives_the_same_as_what_is_imported(params string[] what)
    {
        using var imported = Darkroom.WithDemoYear();
        Assert.Equal(imported.Do(["show", .. what, "--json"]), year.Room.Do(["show", .. what, "--json"]));
        Assert.Equal(imported.Do(["show", .. what]), year.Room.Do(["show", .. what]));
    }

    [Fact]
    public void The_years_totals_are_those_of_its_description()
    {
        var sessions = year.Room.Run("show", "sessions", "--json").Json.GetProperty("sessions")
            .EnumerateArray().ToList();
        var pan = year.Room.Run("show", "costs", "--film", "fen80", "--json").Json;

        Assert.Equal(22, sessions.Count);
        Assert.Equal(9600, sessions.Sum(session => session.GetProperty("areaSqIn").GetDecimal()));
        Assert.Equal(925, sessions.Sum(session => session.GetProperty("developer").GetProperty("value").GetDecimal()));
        Assert.Equal(96, pan.GetProperty("sheets").GetArrayLength());
        Assert.Equal(99, pan.GetProperty("sheetsUsed").GetInt32());
        Assert.Equal(90, pan.GetProperty("negatives").GetInt32());
        Assert.Equal(31, pan.GetProperty("keepers").GetInt32());
        Assert.True(pan.GetProperty("reconciles").GetBoolean());
    }

    [Fact]
    public void The_bath_in_use_has_ended_by_age_with_almost_half_of_its_capacity_left()
    {
        var bath = year.Room.Run("show", "baths", "--json").Json.GetProperty("baths").EnumerateArray()
            .Single(bath => !bath.GetProperty("isSecond").GetBoolean()
                && bath.GetProperty("material").GetString() == "film");

        Assert.Equal(1600, bath.GetProperty("weightedAreaSqIn").GetDecimal());
        Assert.Equal(1400, bath.GetProperty("remainingSqIn").GetDecimal());
        Assert.Equal(182, bath.GetProperty("ageDays").GetInt32());
        Assert.Equal("age", bath.GetProperty("endsBy").GetString());
        Assert.Equal("expired", bath.GetProperty("state").GetString());
    }

    [Fact]
    public void The_typed_file_passes_its_check()
    {
        var report = year.Room.Run("check", "--json").Json;
        Assert.True(report.GetProperty("ok").GetBoolean());
        Assert.Equal(DemoYear.Read(year.Room.Today).Count, report.GetProperty("entries").GetInt32());
    }
}

/// <summary>The demo year, typed once for all tests that look at it.</summary>
public sealed class TypedYear : IDisposable
{
    public TypedYear()
    {
        foreach (var entry in DemoYear.Read(Room.Today))
            Room.Do([.. TypedCommand.Of(entry with { Anyway = false }), "--anyway"]);
    }

    internal Darkroom Room { get; } = new();

    public void Dispose() => Room.Dispose();
}
