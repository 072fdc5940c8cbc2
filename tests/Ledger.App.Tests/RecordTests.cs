namespace Ledger.App.Tests;

public class RecordTests
{
    private static readonly string[] _pour = ["record", "session", "S23", "--process", "film",
        "--sheets", "4 fen80 N keeper 80ml", "--anyway"];

    /// <summary>The number of the first entry after the demo year's.</summary>
    private static readonly int _next = DemoYear.Read(DemoYear.LastDay).Count + 1;

    [Fact]
    public void A_session_shows_everything_it_touched_before_and_after()
    {
        using var room = Darkroom.WithDemoYear();
        var ran = room.Run(
            "record", "session", "S23", "--process", "film", "--sheets", "3 fen80 N keeper 25ml",
            "1 fen80 N-1 reject: dust: a lot", "--anyway");
        Assert.Equal(0, ran.Status);
        Assert.StartsWith($"entry {_next}: session S23: 4 fen80, 320 sq in through F4\n", ran.Out,
            StringComparison.Ordinal);
        Assert.Matches(@"\n  syrup/5 +64 ml +-> +39 ml\n", ran.Out);
        Assert.Matches(@"\n  fen80/6 +24 sheets +-> +20 sheets\n", ran.Out);
        Assert.Matches(@"\n  F4 +1600 sq in of 3000 sq in +-> +1920 sq in of 3000 sq in\n", ran.Out);
        Assert.Contains("bath F4 was good until", ran.Error, StringComparison.Ordinal);

        var session = room.Run("show", "sessions", "--last", "1", "--json").Json.GetProperty("sessions")[0];
        Assert.Equal(25, session.GetProperty("developer").GetProperty("value").GetDecimal());
        var lines = session.GetProperty("lines").EnumerateArray().ToList();
        Assert.Equal(["keeper", "reject"], lines.Select(line => line.GetProperty("fate").GetString()));
        Assert.Equal(["N", "N-1"], lines.Select(line => line.GetProperty("group").GetString()));
        Assert.Equal("dust: a lot", lines[1].GetProperty("note").GetString());
    }

    [Theory]
    [InlineData("0.05")]
    [InlineData("20")]
    [InlineData("1.2345")]
    public void A_wrong_fixer_factor_is_reported_once(string weight)
    {
        using var room = Darkroom.WithDemoYear();
        var ran = room.Run("record", "item", "fen80", "--fixer-factor", weight);
        Assert.Equal(2, ran.Status);
        Assert.Equal(
            $"--fixer-factor: found \"{weight}\"; accepted is a number from 0.1 to 10 with at most 3 decimals\n"
            + "`trayledger record item --help` tells what is accepted\n",
            ran.Error);
    }

    [Fact]
    public void A_dry_run_shows_the_same_and_writes_nothing()
    {
        using var room = Darkroom.WithDemoYear();
        var before = room.Do("show", "shelf", "--json");
        var dry = room.Run(["record", "session", "S23", "--process", "film", "--sheets", "4 fen80 N",
            "--anyway", "--dry-run"]);
        Assert.Equal(0, dry.Status);
        Assert.Contains("nothing was written", dry.Error, StringComparison.Ordinal);
        Assert.Equal(before, room.Do("show", "shelf", "--json"));
        var real = room.Do("record", "session", "S23", "--process", "film", "--sheets", "4 fen80 N", "--anyway");
        Assert.Equal(dry.Out[dry.Out.IndexOf(':', StringComparison.Ordinal)..],
            real[real.IndexOf(':', StringComparison.Ordinal)..]);
    }

    [Fact]
    public void A_dry_run_is_refused_like_the_real_one()
    {
        using var room = Darkroom.WithDemoYear();
        var (dry, real) = (room.Run([.. _pour, "--dry-run"]), room.Run(_pour));
        Assert.Equal(3, dry.Status);
        Assert.Equal(real, dry);
    }

    [Fact]
    public void A_pour_larger_than_the_book_is_refused_and_then_booked_as_a_count()
    {
        using var room = Darkroom.WithDemoYear();
        var refused = room.Run(_pour);
        Assert.Equal(3, refused.Status);
        Assert.Contains("16 ml short", refused.Error, StringComparison.Ordinal);
        Assert.Contains("--book-difference", refused.Error, StringComparison.Ordinal);

        var booked = room.Run([.. _pour, "--book-difference"]);
        Assert.Equal(0, booked.Status);
        Assert.Contains("booked as found by a count", booked.Error, StringComparison.Ordinal);
        Assert.True(room.Run("check", "--json").Json.GetProperty("ok").GetBoolean());
    }

    [Fact]
    public void The_same_reference_adds_nothing_the_second_time()
    {
        using var room = Darkroom.WithDemoYear();
        string[] delivery = ["record", "delivery", "syrup", "1", "--price", "44", "--reference", "shop-4711"];
        room.Do(delivery);
        var again = room.Run(delivery);
        Assert.Equal((0, ""), (again.Status, again.Out));
        Assert.Contains($"entry {_next} stands in the journal under this reference already",
            again.Error, StringComparison.Ordinal);
        Assert.Equal(_next, room.Run("check", "--json").Json.GetProperty("entries").GetInt32());
    }

