using Ledger.App.Tests.Support;
using Ledger.App.Wiring;

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
        Assert.Equal(0, room.RunAnywhere("show", "today").Status);
        Assert.True(File.Exists(room.PathOf("named.db")));

        Assert.Equal(0, room.RunAnywhere("show", "today", "--file", room.PathOf("option.db")).Status);
        Assert.True(File.Exists(room.PathOf("option.db")));
    }

    [Fact]
    public void A_relative_XDG_folder_counts_as_unset() =>
        Assert.Equal(LedgerLocation.Of(null, _ => null), LedgerLocation.Of(null, name => name == "XDG_DATA_HOME" ? "data" : null));

    [Fact]
    public void The_data_folder_is_the_users_own() =>
        Assert.EndsWith(Path.Combine("trayledger", "ledger.db"), LedgerLocation.Of(null, _ => null), StringComparison.Ordinal);
}
