using Ledger.App.Tests.Support;

namespace Ledger.App.Tests;

/// <summary>What ends baths, bottles and jugs, from the command line.</summary>
public class BathCommandTests
{
    [Fact]
    public void The_bath_in_use_tells_its_ends_its_tests_and_what_they_foretell()
    {
        using var room = Darkroom.WithDemoYear();
        var bath = room.Run("show", "bath", "F4", "--json").Json;
        Assert.Equal("age", bath.GetProperty("ends")[0].GetProperty("by").GetString());
        Assert.Equal("2026-03-14", bath.GetProperty("ends")[0].GetProperty("on").GetString());
        Assert.Equal(3, bath.GetProperty("clearingTests").GetArrayLength());
        Assert.Equal(1.65m, bath.GetProperty("clearingTests")[2].GetProperty("ratio").GetDecimal());
        Assert.Equal(132, bath.GetProperty("fixingSeconds").GetDecimal());
        Assert.InRange(bath.GetProperty("clearingTrend").GetProperty("reachedAtSqInPerLitre").GetDecimal(), 1500, 1800);
        Assert.Contains("from 3 tests", room.Do("show", "bath", "F4"), StringComparison.Ordinal);
    }

    [Fact]
    public void Capacities_stand_side_by_side()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("record", "item", "rapidfix", "--other-capacity", "1000 strict", "1600 maker's");
        var bases = room.Run("show", "bath", "F4", "--json").Json.GetProperty("capacities").EnumerateArray().ToList();
        Assert.Equal(["handbook", "strict", "maker's"], bases.Select(basis => basis.GetProperty("basis").GetString()));
        Assert.Equal([1400m, 0, 800], bases.Select(basis => basis.GetProperty("remainingSqIn").GetDecimal()));
        Assert.Equal(17, bases[0].GetProperty("remainingSheets").GetProperty("8x10").GetInt32());
    }

    [Fact]
    public void A_pair_at_its_ceiling_is_not_rotated_and_says_what_to_do()
    {
        using var room = Darkroom.WithDemoYear();
        var ran = room.Run("record", "rotation", "F6");
        Assert.Equal(3, ran.Status);
        Assert.Contains("the ceiling is 3: pour out F4 and F5 and mix both anew", ran.Error, StringComparison.Ordinal);
        room.Do("record", "setting", "rotation-ceiling", "4");
        Assert.Contains("rotation 4 of at most 4", room.Do("record", "rotation", "F6", "--amount", "300ml", "--jug", "J2"), StringComparison.Ordinal);
        Assert.Equal(3000, room.Run("show", "jugs", "--json").Json.GetProperty("jugs")[1].GetProperty("held").GetProperty("value").GetDecimal());
        Assert.True(room.Run("check", "--json").Json.GetProperty("ok").GetBoolean());
    }

    [Fact]
    public void A_syrup_is_poured_by_weight_once_its_density_is_known()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("record", "item", "syrup", "--density", "1.25");
        Assert.Contains("64 ml -> 50 ml", room.Do("record", "discard", "syrup", "17.5g", "--reason", "spilt").Replace("  ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("record clearing-test F4 pan100 85", "that is 2 times the fresh time or more")]
    [InlineData("record observation F5 specks", "")]
    [InlineData("record silver-test F4 3.5", "")]
    [InlineData("record residual-test F4 silver faint --failed --session S22", "")]
    [InlineData("record top-up F5 100ml", "")]
    [InlineData("record jug-filling J2 500ml rinse", "")]
    public void What_is_learned_is_recorded(string line, string remark)
    {
        using var room = Darkroom.WithDemoYear();
        var ran = room.Run(line.Split(' '));
        Assert.Equal(0, ran.Status);
        Assert.Contains(remark, ran.Error, StringComparison.Ordinal);
        Assert.True(room.Run("check", "--json").Json.GetProperty("ok").GetBoolean());
    }

    [Fact]
    public void Paper_has_sessions_and_baths_of_its_own()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("record", "item", "fibre", "--kind", "film", "--role", "fibre paper", "--format", "8x10", "--pack", "100");
        room.Do("record", "receipt", "fibre", "1", "--price", "152");
        string[] prints = ["record", "print-session", "P01", "--sheets", "2 fibre final", "1 fibre strip 3 of 4"];
        Assert.Equal(3, room.Run(prints).Status);
        room.Do("record", "bath", "P1", "rapidfix", "1.5l", "--material", "paper", "--capacity", "800", "--basis", "strict");
        Assert.Contains("220 sq in through P1", room.Do(prints), StringComparison.Ordinal);
        Assert.True(room.Run("show", "costs", "--json").Json.GetProperty("reconciles").GetBoolean());
    }
}
