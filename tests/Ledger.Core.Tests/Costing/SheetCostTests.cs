using CsCheck;

namespace Ledger.Core.Tests.Costing;

public sealed class SheetCostTests
{
    [Fact]
    public void Each_sheet_takes_its_film_and_a_share_by_area()
    {
        var sheets = SheetCost.Of(Session(
            new("fen80", 2, Area.Unit80 * 2, Money.Of(13.54m), Fate.Negative),
            new("reed400", 4, Area.Unit80, Money.Of(6.20m), Fate.Keeper))).ToList();
        Assert.Equal(["S7-01", "S7-02", "S7-03", "S7-04", "S7-05", "S7-06"], sheets.Select(sheet => sheet.Sheet));
        Assert.Equal((6.77m, 0.35m, 0.10m),
            (sheets[0].Film.Amount, sheets[0].Developer.Amount, sheets[0].Supplies.Amount));
        Assert.Equal((1.55m, 0.0875m, 0.025m),
            (sheets[5].Film.Amount, sheets[5].Developer.Amount, sheets[5].Supplies.Amount));
        Assert.Equal(sheets[0].Film + sheets[0].Developer + sheets[0].OtherChemistry + sheets[0].Supplies,
            sheets[0].Total);
    }

    [Fact]
    public void Each_sheet_pays_for_the_fixer_by_its_factor_and_for_other_baths_by_its_area()
    {
        // 30 sheets of 4x5 at 1 and 10 at 1.5 load a fixer of 5.00 with 45 × 20 = 900 of 3000 sq in: 1.50, 0.0333 and
        // 0.05 each.
        var area = Area.Unit80 * 10;
        var session = Session(
            new FilmUse("fen80", 30, Area.FromSquareInches(600), Money.Zero, Fate.Negative),
            new FilmUse("tab100", 10, Area.FromSquareInches(200), Money.Zero,
                Fate.Negative) { FixerFactorThousandths = 1500 }) with
        {
            Baths = [Part("F1", isWeighted: true, 5, Area.FromSquareInches(900)),
                Part("ST1", isWeighted: false, 3, area)],
        };
        var sheets = SheetCost.Of(session).ToList();
        Assert.Equal(Money.Of(2.3m), Sum(sheets.Select(sheet => sheet.OtherChemistry))); // 1.50 and 0.80
        Assert.All(sheets.Take(30),
            sheet => Assert.InRange(sheet.OtherChemistry.Amount, 0.053332m, 0.053334m)); // 0.0333 + 0.02
        Assert.All(sheets.Skip(30),
            sheet => Assert.InRange(sheet.OtherChemistry.Amount, 0.069999m, 0.070001m)); // 0.05 + 0.02
    }

    [Fact]
    public void The_sheets_add_up_to_the_session() =>
        Gen.Select(Lines, Gen.Long[0, 100_000_000].Array[4]).Sample((lines, costs) =>
        {
            var session = Session(lines) with
            {
                Developer = new(costs[0]),
                OtherChemistry = new(costs[1]),
                Supplies = new(costs[2]),
                Baths =
                [
                    new(new("F1", new(costs[3]), Area.FromSquareInches(3000)) { IsWeighted = true },
                        Area.Zero, Area.FromSquareInches(640)),
                    new(new("ST1", new(costs[2]), Area.FromSquareInches(5000)), Area.Zero, Area.FromSquareInches(500)),
                ],
            };
            var sheets = SheetCost.Of(session).ToList();
            Assert.Equal(lines.Sum(line => line.Sheets), sheets.Count);
            Assert.Equal(Sum(lines.Select(line => line.Cost)), Sum(sheets.Select(sheet => sheet.Film)));
            Assert.Equal(session.Developer, Sum(sheets.Select(sheet => sheet.Developer)));
            Assert.Equal(session.OtherChemistry + session.BathUsedUp,
                Sum(sheets.Select(sheet => sheet.OtherChemistry)));
            Assert.Equal(session.Supplies, Sum(sheets.Select(sheet => sheet.Supplies)));
        });

    [Fact]
    public void A_bath_closes_exactly_whatever_passes_through_it() => Gen.Select(
        Gen.Long[0, 100_000_000], Gen.Long[1, 1_000_000_000], Gen.Long[0, 300_000_000].Array[0, 20])
            .Sample((value, capacity, works) =>
        {
            var bath = new BathShare("F1", new(value), Area.FromHundredths(capacity));
            var (worked, used) = (Area.Zero, Money.Zero);
            foreach (var work in works)
            {
                var after = worked + Area.FromHundredths(work);
                used += bath.UsedUpBy(after) - bath.UsedUpBy(worked);
                worked = after;
            }

            Assert.Equal(bath.Value, used + bath.LeftAfter(worked));
            Assert.True(bath.LeftAfter(worked) >= Money.Zero);
            Assert.True(worked < bath.Capacity || bath.LeftAfter(worked) == Money.Zero);
        });

    [Fact]
    public void A_bath_without_a_capacity_is_charged_when_it_ends()
    {
        var bath = new BathShare("F1", Money.Of(5), Area.Zero);
        Assert.Equal(Money.Zero, bath.UsedUpBy(Area.Unit80));
        Assert.Equal(Money.Of(5), bath.LeftAfter(Area.Unit80));
    }

    private static Gen<FilmUse[]> Lines => Gen.Select(Gen.Long[1, 12], Gens.Format, Gen.Long[0, 100_000_000]).Select(
        (sheets, format, cost) => new FilmUse(format.Code, sheets, format.Area * sheets, new(cost), Fate.Negative)
        {
            FixerFactorThousandths = (int)(500 + cost % 1500),
        }).Array[1, 5];

    private static BathPart Part(string bath, bool isWeighted, decimal value, Area load) =>
        new(new(bath, Money.Of(value), Area.FromSquareInches(3000)) { IsWeighted = isWeighted }, Area.Zero, load);

    private static SessionUse Session(params FilmUse[] lines) =>
        new("S7", Some.Today, Money.Of(1.05m), Money.Zero, Money.Of(0.30m), [], lines);

    private static Money Sum(IEnumerable<Money> amounts) =>
        amounts.Aggregate(Money.Zero, (sum, amount) => sum + amount);
}
