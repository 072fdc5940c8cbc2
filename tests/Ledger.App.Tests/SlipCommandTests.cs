namespace Ledger.App.Tests;

/// <summary>
/// What is likely a slip is asked about by commands and files alike, and what cannot be judged is said to be so.
/// </summary>
public class SlipCommandTests
{
    [Theory]
    [InlineData("would be of 1.5 ml", "record", "bath", "F9", "tarnfix", "1.5ml")]
    [InlineData("is more than a year ago", "record", "delivery", "gloves", "1", "--price",
        "11", "--date", "2024-01-05")]
    [InlineData("so far, but in \"freezer\"", "record", "storage", "fen80/7", "--to", "freeezer")]
    [InlineData("and it cost", "record", "delivery", "fen80", "1", "--price", "1.86")]
    public void A_command_asks_and_takes_anyway(string asked, params string[] line)
    {
        using var room = Darkroom.WithDemoYear();
        var ran = room.Run(line);
        Assert.Equal(3, ran.Status);
        Assert.Contains(asked, ran.Error, StringComparison.Ordinal);
        Assert.Contains("--anyway", ran.Error, StringComparison.Ordinal);
        var anyway = room.Run([.. line, "--anyway"]);
        Assert.True(anyway.Status == 0, anyway.Error);
        Assert.Contains(asked, anyway.Error, StringComparison.Ordinal);
    }

    /// <summary>
    /// An old date in a file is what files are for; a tenth of the usual price is asked about there too.
    /// </summary>
    [Fact]
    public void A_file_answers_in_a_column()
    {
        using var room = Darkroom.WithDemoYear();
        const string Head = "date,item,packs,price,reference,anyway\n";
        var asked = room.Run("import", "deliveries",
            room.Write("asked.csv", Head + "2024-01-05,gloves,1,11,a,\n2025-12-01,fen80,1,1.86,b,\n"));
        Assert.NotEqual(0, asked.Status);
        Assert.Contains("would cost", asked.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("a year ago", asked.Error, StringComparison.Ordinal);
        room.Do("import", "deliveries",
            room.Write("said.csv", Head + "2024-01-05,gloves,1,11,a,\n2025-12-01,fen80,1,1.86,b,yes\n"));
    }

    [Fact]
    public void Of_a_fixer_without_capacity_it_cannot_be_said_whether_a_session_fits()
    {
        using var room = Darkroom.WithEmptyLedger();
        room.Do("record", "item", "pan", "--kind", "film", "--format", "4x5", "--pack", "25", "--name", "Invented pan");
        room.Do("record", "item", "fix", "--kind", "chemical", "--role", "fixer", "--pack",
            "1000ml", "--dilution", "1+4", "--name", "Invented fixer");
        room.Do("record", "delivery", "pan", "2", "--price", "40");
        room.Do("record", "delivery", "fix", "1", "--price", "12");
        room.Do("record", "bath", "F1", "fix", "1000ml");
        room.Do("record", "process", "tray", "--step", "fixer fix in 1l reused for 5");
        var plan = room.Run("plan", "session", "--process", "tray", "--sheets", "4 pan N", "--json").Json;
        Assert.Equal(System.Text.Json.JsonValueKind.Null, plan.GetProperty("baths")[0].GetProperty("fits").ValueKind);
        var text = room.Do("plan", "session", "--process", "tray", "--sheets", "4 pan N").ReplaceLineEndings(" ");
        Assert.Contains("is not known", text, StringComparison.Ordinal);
        Assert.DoesNotContain("everything is there", text, StringComparison.Ordinal);
        var notice = Assert.Single(
            room.Run("show", "today", "--json").Json.GetProperty("notices").EnumerateArray(),
            one => one.GetProperty("kind").GetString() == "cannot-be-said");
        Assert.Equal("F1", notice.GetProperty("about").GetString());
    }
}
