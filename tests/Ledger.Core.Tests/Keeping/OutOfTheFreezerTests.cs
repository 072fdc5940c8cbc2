namespace Ledger.Core.Tests.Keeping;

/// <summary>
/// Film that is opened, loaded or drawn straight from the freezer sweats: it is asked about, whatever the way in.
/// Common practice.
/// </summary>
public sealed class OutOfTheFreezerTests
{
    private readonly InMemoryLedger _ledger = Shelves.WithBath();

    public OutOfTheFreezerTests()
    {
        _ledger.Post("storage container=fen80/1 to=freezer date=2026-02-02");
        _ledger.Post("holder holder=E01 format=8x10");
    }

    [Theory]
    [InlineData("opening container=fen80/1")]
    [InlineData("load sides=E01-1 from=fen80/1")]
    [InlineData("session line=4_fen80")]
    public void Straight_from_the_freezer_is_asked_about(string entry)
    {
        var refusal = _ledger.Refuse(entry);
        Assert.Equal(RefusalKind.Doubtful, refusal.Kind);
        Assert.StartsWith(
            "fen80/1 is kept in the freezer: film that is opened cold sweats and is lost, so it warms up closed for 24 "
                + "hours first", refusal.Sentence,
            StringComparison.Ordinal);
        var anyway = Assert.IsType<Accepted>(_ledger.Preview(EntryWords.Read(entry) with { Anyway = true }));
        Assert.Contains(anyway.Posting.Remarks,
            remark => remark.StartsWith("fen80/1 is kept in the freezer", StringComparison.Ordinal));
    }

    [Fact]
    public void A_box_that_went_back_into_the_freezer_open_is_asked_about_too()
    {
        _ledger.Post("storage container=fen80/1 to=shelf date=2026-02-05");
        _ledger.Post("session line=4_fen80 date=2026-02-10");
        _ledger.Post("storage container=fen80/1 to=freezer date=2026-02-11");
        Assert.Equal(RefusalKind.Doubtful, _ledger.Refuse("session session=S2 line=4_fen80").Kind);
    }

    [Theory]
    [InlineData("", "2026-02-06", true)]
    [InlineData("", "2026-02-05", false)]
    [InlineData("3", "2026-02-05", false)]
    [InlineData("3", "2026-02-06", true)]
    [InlineData("48", "2026-02-06", false)]
    [InlineData("48", "2026-02-07", true)]
    [InlineData("30", "2026-02-06", false)]
    [InlineData("30", "2026-02-07", true)]
    public void Each_item_warms_up_for_its_own_hours(string hours, string day, bool isFine)
    {
        if (hours.Length > 0)
            _ledger.Post(
                Some.Definition(Some.Film() with { ThawHours = int.Parse(hours,
                    System.Globalization.CultureInfo.InvariantCulture) }));
        var moved = _ledger.Post("storage container=fen80/1 to=shelf date=2026-02-05");
        Assert.Contains(moved.Remarks,
            remark => remark.Contains($"leave it closed for {(hours.Length > 0 ? hours : "24")} hours",
                StringComparison.Ordinal));
        var decision = _ledger.Preview(EntryWords.Read($"opening container=fen80/1 date={day}"));
        Assert.Equal(isFine, decision is Accepted);
    }

    [Fact]
    public void Hours_that_end_within_a_day_are_said_as_hours()
    {
        _ledger.Post(Some.Definition(Some.Film() with { ThawHours = 6 }));
        var moved = _ledger.Post("storage container=fen80/1 to=shelf date=2026-02-05");
        Assert.Contains("fen80/1 comes out of the cold: leave it closed for 6 hours, or it sweats", moved.Remarks);
        Assert.Equal(
            "fen80/1 came out of the cold on 2026-02-05 and stays closed for 6 hours, or it sweats",
            _ledger.Refuse("load sides=E01-1 from=fen80/1 date=2026-02-05").Sentence.Split(';')[0]);
    }

    [Fact]
    public void Each_item_gains_its_own_days_in_the_cold()
    {
        _ledger.Post("setting setting=freezer-days value=365 date=2026-01-01");
        _ledger.Post("delivery item=reed400 price=78 expires=2026-02-01 storage=freezer date=2026-01-10");
        _ledger.Post("delivery item=fen80 price=162 expires=2026-02-01 storage=freezer date=2026-01-10");
        Assert.Equal(new(2026, 4, 6), GoodUntil("fen80"));
        _ledger.Post(
            Some.Definition(Some.Film("reed400", "4x5",
                1500) with { FreezerDays = 73 })); // fast film gains a fifth of a slow one's
        Assert.Equal(new(2026, 2, 6), GoodUntil("reed400"));
        Assert.Equal(new(2026, 4, 6), GoodUntil("fen80"));
    }

    private NodaTime.LocalDate GoodUntil(string item)
    {
        var container = _ledger.Holdings.ContainersOf(item).Last(box => box.Lot.ExpiresOn is not null);
        return container.GoodUntil(_ledger.Holdings.Item(item)!.Keeping)!.Date;
    }
}