    [Fact]
    public void An_undo_takes_back_what_it_names()
    {
        using var room = Darkroom.WithDemoYear();
        var before = room.Do("show", "shelf", "--json");
        room.Do("record", "delivery", "syrup", "1", "--price", "44");
        room.Do("record", "undo", $"{_next}", "--reason", "typed twice");
        Assert.Equal(before, room.Do("show", "shelf", "--json"));
        var entries = room.Run("show", "journal", "--last", "2", "--json").Json.GetProperty("entries");
        Assert.Equal(_next, entries[0].GetProperty("undoes").GetInt32());
        Assert.Equal(_next + 1, entries[1].GetProperty("undoneBy").GetInt32());
        Assert.Matches($@"\[taken\s+back\s+by\s+entry\s+{_next + 1}\]", room.Do("show", "journal", "--last", "2"));
    }

    [Fact]
    public void An_item_keeps_what_is_not_said_and_loses_what_is_said_to_be_none()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("record", "item", "syrup", "--lead-time-days", "30", "--minimum-on-hand", "none");
        var item = room.Run("show", "item", "syrup", "--json").Json;
        Assert.Equal(30, item.GetProperty("leadTimeDays").GetInt32());
        Assert.Equal(System.Text.Json.JsonValueKind.Null, item.GetProperty("minimumOnHand").ValueKind);
        Assert.Equal("1+49", item.GetProperty("dilution").GetString());
        Assert.Equal("developer", item.GetProperty("role").GetString());
        Assert.Equal(1000, item.GetProperty("pack").GetProperty("value").GetDecimal());
    }

    [Fact]
    public void A_capacity_stays_with_its_basis_until_another_one_is_said()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("record", "item", "tarnfix", "--capacity", "1234", "--basis", "strict");
        room.Do("record", "item", "tarnfix", "--lead-time-days", "30");
        Assert.Contains("1234 sq in per litre (strict)", room.Do("show", "item", "tarnfix"), StringComparison.Ordinal);
        Assert.Contains("needs its basis", room.Run("record", "item", "tarnfix", "--capacity", "999").Error,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_new_item_takes_its_unit_from_what_it_is()
    {
        using var room = new Darkroom();
        room.Do("record", "item", "roll", "--kind", "film", "--format", "120", "--pack", "5");
        room.Do("record", "item", "salt", "--kind", "chemical", "--pack", "1kg");
        room.Do("record", "item", "bag", "--kind", "supply", "--pack", "100");
        var units = room.Run("show", "shelf", "--json").Json.GetProperty("items").EnumerateArray()
            .Select(item => item.GetProperty("onHand").GetProperty("unit").GetString());
        Assert.Equal(["roll", "g", "piece"], units);
    }

    [Fact]
    public void An_entry_may_be_dated_before_its_item_was_defined()
    {
        using var room = new Darkroom();
        room.Do("record", "item", "syrup", "--kind", "chemical", "--pack", "1l", "--dilution", "1+49");
        room.Do("record", "delivery", "syrup", "1", "--price", "42", "--date", "2026-01-10");
        room.Do("record", "count", "syrup", "900", "--reason", "spilt", "--date", "2026-01-11");
        Assert.Contains("900 ml", room.Do("show", "shelf", "--as-of", "2026-01-12"), StringComparison.Ordinal);
    }

    [Fact]
    public void Amounts_are_written_in_the_users_own_units()
    {
        using var room = Darkroom.WithDemoYear();
        var mixed = room.Do("record", "bath", "X1", "tarnfix", "1.5l", "--amount", "0.3l", "--dry-run");
        Assert.Contains("300 ml of tarnfix for 1500 ml", mixed, StringComparison.Ordinal);
        room.Do("record", "setting", "liquids", "floz");
        Assert.Contains("0.85 fl oz", room.Do("record", "count", "syrup", "0.85floz", "--reason", "spilt"),
            StringComparison.Ordinal);
    }

    [Fact]
    public void The_developer_may_be_said_batch_by_batch()
    {
        using var room = Darkroom.WithDemoYear();
        string[] sheets = ["record", "session", "S23", "--process", "film", "--sheets", "4 fen80 N",
            "2 fen80 N-1", "--anyway"];
        Assert.Matches(@"syrup/5 +64 ml +-> +14 ml", room.Do([.. sheets, "--developer", "25", "25", "--dry-run"]));
        Assert.Equal(2, room.Run([.. sheets, "--developer", "25", "25", "10"]).Status);
        Assert.Equal(2, room.Run([
            "record", "session", "S23", "--process", "film", "--sheets", "4 fen80 25ml", "--developer", "25"]).Status);
    }

    [Fact]
    public void A_text_that_begins_with_an_at_sign_is_text()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("record", "discard", "practice", "1", "--reason", "@home", "--note", "@nobody");
        Assert.Contains("@nobody", room.Do("show", "journal", "--last", "1"), StringComparison.Ordinal);
    }
}
