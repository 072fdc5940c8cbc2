using System.Text.Json;
using Ledger.App.Screens;
using Ledger.Terminal;
using NodaTime.Testing;

namespace Ledger.App.Tests;

/// <summary>From the exposed sheets of the demo year to a logged session and its paper.</summary>
public sealed class PlanCommandTests : IDisposable
{
    private readonly Darkroom _room = Darkroom.WithDemoYear();

    [Fact]
    public void A_plan_of_exposed_sheets_has_every_field_that_was_promised()
    {
        var plan = _room.Run("plan", "session", "--exposed", "all", "--minutes", "11 N-1=9 N+1=14", "--json").Json;
        var batch = plan.GetProperty("batches")[0];
        Assert.Equal(
            (1, "N", 3, false, 240m),
            (batch.GetProperty("number").GetInt32(), batch.GetProperty("group").GetString(),
                batch.GetProperty("sheets").GetInt32(), batch.GetProperty("dummy").GetBoolean(),
                batch.GetProperty("areaSqIn").GetDecimal()));
        Assert.Equal((10m, 5.5m, 11m),
            (Number(batch, "shuffleEverySeconds"), Number(batch, "turnAtMinutes"), Number(batch, "minutes")));
        var developer = batch.GetProperty("developer");
        Assert.Equal(
            (25m, 1225m, 1250m, 18m),
            (Number(developer, "concentrateMl"), Number(developer, "waterMl"), Number(developer, "workingMl"),
                Number(developer, "minimumMl")));
        Assert.True(developer.GetProperty("isEnough").GetBoolean());
        Assert.Equal(9, plan.GetProperty("trays").GetArrayLength());
        var shortage = plan.GetProperty("shortages")[0];
        Assert.Equal("syrup", shortage.GetProperty("item").GetString());
        Assert.Equal(
            (75m, 64m),
            (Number(shortage.GetProperty("needed"), "value"), Number(shortage.GetProperty("usable"), "value")));
        Assert.Contains("get 1 pack of 1000 ml", shortage.GetProperty("cure").GetString(), StringComparison.Ordinal);
        var bath = plan.GetProperty("baths")[0];
        Assert.Equal(
            ("F4", 1600m, 2160m, false),
            (bath.GetProperty("bath").GetString(), Number(bath, "beforeSqIn"), Number(bath, "afterSqIn"),
                bath.GetProperty("fits").GetBoolean()));
        Assert.Equal("EUR", plan.GetProperty("cost").GetProperty("perSheet").GetProperty("currency").GetString());
        Assert.Contains("The maker's safety data sheet, local rules and licensed practice govern.",
            plan.GetProperty("cautions").EnumerateArray().Select(one => one.GetString()));
    }

    [Theory]
    [InlineData("fen80 N", 3)]
    [InlineData("fen80 until 2026-03-12", 5)]
    [InlineData("reed400", null)]
    public void Exposed_sheets_are_chosen_by_film_group_and_day(string what, int? sheets)
    {
        var ran = _room.Run("plan", "session", "--exposed", what, "--json");
        if (sheets is null)
            Assert.Equal((3, true),
                (ran.Status, ran.Error.Contains("no exposed sheet like that", StringComparison.Ordinal)));
        else
            Assert.Equal(sheets, ran.Json.GetProperty("sheets").GetInt32());
    }

