namespace Ledger.App.Tests;

/// <summary>record session --same-again: the last session batch by batch, waiting sheets first.</summary>
public sealed class SameAgainTests
{
    [Fact]
    public void The_doses_of_the_last_session_come_back_batch_by_batch()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do(
            "record", "session", "S90", "--process", "film", "--bath", "F4", "--anyway", "--sheets",
            "2 fen80 N-1 5ml", "--sheets", "1 fen80 N-1 reject", "--sheets", "2 fen80 N-1 7ml");
        var again = room.Do("record", "session", "S91", "--same-again", "--anyway", "--dry-run", "--json");
        Assert.Contains("session S91: 5 fen80", again, StringComparison.Ordinal);
        room.Do("record", "session", "S91", "--same-again", "--anyway");
        room.Do("export", room.PathOf("out"));
        var rows = File.ReadAllLines(Path.Combine(room.PathOf("out"), "journal.jsonl"))
            .Single(row => row.Contains("\"S91\"", StringComparison.Ordinal));
        Assert.Contains("\"bath\":\"F4\"", rows, StringComparison.Ordinal);
        Assert.Equal(["5", "7"], System.Text.RegularExpressions.Regex.Matches(rows, "developerMl\":\"?([0-9.]+)")
            .Select(match => match.Groups[1].Value));
    }

    [Fact]
    public void Sheets_that_wait_are_taken_so_that_nothing_is_counted_twice()
    {
        using var room = Darkroom.WithDemoYear();
        var waiting = room.Run("show", "holders", "--json").Out;
        Assert.Contains("exposed", waiting, StringComparison.Ordinal);
        var again = room.Run("record", "session", "S91", "--same-again");
        Assert.True(again.Status == 0, again.Error); // no question about sheets that wait
    }

    [Fact]
    public void Without_a_session_there_is_nothing_to_repeat()
    {
        using var room = Darkroom.WithEmptyLedger();
        Assert.Contains("no session was held yet", room.Run("record", "session", "S1", "--same-again").Error,
            StringComparison.Ordinal);
    }
}
