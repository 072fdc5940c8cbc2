namespace Ledger.Core.Tests.Notices;

/// <summary>
/// A notice is quiet until a day; it is told that there is one, and other notices about the same thing go on.
/// </summary>
public sealed class SnoozeTests
{
    private readonly InMemoryLedger _ledger = Shelves.Stocked();

    public SnoozeTests() => _ledger.Post("bath date=2026-02-13");

    [Fact]
    public void A_snoozed_notice_is_quiet_and_listed_with_its_day_and_reason()
    {
        Assert.Equal(NoticeKind.BathEnding, Assert.Single(TodayReading.Of(_ledger.Holdings)).Kind);
        Assert.Empty(TodayReading.Snoozed(_ledger.Holdings, []));

        _ledger.Post(Of("f1", Some.Today.PlusDays(7)));

        Assert.Empty(TodayReading.Of(_ledger.Holdings));
        var (notice, snooze) = Assert.Single(TodayReading.Snoozed(_ledger.Holdings, []));
        Assert.Equal((NoticeKind.BathEnding, "F1"), (notice.Kind, notice.About));
        Assert.Equal(new Snooze(NoticeKind.BathEnding, "F1", Some.Today.PlusDays(7), "a new one is mixed on Sunday"),
            snooze);
    }

    [Fact]
    public void It_is_shown_again_on_its_day_and_the_last_word_holds()
    {
        var (today, next) = (new Holdings(Some.Today), new Holdings(Some.Today.PlusDays(1)));
        foreach (var holdings in new[] { today, next })
            holdings.Put(new Snooze(NoticeKind.Expired, "fix/1", Some.Today.PlusDays(1), "-"));
        Assert.NotNull(today.SnoozeOf(NoticeKind.Expired, "FIX/1"));
        Assert.Null(next.SnoozeOf(NoticeKind.Expired, "fix/1"));

        _ledger.Post(Of("F1", Some.Today.PlusDays(300)));
        _ledger.Post(Of("F1", Some.Today.PlusDays(1)));
        Assert.Equal(Some.Today.PlusDays(1), Assert.Single(TodayReading.Snoozed(_ledger.Holdings, [])).Snooze.Until);
    }

    [Fact]
    public void Another_kind_of_notice_about_the_same_thing_is_shown()
    {
        _ledger.Post(Of("F1", Some.Today.PlusDays(30)));
        _ledger.Post("session line=20_fen80_150ml");
        _ledger.Post("session session=S2 line=18_fen80_150ml");

        Assert.Contains(TodayReading.Of(_ledger.Holdings),
            notice => notice is { Kind: NoticeKind.BathExhausted, About: "F1" });
    }

    [Fact]
    public void Several_things_are_snoozed_at_once() =>
        Assert.Equal(
            ["F1", "fen80/1", "fix"],
            _ledger.Post(Of("F1", Some.Today.PlusDays(3)) with { About = ["F1", "FEN80/1", "fix"] }).Facts
                .OfType<NoticeSnoozed>()
                .Select(fact => fact.Snooze.About));

    [Theory]
    [InlineData("F1", 0, "shorter", "a notice is quiet until a day from 2026-03-16 to 2027-03-16, not 2026-03-15")]
    [InlineData("F1", 367, "longer", "a notice is quiet until a day from 2026-03-16 to 2027-03-16, not 2027-03-17")]
    [InlineData("F9", 3, "?",
        "nothing that a notice can be about is called \"F9\"; `show today --json` names what each is about")]
    public void What_cannot_be_snoozed_says_why(string about, int days, string reason, string sentence) =>
        Assert.Equal(sentence,
            Assert.IsType<Refused>(
                _ledger.Preview(Of(about, Some.Today.PlusDays(days)) with { Reason = reason })).Refusal.Sentence);

    private static NoticeSnooze Of(string about, LocalDate until) => new()
    {
        Key = Some.Key(), Date = Some.Today, Notice = NoticeKind.BathEnding, About = [about], Until = until,
        Reason = "a new one is mixed on Sunday",
    };
}
