using CsCheck;
using Ledger.Storage.Upkeep;

namespace Ledger.Storage.Tests.Model;

/// <summary>
/// What the ledger knew on a day is what stood in it that evening, whatever was recorded, taken back or put right
/// since.
/// </summary>
public sealed class KnownOnTests
{
    [Fact]
    public void What_was_known_on_a_day_is_what_stood_in_the_ledger_that_evening() => ModelTests.Steps.Sample(steps =>
    {
        using var file = new TemporaryLedger();
        foreach (var item in new[] { Some.Film(), Some.Syrup(), Some.Fixer(), Some.Gloves() })
            file.Accept(Some.Define(item));
        file.Accept(Some.Process());
        var evenings = new Dictionary<NodaTime.LocalDate, List<string>>();
        var (naive, lives) = (new NaiveLedger(), new List<int>());
        for (var i = 0; i < steps.Length; i++)
        {
            var (entry, isAccepted) = ModelTests.Next(steps[i], i, naive, lives);
            if (file.Ledger.Post(entry) is Posted && isAccepted)
                lives.Add(steps[i].Kind);
            if (i % 5 != 2)
                continue;
            if (i % 2 == 0)
            {
                var film = Some.Film() with { Name = $"Pan film, {i}", FixerFactorThousandths = 1000 + i };
                file.Ledger.Post(Some.Define(film) with { IsForAlways = i % 4 == 0 });
            }

            evenings.Add(file.Ledger.Today, Rows(file.Ledger));
            file.Sleep();
        }

        Assert.Empty(file.Ledger.Check(null, default).Problems);
        foreach (var (day, rows) in evenings)
        {
            using var then = file.Ledger.KnownOn(day);
            Assert.Equal(day, then.Today);
            Assert.Empty(rows.Except(Rows(then)));
            Assert.Empty(Rows(then).Except(rows));
        }
    }, iter: 6, threads: 1);

    [Fact]
    public void A_thing_that_was_defined_later_is_not_known()
    {
        using var file = new TemporaryLedger();
        Some.Stock(file);
        var day = file.Ledger.Today;
        file.Sleep();
        file.Accept(Some.Define(Some.Film("ortho")));
        file.Accept(Some.Delivery("ortho"));
        using var then = file.Ledger.KnownOn(day);
        Assert.Null(then.HoldingsOn(day).Item("ortho"));
        Assert.NotNull(file.Ledger.HoldingsOn(day).Item("ortho"));
        Assert.Empty(then.Check(null, default).Problems);
    }

    [Fact]
    public void What_an_earlier_version_recorded_cannot_be_forgotten()
    {
        using var file = new TemporaryLedger();
        Some.Stock(file);
        file.Run("DELETE FROM said_name; DELETE FROM said");
        var refused = Assert.Throws<LedgerFileException>(() => file.Ledger.KnownOn(file.Ledger.Today.PlusDays(-1)));
        Assert.Contains("accepted is 2026-03-15 or a later day", refused.Message, StringComparison.Ordinal);
    }

    private static List<string> Rows(LedgerFile ledger) =>
        [.. new Comparison(ledger.Connection).Dump(ledger.Connection)];
}