    [Fact]
    public void A_kept_plan_of_exposed_sheets_is_logged_in_one_step_and_draws_no_film_from_the_shelf()
    {
        var before = OnHand("fen80");
        _room.Do("record", "plan", "sunday", "--on", "2026-03-22", "--process", "film", "--exposed",
            "fen80 N-1", "--minutes", "9");
        Assert.Contains("2 fen80 N-1", _room.Do("show", "plans"), StringComparison.Ordinal);
        _room.Do("record", "session", "S23", "--from-plan", "sunday");
        Assert.Equal(before, OnHand("fen80"));
        Assert.DoesNotContain("sunday", _room.Do("show", "plans"), StringComparison.Ordinal);
        Assert.Equal(0, _room.Run("check").Status);
        var labels = _room.Do("print", "sleeve-labels", "S23");
        Assert.Equal(2, labels.Split("glass roof at noon").Length - 1);
        Assert.Contains("| 2026-", labels, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_needs_sheets() =>
        Assert.Equal(2, _room.Run("record", "plan", "x", "--on", "2026-03-22", "--process", "film").Status);

    [Fact]
    public void The_screens_put_pages_into_a_folder_beside_the_ledger_as_html_and_as_text()
    {
        _room.Do("record", "plan", "a/b", "--on", "2026-03-22", "--process", "film", "--sheets", "4 fen80 N");
        using var ledger = LedgerFile.Open(_room.Ledger, new(
            new FakeClock(_room.Today.At(new LocalTime(12, 0)).InUtc().ToInstant()), DateTimeZone.Utc,
            CalendarSystem.Iso));
        var paper = PaperFolder.Beside(ledger, _room.Ledger);
        var said = new[]
        {
            paper.MixingSheet("a/b"), paper.SleeveLabels("S22", LabelPlace.Plain),
            paper.BottleLabel("F4", LabelPlace.Plain), paper.BottleLabel("syrup/5", LabelPlace.Plain),
            paper.TallySlip("F4"), paper.WallCard(),
        };
        var names = new[] { "mixing-sheet-a-b", "sleeve-labels-S22", "label-F4", "label-syrup-5",
            "tally-slip-F4", "wall-card" };
        Assert.All(said.Zip(names),
            page => Assert.Contains($"{page.Second}.html", page.First, StringComparison.Ordinal));
        Assert.Equal(
            names.SelectMany(name => new[] { $"{name}.html", $"{name}.txt" }).Order(StringComparer.Ordinal),
            Directory.EnumerateFiles(_room.PathOf("paper")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Contains("25 ml  syrup", File.ReadAllText(Path.Combine(_room.PathOf("paper"), "mixing-sheet-a-b.txt")),
            StringComparison.Ordinal);
        var csv = Path.Combine(_room.PathOf("paper"), "sheets-mill.csv");
        Assert.EndsWith(csv, paper.SheetsCsv("mill"), StringComparison.Ordinal);
        Assert.Equal(_room.Do("show", "sheets", "mill", "--format", "csv"), File.ReadAllText(csv));
        Assert.Equal("No sheet is like that.", paper.SheetsCsv("nothing like it"));
        Assert.Equal("There is no plan none that is still open.", paper.MixingSheet("none"));
        Assert.Equal("There is no box of exposed sheets none.", paper.BoxLabel("none", LabelPlace.Plain));
    }

    /// <summary>What the command puts on a sheet of labels, the screens put there too.</summary>
    [Fact]
    public void The_screens_lay_labels_on_ready_cut_sheets_as_the_command_does()
    {
        using var ledger = LedgerFile.Open(_room.Ledger, new(
            new FakeClock(_room.Today.At(new LocalTime(12, 0)).InUtc().ToInstant()), DateTimeZone.Utc,
            CalendarSystem.Iso));
        var paper = PaperFolder.Beside(ledger, _room.Ledger);
        Assert.Equal(["plain", "a4", "letter"], paper.LabelPapers);
        Assert.Contains("3x8", paper.LabelGrids("a4"));
        var place = new LabelPlace("a4", "3x8", "", "", 2, 5);
        Assert.Null(paper.LabelProblem(place));
        paper.SleeveLabels("S22", place);
        Assert.Equal(
            _room.Do("print", "sleeve-labels", "S22", "--paper", "a4", "--grid", "3x8", "--copies",
                "2", "--skip", "5", "--html", "-"),
            File.ReadAllText(Path.Combine(_room.PathOf("paper"), "sleeve-labels-S22.html")));
        Assert.Contains("margins of 4x9 labels", paper.LabelProblem(place with { Grid = "4x9" }),
            StringComparison.Ordinal);
        Assert.Null(paper.LabelProblem(place with { Grid = "4x9", Margins = "10" }));
        Assert.Contains("is not a grid", paper.LabelProblem(place with { Grid = "many" }), StringComparison.Ordinal);
        Assert.Contains("from 0 to 23 can be gone", paper.LabelProblem(place with { Used = 24 }),
            StringComparison.Ordinal);
        Assert.Contains("0 copies", paper.LabelProblem(place with { Copies = 0 }), StringComparison.Ordinal);
        Assert.Contains(
            "cautions are not printed below 9 point", paper.BottleLabel("F4", new("letter", "3x10", "", "", 1, 0)),
            StringComparison.Ordinal);
    }

    public void Dispose() => _room.Dispose();

    private static decimal Number(JsonElement element, string name) => element.GetProperty(name).GetDecimal();

    private decimal OnHand(string item) =>
        Number(_room.Run("show", "shelf", "--json").Json.GetProperty("items").EnumerateArray()
            .Single(one => one.GetProperty("item").GetString() == item).GetProperty("onHand"), "value");
}
