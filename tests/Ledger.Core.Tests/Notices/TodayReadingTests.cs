namespace Ledger.Core.Tests.Notices;

public sealed class TodayReadingTests
{
    private readonly InMemoryLedger _ledger = Shelves.Stocked();

    [Fact]
    public void A_shelf_in_order_needs_nothing() => Assert.Empty(TodayReading.Of(_ledger.Holdings));

    /// <summary>Baths of 1500 ml, 3000 sq in, good for 60 days; notices begin 30 days before.</summary>
    private const string Baths = """
        mixed      | worked | kind       | severity | text                          | by
        2026-03-15 | 0      |            |          |                               |
        2026-02-15 | 0      |            |          |                               |
        2026-02-13 | 0      | BathEnding | Soon     | bath F1 expires in 30 days    | 2026-04-14
        2026-01-15 | 0      | BathEnding | Soon     | bath F1 expires in 1 day      | 2026-03-16
        2026-01-14 | 0      | BathEnding | Soon     | bath F1 is good until today   | 2026-03-15
        2026-01-13 | 0      | BathExpired | Now     | bath F1 expired 1 day ago      | 2026-03-14
        2026-03-15 | 33     |            |          |                               |
        2026-03-15 | 34     | BathEnding | Soon     | bath F1 is nearly exhausted        |
        2026-03-15 | 38     | BathExhausted | Now   | bath F1 is exhausted by area     |
        """;

    [Fact]
    public void A_bath_is_announced_before_it_ends() => Assert.All(Table.Read(Baths), row =>
    {
        var ledger = Shelves.Stocked();
        ledger.Post($"bath date={row["mixed"]}");
        if (row.Count("worked") > 0)
            ledger.Post($"session line={row["worked"]}_fen80_300ml");
        var notice = TodayReading.Of(ledger.Holdings).SingleOrDefault(notice => notice.About == "F1");
        Assert.Equal(row["kind"], notice?.Kind.ToString() ?? "");
        Assert.Equal(row["severity"], notice?.Severity.ToString() ?? "");
        Assert.Equal(row["text"], notice?.Text ?? "");
        Assert.Equal(row["by"], notice?.By is { } by ? Dates.Text(by) : "");
    });

    [Fact]
    public void A_spent_bath_says_what_it_had_left_and_the_step_that_settles_it()
    {
        _ledger.Post("bath date=2026-01-13");
        _ledger.Post("session line=20_fen80_150ml");
        var notice = TodayReading.Of(_ledger.Holdings)[0];
        Assert.Equal(
            "61 days old, good until 2026-03-14 (limited by life since mixing); 1400 sq in of its 3000 sq in capacity "
                + "left (own)", notice.Reason);
        Assert.Equal("discard it and mix a fresh one from fix", notice.Step);

        _ledger.Post("bath bath=F2 paired_with=F1 date=2026-03-01");
        Assert.Equal(
            "rotate the pair: discard the first bath, move the second up, mix a new second",
            TodayReading.Of(_ledger.Holdings)[0].Step);
        _ledger.Post("setting setting=rotation-ceiling value=0");
        Assert.Equal(
            "discard F1 and F2 and mix a fresh pair; it was rotated 0 of 0 times",
            TodayReading.Of(_ledger.Holdings)[0].Step);
    }

    /// <summary>A box or bottle with a printed date.</summary>
    private const string Containers = """
        item   | printed    | kind        | severity | text
        fen80 | 2026-04-15 |             |          |
        fen80 | 2026-04-14 | ExpiresSoon | Soon     | fen80/3 expires in 30 days
        fen80 | 2026-03-16 | ExpiresSoon | Soon     | fen80/3 expires in 1 day
        fen80 | 2026-03-15 | ExpiresSoon | Soon     | fen80/3 is good until today
        fen80 | 2026-03-14 | Expired     | Soon     | fen80/3 expired 1 day ago
        fix    | 2026-03-13 | Expired     | Now      | fix/2 expired 2 days ago
        """;

    [Fact]
    public void A_container_is_announced_before_its_day() => Assert.All(Table.Read(Containers), row =>
    {
        var ledger = Shelves.Stocked();
        ledger.Post($"delivery item={row["item"]} expires={row["printed"]} anyway=yes");
        var notice = TodayReading.Of(ledger.Holdings).SingleOrDefault();
        Assert.Equal(row["kind"], notice?.Kind.ToString() ?? "");
        Assert.Equal(row["severity"], notice?.Severity.ToString() ?? "");
        Assert.Equal(row["text"], notice?.Text ?? "");
    });

    [Fact]
    public void Less_than_the_minimum_calls_for_an_order()
    {
        _ledger.Post(
            Some.Definition(Some.Syrup with { MinimumOnHand = Quantity.Of(2001, Unit.Millilitre), LeadTimeDays = 21 }));
        _ledger.Post(Some.Definition(Some.Gloves with { MinimumOnHand = Quantity.Of(5, Unit.Piece) }));
        _ledger.Post("discard what=gloves/1");
        Assert.Equal(
            [
                (Severity.Now, "gloves: 0 pieces usable, below your minimum", "your minimum is 5 pieces",
                    "order Pair of gloves"),
                (Severity.Soon, "syrup: 2000 ml usable, below your minimum", "your minimum is 2001 ml",
                    "order Brackwater Syrup; it takes 21 days"),
            ],
            TodayReading.Of(_ledger.Holdings)
                .Select(notice => (notice.Severity, notice.Text, notice.Reason, notice.Step)));
    }

    [Fact]
    public void The_most_pressing_stands_first()
    {
        _ledger.Post("delivery item=fen80 expires=2026-03-20");
        _ledger.Post("delivery item=fix expires=2026-03-10 anyway=yes");
        _ledger.Post("bath date=2026-01-13");
        _ledger.Post("delivery item=reed400 expires=2026-03-18");
        Assert.Equal(["F1", "fix/2", "reed400/2", "fen80/3"],
            TodayReading.Of(_ledger.Holdings).Select(notice => notice.About));
    }

    [Fact]
    public void How_early_is_the_users_setting()
    {
        _ledger.Post("delivery item=fen80 expires=2026-03-20");
        Assert.Single(TodayReading.Of(_ledger.Holdings));
        _ledger.Post("setting setting=warn-days value=4");
        Assert.Empty(TodayReading.Of(_ledger.Holdings));
    }

    [Fact]
    public void Names_are_those_of_the_promised_JSON()
    {
        Assert.Equal(["now", "soon", "note"], Enum.GetValues<Severity>().Select(severity => severity.Name()));
        Assert.Equal(
            Enum.GetValues<NoticeKind>().Length,
            Enum.GetValues<NoticeKind>().Select(kind => kind.Name()).Distinct().Count());
    }
}
