namespace Ledger.App.Tests;

public class LedgerLocationTests
{
    [Fact]
    public void The_command_line_comes_before_the_variable_and_that_before_the_data_folder()
    {
        using var room = new Darkroom();
        room.Variables["XDG_DATA_HOME"] = room.PathOf("data");
        Assert.Equal(0, room.RunAnywhere("show", "today").Status);
        Assert.True(File.Exists(room.PathOf("data/trayledger/ledger.db")));

        room.Variables["TRAYLEDGER_FILE"] = room.PathOf("named.db");
        Assert.Equal(0, room.RunAnywhere("record", "setting", "currency", "EUR").Status);
        Assert.True(File.Exists(room.PathOf("named.db")));

        Assert.Equal(0, room.RunAnywhere("record", "setting", "currency", "EUR", "--file",
            room.PathOf("option.db")).Status);
        Assert.True(File.Exists(room.PathOf("option.db")));
    }

    [Theory]
    [InlineData("show today --exit-code")]
    [InlineData("plan session --process film --sheets", "4 fen80 N")]
    [InlineData("print wall-card")]
    [InlineData("export out")]
    [InlineData("calendar -")]
    [InlineData("check")]
    [InlineData("backup copy.db")]
    public void A_name_under_which_there_is_no_ledger_is_not_read_as_an_empty_one(string words, string? last = null)
    {
        using var room = new Darkroom();
        string[] line = last is null ? words.Split(' ') : [.. words.Split(' '), last];
        var typo = room.PathOf("typo.db");
        var expected = (4, "", $"there is no ledger at {typo} yet\n");
        var option = room.RunAnywhere(["--file", typo, .. line]);
        Assert.Equal(expected, (option.Status, option.Out, option.Error));
        room.Variables["TRAYLEDGER_FILE"] = typo;
        var variable = room.RunAnywhere(line);
        Assert.Equal(expected, (variable.Status, variable.Out, variable.Error));
        Assert.False(File.Exists(typo));
    }

    [Fact]
    public void A_relative_XDG_folder_counts_as_unset() =>
        Assert.Equal(LedgerLocation.Of(null, _ => null),
            LedgerLocation.Of(null, name => name == "XDG_DATA_HOME" ? "data" : null));

    [Fact]
    public void The_data_folder_is_the_users_own() =>
        Assert.EndsWith(Path.Combine("trayledger", "ledger.db"), LedgerLocation.Of(null, _ => null),
            StringComparison.Ordinal);
}
