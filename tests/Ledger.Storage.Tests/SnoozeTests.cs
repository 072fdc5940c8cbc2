namespace Ledger.Storage.Tests;

/// <summary>What is snoozed stands in the file, by day, and goes when it is taken back.</summary>
public sealed class SnoozeTests : IDisposable
{
    private readonly TemporaryLedger _file = new();

    public SnoozeTests() => Some.Stock(_file);

    public void Dispose() => _file.Dispose();

    [Fact]
    public void The_last_word_that_holds_is_read_back()
    {
        var on = Some.Day(4, 2);
        _file.Accept(Snoozed(until: 20));
        var second = _file.Accept(Snoozed(until: 10));
        _file.Reopen();

        Assert.Equal(new Snooze(NoticeKind.BelowMinimum, "pan", Some.Day(4, 10), "ordered by phone"),
            Find(Some.Day(4, 9)));
        Assert.Null(Find(Some.Day(4, 10)));
        Assert.Null(Find(on.PlusDays(-2)));

        _file.Accept(new Undo { Key = Some.Key(), Date = on, Number = second.Number, Reason = "too soon" });
        _file.Reopen();
        Assert.Equal(Some.Day(4, 20), Find(Some.Day(4, 10))!.Until);
        Assert.True(_file.Ledger.Check(null, default).Ok);

        Snooze? Find(NodaTime.LocalDate day) => _file.Ledger.HoldingsOn(day).SnoozeOf(NoticeKind.BelowMinimum, "PAN");
    }

    private static NoticeSnooze Snoozed(int until) => new()
    {
        Key = Some.Key(), Date = Some.Day(4, 2), Notice = NoticeKind.BelowMinimum, About = ["PAN"],
        Until = Some.Day(4, until), Reason = "ordered by phone",
    };
}
