using CsCheck;

namespace Ledger.Core.Tests.Planning;

public sealed class BatchingTests
{
    private static readonly Gen<SheetsToDevelop> Line = Gen.Select(
        Gen.OneOf("8x10", "4x5", "11x14", "120"), Gen.OneOf("N", "N+1", "n", ""), Gen.Int[1, 13],
        Gen.OneOf("", "mill", "weir", "Mill"), Gen.OneOf("", "E01", "E02"), (format, group, count, subject, holder) =>
            new SheetsToDevelop(Some.Film($"film-{format}", format), group, count, subject, holder));

    private static readonly Gen<(SheetsToDevelop[] Sheets, BatchLimit Limit)> Session = Gen.Select(
        Line.Array[1, 8], Gen.Int[1, 9].Select(limit => BatchLimit.Read($"{limit} 4x5={limit + 1}")!));

    [Fact]
    public void A_plan_never_mixes_films_or_groups_never_exceeds_the_limit_and_uses_every_sheet_once() =>
        Session.Sample(session =>
        {
            var batches = Batching.Of(session.Sheets, TrayPractice.Common with { Limit = session.Limit });
            foreach (var group in session.Sheets.GroupBy(line => (line.Film.Code, line.Group)))
            {
                var own = batches.Where(batch => (batch.Film.Code, batch.Group) == group.Key).ToList();
                Assert.Equal(group.Sum(line => line.Count), own.Sum(batch => batch.Sheets.Count));
                Assert.All(own, batch => Assert.InRange(batch.InTray, 1, session.Limit.Of(batch.Film.Format!)));
                Assert.InRange(own.Max(batch => batch.Sheets.Count) - own.Min(batch => batch.Sheets.Count), 0, 1);
                Assert.Equal(
                    group.SelectMany(line => Enumerable.Repeat((line.Subject, line.Holder), line.Count)).Order(),
                    own.SelectMany(batch => batch.Sheets).Select(sheet => (sheet.Subject, sheet.Holder)).Order());
            }

            var numbers = batches.SelectMany(batch => batch.Sheets).Select(sheet => sheet.Number).ToList();
            Assert.Equal(Enumerable.Range(1, session.Sheets.Sum(line => line.Count)), numbers);
        });

    [Fact]
    public void Sheets_of_one_subject_are_spread_as_evenly_as_can_be() => Session.Sample(session =>
    {
        var batches = Batching.Of(session.Sheets, TrayPractice.Common with { Limit = session.Limit });
        foreach (var own in batches.GroupBy(batch => (batch.Film.Code, batch.Group)))
            foreach (var subject in own.SelectMany(batch => batch.Sheets).Where(sheet => sheet.Subject.Length > 0)
                .GroupBy(sheet => sheet.Subject, StringComparer.OrdinalIgnoreCase))
            {
                var most =
                    own.Max(
                        batch => batch.Sheets.Count(sheet => subject.Key.Equals(sheet.Subject,
                            StringComparison.OrdinalIgnoreCase)));
                Assert.InRange(most, 1, (subject.Count() + own.Count() - 1) / own.Count() + 1);
            }
    });

    [Fact]
    public void The_sides_of_a_holder_go_into_different_batches()
    {
        var film = Some.Film();
        var batches = Batching.Of(
            [new(film, "N", 2, Holder: "E01"), new(film, "N", 2, Holder: "E02"), new(film, "N", 2, Holder: "E03")],
            TrayPractice.Common);
        Assert.All(batches,
            batch => Assert.Equal(["E01", "E02", "E03"], batch.Sheets.Select(sheet => sheet.Holder).Order()));
    }
}
