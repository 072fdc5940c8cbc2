namespace Ledger.App.Tests;

public class ExitStatusTests
{
    [Theory]
    [InlineData("shwo")]
    [InlineData("show")]
    [InlineData("show today --colour")]
    [InlineData("show today --as-of 2026-02-29")]
    [InlineData("show today --as-of yesterday")]
    [InlineData("show journal --last 0")]
    [InlineData("show costs --from 2026-02-01 --to 2026-01-01")]
    [InlineData("record delivery")]
    [InlineData("record delivery fen80 two")]
    [InlineData("record delivery fen80 1,500")]
    [InlineData("record delivery fen80 -1")]
    [InlineData("record delivery fen80 1 --price -5")]
    [InlineData("record setting liquids pints")]
    [InlineData("record delivery fen80 1 --price 1.1234567")]
    [InlineData("record delivery fen80 1 --expires 31/12/2026")]
    [InlineData("record session S23 --process film")]
    [InlineData("record session S23 --process film --sheets 4")]
    [InlineData("record session S23 --process film --sheets x")]
    [InlineData("record bath F9 tarnfix 1.5l --dilution 1:39")]
    [InlineData("record bath F9 tarnfix lots")]
    [InlineData("record bath F9 tarnfix 1.5l --basis strict")]
    [InlineData("record bath F9 tarnfix 1.5l --material glass")]
    [InlineData("record item new1")]
    [InlineData("record item new1 --kind film")]
    [InlineData("record item fen80 --format 8by10")]
    [InlineData("record count syrup 64 bottles --reason dregs")]
    [InlineData("record count syrup 64bottles --reason dregs")]
    [InlineData("record count syrup 64ml")]
    [InlineData("record undo --reason wrong")]
    [InlineData("import holidays x.csv")]
    [InlineData("import items")]
    [InlineData("completion tcsh")]
    [InlineData("--theme blue")]
    public void A_wrong_command_line_ends_with_2_and_says_what_is_accepted(string line)
    {
        using var room = Darkroom.WithDemoYear();
        var ran = room.Run(line.Split(' '));
        Assert.Equal(2, ran.Status);
        Assert.Equal("", ran.Out);
        Assert.NotEqual("", ran.Error);
    }

    [Theory]
    [InlineData("record undo last --reason wrong", "no entry has the reference \"last\"")]
    [InlineData("record delivery pan101 1", "there is no item \"pan101\"")]
    [InlineData("record delivery fen80 1 --date 2026-03-16", "2026-03-16 is later than today, 2026-03-15")]
    [InlineData("record delivery fen80 1 --date 1826-03-16", "too long ago")]
    [InlineData("record opening syrup/5", "is open")]
    [InlineData("record bath F1 tarnfix 1l", "there was a bath F1 already")]
    [InlineData("record bath F9 tarnfix 1l --amount 200g", "kept in ml, not in g")]
    [InlineData("record discard F9 --reason spent", "F9")]
    [InlineData("record count syrup 64ml --reason counted", "there is nothing to post")]
    [InlineData("record undo 9999 --reason wrong", "there is no entry 9999")]
    [InlineData("record undo 1 --reason wrong", "would no longer hold")]
    [InlineData("record setting colour red", "there is no setting")]
    [InlineData("show item pan101", "there is no item \"pan101\"")]
    [InlineData("show bath F9", "there was no bath \"F9\"")]
    [InlineData("show costs --film syrup", "no film is called \"syrup\"")]
    public void A_refusal_ends_with_3_says_why_and_writes_nothing(string line, string why)
    {
        using var room = Darkroom.WithDemoYear();
        var before = room.Do("show", "journal", "--json", "--last", "1000");
        var ran = room.Run(line.Split(' '));
        Assert.Equal(3, ran.Status);
        Assert.Equal("", ran.Out);
        Assert.Contains(why, ran.Error, StringComparison.Ordinal);
        Assert.Equal(before, room.Do("show", "journal", "--json", "--last", "1000"));
    }

    [Fact]
    public void A_dilution_with_a_colon_is_asked_about()
    {
        using var room = Darkroom.WithDemoYear();
        var ran = room.Run("record", "bath", "F9", "tarnfix", "1.5l", "--dilution", "1:4");
        Assert.Equal(2, ran.Status);
        Assert.Contains(
            "found \"1:4\"; accepted is 1+4 if the second figure is the water, or 1+3", ran.Error,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_mistyped_command_is_told_where_help_is()
    {
        using var room = new Darkroom();
        Assert.Contains("`trayledger record session --help`", room.Run("record", "session").Error,
            StringComparison.Ordinal);
    }

    [Fact]
    public void The_main_help_tells_every_status()
    {
        using var room = new Darkroom();
        var help = room.Do("--help");
        var told = help[help.IndexOf("Exit status:", StringComparison.Ordinal)..];
        foreach (var status in new[] { 0, 1, 2, 3, 4, 10, 130, 141 })
            Assert.Matches($@"[:;]\s+{status}\s", told);
    }

    [Fact]
    public void Today_ends_with_10_only_when_it_was_asked_to_and_something_is_pressing()
    {
        using var room = Darkroom.WithDemoYear();
        Assert.Equal(0, room.Run("show", "today").Status);
        Assert.Equal(10, room.Run("show", "today", "--exit-code").Status);
        Assert.Equal(10, room.Run("show", "today", "--exit-code", "--json").Status);
        using var quiet = Darkroom.WithEmptyLedger();
        Assert.Equal(0, quiet.Run("show", "today", "--exit-code").Status);
    }

    [Fact]
    public void Without_a_terminal_the_screens_are_refused_in_a_sentence()
    {
        using var room = new Darkroom();
        var ran = room.Run();
        Assert.Equal(2, ran.Status);
        Assert.Contains("need a terminal", ran.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(room.Ledger));
    }

    [Fact]
    public void A_fault_of_the_program_ends_with_1()
    {
        using var room = new Darkroom { Screens = new BrokenScreens() };
        var ran = room.Run();
        Assert.Equal(1, ran.Status);
        Assert.Equal(
            "this is a fault of the program (InvalidOperationException); nothing was recorded. With TRAYLEDGER_TRACE=1 "
                + "it tells where it happened\n",
            ran.Error);
        room.Variables["TRAYLEDGER_TRACE"] = "1";
        Assert.Contains("   at ", room.Run().Error, StringComparison.Ordinal);
    }

    private sealed class BrokenScreens : Wiring.IScreens
    {
        public int Show(Storage.LedgerFile ledger, NodaTime.ZonedClock clock, string? theme) =>
            throw new InvalidOperationException("broken");
    }
}
