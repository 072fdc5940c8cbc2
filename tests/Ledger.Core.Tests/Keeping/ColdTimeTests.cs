using CsCheck;

namespace Ledger.Core.Tests.Keeping;

/// <summary>The days really spent in the cold move an expiry date; nothing is revived.</summary>
public sealed class ColdTimeTests
{
    /// <summary>Dates of 2026 as month-day; a stay is since:days a year.</summary>
    private const string Cases = """
        expiry | stays                   | until | days won | why
        12-31  |                         | 06-01 | 0        | never cold
        12-31  | 01-10:365               | 06-01 | 142      | every day so far counts whole
        12-31  | 01-10:180               | 06-01 | 70       | 142 x 180 / 365, rounded down
        12-31  | 01-10:0 05-02:365       | 06-01 | 30       | a shelf first
        12-31  | 01-10:365 05-02:0       | 06-01 | 112      | taken out, the days stay won
        02-01  | 01-10:365 05-02:0       | 05-02 | 112      | it does not expire on the day it is taken out
        02-01  | 01-10:0 02-02:365       | 06-01 | 0        | expired on the shelf, not revived
        02-01  | 01-10:0 02-01:365       | 06-01 | 120      | frozen on its last good day
        02-01  | 01-10:365 01-20:0 02-12:365 | 06-01 | 10   | won 10 days, expired on the shelf after 02-11
        02-01  | 01-10:180               | 12-31 | 21       | it expires in the cold: after 43 days, and wins nothing more
        """;

    [Fact]
    public void Each_day_in_the_cold_counts_by_the_users_share() => Assert.All(Table.Read(Cases), row =>
        Assert.True(
            int.Parse(row["days won"], System.Globalization.CultureInfo.InvariantCulture)
                == new ColdTime([.. row["stays"].Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Stay)],
                    Day(row["until"])).DaysWon(Day(row["expiry"])),
            row["why"]));

    [Fact]
    public void Nothing_expired_is_ever_good_again() => Gen.Select(
        Gen.Int[0, 300], Gen.Select(Gen.Int[0, 80], Gen.Int[0, 4].Select(step => step * 100)).Array[0, 5]).Sample(
        (expires, steps) =>
        {
            var (start, stays) = (new LocalDate(2026, 1, 1), new List<ColdStay>());
            foreach (var (days, share) in steps)
                stays.Add(new(stays.Count == 0 ? start : stays[^1].Since.PlusDays(days), share));
            var date = start.PlusDays(expires);
            var wasPast = false;
            for (var day = 0; day < 500; day++)
            {
                var until = start.PlusDays(day);
                var isPast = until > date.PlusDays(new ColdTime(stays, until).DaysWon(date));
                Assert.False(wasPast && !isPast, $"good again on {until}");
                wasPast = isPast;
            }
        },
        iter: 200);

    [Fact]
    public void A_box_in_the_freezer_is_good_for_the_time_it_was_there_and_one_taken_out_too()
    {
        var ledger = Shelves.Empty();
        ledger.Post("setting setting=freezer-days value=365 date=2026-01-01");
        ledger.Post("delivery item=fen80 price=162 expires=2026-02-01 storage=freezer date=2026-01-10");
        ledger.Post("storage container=fen80/1 to=shelf date=2026-03-10");
        var good = Assert.Single(ledger.Holdings.Containers).GoodUntil(KeepingLimits.None)!;
        Assert.Equal((new LocalDate(2026, 4, 1), 59), (good.Date, good.ColdDays)); // 10 January to 10 March
        Assert.Equal("expiry date 2026-02-01 and 59 days for the time in the cold", good.Reason);
    }

    [Fact]
    public void Film_that_expired_on_the_shelf_stays_expired_in_the_freezer()
    {
        var ledger = Shelves.Empty();
        ledger.Post("setting setting=freezer-days value=365 date=2026-01-01");
        ledger.Post("delivery item=fen80 price=162 expires=2026-02-01 storage=shelf date=2026-01-10");
        ledger.Post("storage container=fen80/1 to=freezer date=2026-03-01");
        Assert.Equal(new LocalDate(2026, 2, 1),
            Assert.Single(ledger.Holdings.Containers).GoodUntil(KeepingLimits.None)!.Date);
    }

    private static ColdStay Stay(string text) =>
        new(Day(text[..5]), int.Parse(text[6..], System.Globalization.CultureInfo.InvariantCulture));

    private static LocalDate Day(string monthAndDay) => Dates.Parse($"2026-{monthAndDay}")!.Value;
}
