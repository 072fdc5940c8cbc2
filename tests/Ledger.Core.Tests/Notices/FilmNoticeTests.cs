namespace Ledger.Core.Tests.Notices;

/// <summary>
/// Film that waits too long, and sides that spoil it. The limits are the user's; those they start with are common
/// practice, no source.
/// </summary>
public sealed class FilmNoticeTests
{
    private readonly InMemoryLedger _ledger = Shelves.WithBath();

    public FilmNoticeTests() => _ledger.Post("holder holder=E01 date=2026-01-11");

    [Theory]
    [InlineData(60, false)]
    [InlineData(61, true)]
    public void Loaded_film_is_noticed_on_the_day_after_its_limit(int days, bool isNoticed)
    {
        _ledger.Post($"load sides=E01-1 date={Ago(days)}");
        Assert.Equal(isNoticed, Notices.Contains((NoticeKind.LoadedLong, "E01-1")));
        _ledger.Post("setting setting=loaded-days value=90");
        Assert.DoesNotContain((NoticeKind.LoadedLong, "E01-1"), Notices);
    }

    [Theory]
    [InlineData(30, false)]
    [InlineData(31, true)]
    public void Exposed_film_is_noticed_in_its_holder_and_in_its_box(int days, bool isNoticed)
    {
        _ledger.Post($"load sides=E01 date={Ago(50)}");
        _ledger.Post($"exposure sides=E01 group=N-1 date={Ago(days)}");
        _ledger.Post($"unload from=E01-2 date={Ago(days)}");
        Assert.Equal(isNoticed, Notices.Contains((NoticeKind.ExposedLong, "E01-1")));
        Assert.Equal(isNoticed, Notices.Contains((NoticeKind.ExposedLong, "fen80 N-1")));
    }

    [Fact]
    public void A_side_is_flagged_after_repeated_leaks_until_it_is_out_of_service_and_keeps_its_film()
    {
        Spoil("S1", "fogged");
        Assert.DoesNotContain((NoticeKind.SideFaulty, "E01-1"), Notices);
        Spoil("S2", "fogged");
        Assert.Contains((NoticeKind.SideFaulty, "E01-1"), Notices);
        Assert.Equal(2, _ledger.Holdings.Film.Side("E01-1")!.OwnFaults);

        _ledger.Post("load sides=E01-1");
        _ledger.Post("service sides=E01-1 reason=light_leak");
        Assert.DoesNotContain((NoticeKind.SideFaulty, "E01-1"), Notices);
        Assert.NotNull(_ledger.Holdings.Film.In(_ledger.Holdings.Film.Side("E01-1")!));
    }

    [Fact]
    public void What_is_not_the_holders_fault_does_not_flag_it_and_the_limit_is_the_users()
    {
        Spoil("S1", "double_exposure");
        Spoil("S2", "uneven");
        Spoil("S3", "scratch");
        Assert.DoesNotContain((NoticeKind.SideFaulty, "E01-1"), Notices);
        _ledger.Post("setting setting=side-faults value=1");
        Assert.Contains((NoticeKind.SideFaulty, "E01-1"), Notices);
        _ledger.Post("setting setting=side-faults value=0");
        Assert.DoesNotContain((NoticeKind.SideFaulty, "E01-1"), Notices);
    }

    private List<(NoticeKind Kind, string Subject)> Notices =>
        [.. TodayReading.Of(_ledger.Holdings).Select(notice => (notice.Kind, notice.About))];

    private static string Ago(int days) => Dates.Text(Some.Today.PlusDays(-days));

    private void Spoil(string session, string cause)
    {
        _ledger.Post("load sides=E01-1");
        _ledger.Post("exposure sides=E01-1");
        _ledger.Post($"session session={session} from=E01-1 fate=reject cause={cause}");
    }
}
