using System.Text.Json;

namespace Ledger.App.Tests;

/// <summary>
/// From a fault to everything that shares it, through the commands on the demo year: F3 is found exhausted, its sheets
/// are listed worst first and worked off, six are refixed and one is lost; the costs follow to the last millionth. And
/// a delivery under suspicion.
/// </summary>
public class TraceCommandTests
{
    private static readonly string[] Period = ["--from", "2025-09-01", "--to", "2026-01-31"];

    [Fact]
    public void F3_is_found_exhausted_and_its_sheets_are_worked_off()
    {
        using var room = Darkroom.WithDemoYear();
        var before = Costs(room, "now");
        string[] late = [.. Negatives(room, "S18"), .. Negatives(room, "S19")];
        Assert.Equal(7, late.Length);
        var risk = Risk(room);
        Assert.Equal(76, risk.Count);
        Assert.Equal(late,
            risk.Where(sheet => Text(sheet, "level") == "after the fault").Select(sheet => Text(sheet, "negative")));
        Assert.Equal(
            [late[0], late[3]],
            risk.Take(7).Where(sheet => sheet.GetProperty("isFirst").GetBoolean())
                .Select(sheet => Text(sheet, "negative")));
        Assert.Equal("S17", Text(risk[7], "session"));
        Assert.Contains("49 days after its last good test on 2025-10-12", Text(risk[7], "reason"),
            StringComparison.Ordinal);
        Assert.Contains("residual silver test", Text(risk[7], "toDo"), StringComparison.Ordinal);

        var list = room.Do("print", "check-list", "F3", "--by", "2025-12-10");
        Assert.Contains($"[ ] {late[0]} in filed negatives", list, StringComparison.Ordinal);
        Assert.Contains("safety data sheet", list, StringComparison.Ordinal);

        room.Do("record", "sheet-note", late[0], "--what", "residual silver test", "--result",
            "brown stain", "--passed", "no");
        room.Do(["record", "fate", .. late, "--fate", "reject", "--cause", "under-fixed"]);
        var spoiled = Costs(room, "now");
        room.Do(["record", "sheet-note", .. late[..6], "--what", "refixed", "--result", "5 min in fresh fixer"]);
        room.Do("record", "fate", late[0], late[1], late[3], late[4], late[5], "--fate", "negative");
        room.Do("record", "fate", late[2], "--fate", "keeper");
        room.Do("record", "filing", late[0], late[1], "--place", "binder B, page 12");

        var after = Costs(room, "now");
        Assert.Equal((before.Negatives - 7, before.Negatives - 1), (spoiled.Negatives, after.Negatives));
        Assert.Equal(before.Keepers, after.Keepers);
        var lost = Amount(
            room.Run(["show", "costs", .. Period, "--json"]).Json.GetProperty("sheets").EnumerateArray()
                .Single(sheet => Text(sheet, "negative") == late[6]).GetProperty("film"));
        Assert.True(lost > 0);
        Assert.Equal((before.Film - lost, before.Waste + lost, before.Spent), (after.Film, after.Waste, after.Spent));
        Assert.Equal(before, Costs(room, "then"));

        var story = room.Run("show", "sheet", late[0], "--json").Json;
        Assert.Equal(("negative", "binder B, page 12"), (Text(story, "fate"), Text(story, "filedIn")));
        Assert.Equal(
            ["residual silver test", "refixed"],
            story.GetProperty("findings").EnumerateArray().Select(finding => Text(finding, "what")));
        var settled = Risk(room).Where(sheet => Text(sheet, "level") == "settled")
            .Select(sheet => Text(sheet, "negative")).ToHashSet();
        Assert.Superset(late.ToHashSet<string?>(), settled);
        Assert.True(room.Run("check", "--json").Json.GetProperty("ok").GetBoolean());
    }

