using CsCheck;

namespace Ledger.Core.Tests.Keeping;

public sealed class GoodUntilTests
{
    [Theory]
    [InlineData("2026-03-14", false, 1)]
    [InlineData("2026-03-15", false, 0)]
    [InlineData("2026-03-16", true, -1)]
    public void The_last_good_day_is_still_good(string today, bool isPast, int daysLeft)
    {
        var good = new GoodUntil(new(2026, 3, 15), KeepingRule.PrintedDate);
        Assert.Equal(isPast, good.IsPast(Dates.Parse(today)!.Value));
        Assert.Equal(daysLeft, good.DaysLeft(Dates.Parse(today)!.Value));
    }

    /// <summary>Limits in days; dates of 2026 as month-day.</summary>
    private const string Rules = """
        sealed | opened | part | printed | received | opened on | half empty on | good until | rule
               |        |      |         | 01-10    |           |               |            |
               |        |      | 12-31   | 01-10    |           |               | 12-31      | PrintedDate
        30     |        |      | 12-31   | 01-10    |           |               | 02-09      | SealedLife
        30     |        |      |         | 01-10    | 01-11     |               |            |
        30     | 60     |      |         | 01-10    | 01-11     |               | 03-12      | SinceOpening
        30     | 60     | 20   |         | 01-10    | 01-11     | 02-01         | 02-21      | SinceHalfEmpty
        30     | 60     | 90   |         | 01-10    | 01-11     | 02-01         | 03-12      | SinceOpening
               | 60     | 20   | 02-01   | 01-10    | 01-11     | 02-01         | 02-01      | PrintedDate
               | 60     |      |         | 01-10    |           |               |            |
               |        | 20   |         | 01-10    | 01-11     |               |            |
        """;

    [Fact]
    public void The_earliest_rule_governs_a_container() => Assert.All(Table.Read(Rules), row =>
    {
        var limits = new KeepingLimits(Days(row["sealed"]), Days(row["opened"]), Days(row["part"]));
        var good = GoodUntil.OfContainer(
            limits, Day(row["printed"]), Day(row["received"])!.Value, Day(row["opened on"]), Day(row["half empty on"]));
        Assert.Equal(Day(row["good until"]), good?.Date);
        Assert.Equal(row["rule"], good?.Rule.ToString() ?? "");
    });

    [Fact]
    public void No_rule_that_applies_ever_ends_sooner() =>
        Gen.Select(Gens.Limits, Gens.MaybeDate, Gens.Date, Gens.MaybeDate, Gens.MaybeDate).Sample(
        (limits, printed, received, opened, half) =>
        {
            var ends = new Dictionary<KeepingRule, LocalDate?>
            {
                [KeepingRule.PrintedDate] = printed,
                [KeepingRule.SealedLife] = opened is null ? Plus(received, limits.SealedDays) : null,
                [KeepingRule.SinceOpening] = Plus(opened, limits.OpenedFullDays),
                [KeepingRule.SinceHalfEmpty] = Plus(half, limits.OpenedPartDays),
            };
            var good = GoodUntil.OfContainer(limits, printed, received, opened, half);
            Assert.Equal(ends.Values.Min(), good?.Date);
            if (good is not null)
                Assert.Equal(ends[good.Rule], good.Date);
        });

    /// <summary>
    /// Day by day: a solution is bad once its life in a full bottle is over, or once it stands in a container for
    /// longer than that allows.
    /// </summary>
    [Fact]
    public void The_earliest_rule_governs_a_working_solution() => Gen.Select(
        Gen.Int[1, 60].Select(full => new KeepingLimits(WorkingFullDays: full, WorkingPartDays: 20,
            TrayHours: 48, FloatingLidDays: 30)),
        Gen.Select(Gen.Int[0, 50], Gen.Enum<WorkingContainer>()).Array[0, 5]).Sample((limits, stays) =>
        {
            var mixed = new LocalDate(2026, 1, 1);
            var standings = stays.OrderBy(stay => stay.Item1)
                .Select(stay => new Standing(mixed.PlusDays(stay.Item1), stay.Item2)).ToList();
            var day = mixed;
            while (!IsBad(day))
                day = day.PlusDays(1);
            Assert.Equal(day.PlusDays(-1), GoodUntil.OfWorkingSolution(limits, mixed, standings)!.Date);

            bool IsBad(LocalDate on) => on > mixed.PlusDays(limits.WorkingFullDays!.Value)
                || Enumerable.Range(0, standings.Count).Any(i => standings[i].Container != WorkingContainer.FullBottle
                    && on > standings[i].Since.PlusDays(limits.DaysIn(standings[i].Container)!.Value)
                    && (i + 1 == standings.Count || on <= standings[i + 1].Since));
        });

    [Fact]
    public void A_working_solution_lives_from_its_mixing()
    {
        var mixed = new LocalDate(2026, 1, 31);
        Assert.Equal(new(new(2026, 3, 2), KeepingRule.SinceMixing),
            GoodUntil.OfWorkingSolution(new(WorkingFullDays: 30), mixed));
        Assert.Null(GoodUntil.OfWorkingSolution(KeepingLimits.None, mixed));
    }

    [Fact]
    public void Every_rule_has_a_name_of_its_own() => Assert.Equal(
        Enum.GetValues<KeepingRule>().Length,
        Enum.GetValues<KeepingRule>().Select(rule => rule.Name()).Distinct().Count());

    private static LocalDate? Plus(LocalDate? date, int? days) => days is { } count ? date?.PlusDays(count) : null;

    private static int? Days(string text) =>
        text.Length == 0 ? null : int.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    private static LocalDate? Day(string text) => text.Length == 0 ? null : Dates.Parse($"2026-{text}");
}