    [Fact]
    public void A_print_session_names_its_negatives_and_both_are_found_from_the_other()
    {
        using var room = Darkroom.WithDemoYear();
        var sheets = Negatives(room, "S15");
        string[] prints = ["record", "print-session", "P77", "--sheets", "1 fibre-vc final",
            "--bath", "PF4", "--negatives"];
        var refused = room.Run([.. prints, "2031-001"]);
        Assert.Equal(3, refused.Status);
        Assert.Contains("no developed sheet is called \"2031-001\"", refused.Error, StringComparison.Ordinal);
        Assert.Contains("is named twice", room.Run([.. prints, $"{sheets[0]} {sheets[0]}"]).Error,
            StringComparison.Ordinal);
        Assert.Contains($"of {sheets[0]}, {sheets[1]}",
            room.Do([.. prints, $"{sheets[0]} {sheets[1]}"]).ReplaceLineEndings(" "), StringComparison.Ordinal);

        var last = room.Run("show", "prints", "--last", "1", "--json").Json.GetProperty("prints")[0];
        Assert.Equal(sheets[..2], last.GetProperty("negatives").EnumerateArray().Select(one => one.GetString()));
        Assert.Contains(sheets[1], room.Do("show", "prints", "--last", "1"), StringComparison.Ordinal);

        var back = room.Run("trace", "P77", "--json").Json.GetProperty("back").EnumerateArray().ToList();
        Assert.Equal(
            sheets[..2], back.Where(step => Text(step, "kind") == "sheet").Select(step => Text(step, "name"))
                .Order(StringComparer.Ordinal));
        Assert.Contains(back, step => Text(step, "name") == "S15");
        Assert.Contains(sheets[0], room.Do("trace", "P77"), StringComparison.Ordinal);

        var things = room.Run("trace", sheets[0], "--json").Json.GetProperty("things").EnumerateArray();
        Assert.Contains(things, thing => (Text(thing, "kind"), Text(thing, "name")) == ("print session", "P77"));
        Assert.Contains("P77", room.Do("trace", sheets[0]), StringComparison.Ordinal);
        Assert.DoesNotContain("P77", room.Do("trace", sheets[2]), StringComparison.Ordinal);
        Assert.Contains("P77", room.Do("show", "sheet", sheets[1]), StringComparison.Ordinal);
        Assert.True(room.Run("check", "--json").Json.GetProperty("ok").GetBoolean());
    }

    [Fact]
    public void A_sheet_is_traced_back_to_its_deliveries_and_forward_to_its_batch_and_baths()
    {
        using var room = Darkroom.WithDemoYear();
        var sheets = Negatives(room, "S15");
        var trace = room.Run("trace", sheets[3], "--json").Json;
        var back = trace.GetProperty("back").EnumerateArray().ToList();
        Assert.Equal(
            ["number", "delivery", "container"],
            back.Where(step => Text(step, "name") is "CP-3164" or "fen80" or "fen80/4")
                .Select(step => Text(step, "kind")));
        var bath = back.Single(step => Text(step, "name") == "F3");
        Assert.Equal(
            (112, "2025-10-12", 75),
            (bath.GetProperty("ageDays").GetInt32(), Text(bath, "lastTestOn"),
                bath.GetProperty("otherSheets").GetInt32()));
        Assert.True(back.Single(step => Text(step, "name") == "tarnfix/2").GetProperty("isShared").GetBoolean());
        Assert.Equal(sheets[..3],
            trace.GetProperty("sameBatch").EnumerateArray().Select(sheet => Text(sheet, "negative")));
        var since = trace.GetProperty("sameBathSince").EnumerateArray().First(one => Text(one, "bath") == "F3")
            .GetProperty("sheets").EnumerateArray().ToList();
        Assert.Equal(("S16", "S19"), (Text(since[0], "session"), Text(since[^1], "session")));
        Assert.Equal(16, since.Count);

        foreach (var what in new[] { "CP-3164", "fen80/4", "E01", "E01-1", "S15", "syrup/4", "F4", "#12", "P07" })
            Assert.NotEqual("", room.Do("trace", what));
        Assert.Contains($"Trace of {sheets[3]}", room.Do("print", "trace", sheets[3]), StringComparison.Ordinal);
        var unknown = room.Run("trace", "nowhere");
        Assert.Equal(3, unknown.Status);
        Assert.Contains("nothing called \"nowhere\"", unknown.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_delivery_under_suspicion_is_shown_by_Today_and_the_shelf_and_not_drawn()
    {
        using var room = Darkroom.WithDemoYear();
        var said = room.Run("record", "suspicion", "CP-3201", "--reason", "fogged edges");
        Assert.Equal(0, said.Status);
        Assert.Contains("sit in", said.Error, StringComparison.Ordinal);
        Assert.Contains("CP-3201", room.Do("show", "today"), StringComparison.Ordinal);
        var fen80 = room.Run("show", "shelf", "--json").Json.GetProperty("items").EnumerateArray()
            .Single(item => Text(item, "item") == "fen80");
        Assert.True(fen80.GetProperty("suspect").GetProperty("value").GetDecimal() > 0);
        var box = fen80.GetProperty("containers").EnumerateArray()
            .First(one => Text(one, "suspicion") == "fogged edges");
        var session = room.Run("record", "session", "S23", "--process", "film", "--sheets",
            $"1 fen80 N from {Text(box, "container")}");
        Assert.Equal(3, session.Status);
        Assert.Contains("record clearance CP-3201", session.Error, StringComparison.Ordinal);
        Assert.Contains("keep", room.Do("trace", "CP-3201", "--at-risk"), StringComparison.Ordinal);
        room.Do("record", "clearance", "CP-3201", "--reason", "test sheet was clear");
        Assert.DoesNotContain("under suspicion", room.Do("show", "shelf"), StringComparison.Ordinal);
    }

    [Fact]
    public void Pictures_are_found_by_what_they_are_and_come_as_text_CSV_JSON_and_on_paper()
    {
        using var room = Darkroom.WithDemoYear();
        Assert.Equal(
            Negatives(room, "S16"),
            room.Run("show", "sheets", "mill", "--json").Json.GetProperty("sheets").EnumerateArray()
                .Select(sheet => Text(sheet, "negative")));
        var csv = room.Do("show", "sheets", "--bath", "F3", "--from", "2025-12-05", "--fate",
            "keeper", "--format", "csv")
            .Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(2, csv.Length);
        Assert.Contains($",{Negatives(room, "S18")[2]},", csv[1], StringComparison.Ordinal);
        Assert.Equal("1 sheet", room.Do("show", "sheets", "--holder", "E07", "--cause", "fogged").Split('\n')[0]);
        Assert.Contains("No sheet is like that", room.Do("show", "sheets", "zebra"), StringComparison.Ordinal);
        Assert.Contains("birches behind the mill", room.Do("print", "sheets", "birches"), StringComparison.Ordinal);
    }

    [Fact]
    public void Costs_by_developer_and_process_say_on_how_many_sheets_they_rest_and_faults_say_what_chance_does()
    {
        using var room = Darkroom.WithDemoYear();
        foreach (var by in new[] { "process", "developer", "bath", "number" })
        {
            var costs = room.Run("show", "costs", "--by", by, "--json").Json;
            Assert.Equal(
                new[] { "film", "chemistry", "supplies", "prints",
                    "waste" }.Sum(part => Amount(costs.GetProperty(part))),
                costs.GetProperty("parts").EnumerateArray().Sum(part => Amount(part.GetProperty("used"))));
            Assert.Contains(costs.GetProperty("parts").EnumerateArray(),
                part => part.GetProperty("sheetsUsed").GetInt32() > 0);
        }

        var faults = room.Run("show", "faults", "--json").Json;
        var side = faults.GetProperty("bySide").EnumerateArray().First(row => Text(row, "name") == "E07-2");
        Assert.Contains("once in", Text(side, "verdict"), StringComparison.Ordinal);
        Assert.Contains("few sheets", Text(side, "verdict"), StringComparison.Ordinal);
        Assert.Contains("few sheets", room.Do("show", "faults"), StringComparison.Ordinal);
    }

    private static List<JsonElement> Risk(Darkroom room) =>
        [.. room.Run("trace", "F3", "--by", "2025-12-10", "--json").Json.GetProperty("sheets").EnumerateArray()];

    private static string[] Negatives(Darkroom room, string session) =>
    [
        .. room.Run("show", "sheets", "--session", session, "--json").Json.GetProperty("sheets").EnumerateArray()
            .Select(sheet => Text(sheet, "negative")).OfType<string>(),
    ];

    private static decimal Amount(JsonElement money) =>
        decimal.Parse(money.GetProperty("amount").GetString()!, System.Globalization.CultureInfo.InvariantCulture);

    private static string? Text(JsonElement element, string name) => element.GetProperty(name).GetString();

    private static (int Negatives, int Keepers, decimal Film, decimal Waste, decimal Spent) Costs(Darkroom room,
        string fates)
    {
        var costs = room.Run(["show", "costs", .. Period, "--fates", fates, "--json"]).Json;
        Assert.True(costs.GetProperty("reconciles").GetBoolean());
        return (
            costs.GetProperty("negatives").GetInt32(), costs.GetProperty("keepers").GetInt32(),
            Amount(costs.GetProperty("film")), Amount(costs.GetProperty("waste")), Amount(costs.GetProperty("spent")));
    }
}
