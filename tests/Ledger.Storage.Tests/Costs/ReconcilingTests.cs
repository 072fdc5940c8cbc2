using CsCheck;

namespace Ledger.Storage.Tests.Costs;

/// <summary>
/// Opening + bought = used + waste + on hand, for every month and whatever was entered late, taken back or left open.
/// </summary>
public sealed class ReconcilingTests : IDisposable
{
    private static readonly Gen<(int Kind, int Amount, int Day, int Month)[]> Steps =
        Gen.Select(Gen.Int[0, 7], Gen.Int[1, 9], Gen.Int[1, 28], Gen.Int[2, 12]).Array[1, 25];

    private readonly TemporaryLedger _file = new();

    public ReconcilingTests() => Some.Stock(_file);

    public void Dispose() => _file.Dispose();

    [Fact]
    public void What_is_entered_late_stands_on_its_own_day()
    {
        _file.Accept(Some.Session("S01", 4, month: 3));
        _file.Accept(Some.Delivery("pan", 1, 199.99m, month: 6));
        _file.Accept(Some.Session("S02", 7, Fate.Reject, month: 9));
        _file.Accept(Some.Delivery("pan", 3, 33.33m, month: 2));
        _file.Accept(Some.Session("S00", 3, Fate.Keeper, month: 4));
        _file.Accept(new Discard
        {
            Key = Some.Key(), Date = Some.Day(5, 5), What = "pan", Quantity = new(2, Unit.Sheet), Reason = "fogged",
        });
        _file.Accept(new StockCount
        {
            Key = Some.Key(), Date = Some.Day(7, 7), What = "syrup", Found = Quantity.Of(903.337m, Unit.Millilitre),
            Reason = "dregs",
        });
        EveryMonthReconciles(_file.Ledger);
        Assert.Equal(Money.Of(99.99m), Year(2025).Facts.Bought - Money.Of(2 * 162.50m + 42 + 15.90m + 22 + 199.99m));
    }

    [Fact]
    public void An_undo_leaves_no_trace()
    {
        _file.Accept(Some.Session("S01", 4, month: 3));
        var before = Year(2025);
        var mistaken = _file.Accept(Some.Session("S02", 5, Fate.Reject, month: 4));
        var bought = _file.Accept(Some.Delivery("syrup", 1, 43.21m, month: 5));
        EveryMonthReconciles(_file.Ledger);
        foreach (var posted in new[] { mistaken, bought })
            _file.Accept(new Undo { Key = Some.Key(), Date = Some.Day(6, 1), Number = posted.Number,
                Reason = "mistaken" });
        EveryMonthReconciles(_file.Ledger);
        var after = Year(2025);
        Assert.Equal(
            (before.Spent, before.Used, before.Waste, before.OnHand, before.StillInBaths),
            (after.Spent, after.Used, after.Waste, after.OnHand, after.StillInBaths));
        Assert.Empty(after.Facts.Losses);
    }

    /// <summary>F1 holds 300 ml at 15.90 a litre for 3000 sq in: 4.77, of which 320 sq in use 0.5088.</summary>
    [Fact]
    public void A_bath_that_is_closed_a_year_later_closes_exactly()
    {
        _file.Accept(Some.Session("S01", 4, month: 3));
        _file.Accept(new Discard { Key = Some.Key(), Date = new(2026, 3, 1), What = "F1", Reason = "spent" });
        EveryMonthReconciles(_file.Ledger);
        Assert.Equal((4.2612m, 0m), (Year(2025).StillInBaths.Amount, Year(2025).NeverUsedInBaths.Amount));
        Assert.Equal((0m, 4.2612m), (Year(2026).StillInBaths.Amount, Year(2026).NeverUsedInBaths.Amount));
        Assert.Equal("2026-03", Assert.Single(CostSlices.Of(Year(2026), CostGrouping.Month)).Name);
    }

    [Fact]
    public void A_delivery_of_several_lines_comes_whole_and_is_taken_back_whole()
    {
        var before = Year(2025).OnHand;
        var delivery = _file.Accept(new Delivery
        {
            Key = Some.Key(), Date = Some.Day(4, 4), Reference = "inv-1",
            Shipping = Money.Of(10), Duty = Money.Of(3.33m), Currency = "USD", Rate = 0.9137m,
            Lines = [Line("pan", 2, 161), Line("syrup", 1, 40), Line("fix", 3, 14.15m)],
        });
        EveryMonthReconciles(_file.Ledger);
        Assert.Equal(Money.Of(417.78m).At(0.9137m), Year(2025).OnHand - before);
        Assert.Equal(
            ["pan", "syrup", "fix"],
            _file.Ledger.Prices(_file.Ledger.Today).Where(price => price.Currency == "USD")
                .Select(price => price.Item));
        _file.Reopen();
        _file.Accept(Some.Session("S01", 4, month: 4));
        _file.Accept(new Undo { Key = Some.Key(), Date = Some.Day(6, 1), Number = delivery.Number,
            Reason = "sent back" });
        EveryMonthReconciles(_file.Ledger);
        Assert.DoesNotContain(_file.Ledger.Prices(_file.Ledger.Today), price => price.Currency == "USD");
    }

    [Fact]
    public void By_lot_the_stock_is_revalued_to_what_was_posted()
    {
        _file.Accept(Some.Delivery("pan", 1, 199.99m, month: 2));
        _file.Accept(Some.Session("S01", 55, month: 3));
        var year = Year(2025);
        var byLot = new Revaluation(_file.Ledger.StockMoves(_file.Ledger.Today), CostFormula.SpecificLot,
            Some.Day(1, 1));
        Assert.True(byLot.Reconciles);
        Assert.All(byLot.Items, item => Assert.Equal(item.PostedAsUsed, item.Used));
        Assert.Equal(year.OnHand.Millionths, byLot.Items.Sum(item => item.OnHand.Millionths));
        var average = new Revaluation(_file.Ledger.StockMoves(_file.Ledger.Today), CostFormula.MovingAverage,
            Some.Day(1, 1));
        Assert.True(average.Reconciles);
        Assert.NotEqual(byLot.Items[0].Used, average.Items[0].Used);
    }

    /// <summary>
    /// 50 sheets at 6.50, then 25 at 8; 60 developed in March and 5 thrown away in May. First in, first out: 50 × 6.50
    /// + 10 × 8 and 5 × 8. The average of 75 is 525 / 75 = 7.
    /// </summary>
    [Theory]
    [InlineData(CostFormula.SpecificLot, 405, 40)]
    [InlineData(CostFormula.FirstInFirstOut, 405, 40)]
    [InlineData(CostFormula.MovingAverage, 420, 35)]
    public void The_formula_is_that_of_every_figure(CostFormula formula, decimal film, decimal thrownAway)
    {
        _file.Accept(Some.Delivery("pan", 1, 200, month: 2));
        _file.Accept(Some.Session("S01", 60, month: 3));
        _file.Accept(new Discard { Key = Some.Key(), Date = Some.Day(5, 5), What = "pan", Quantity = new(5, Unit.Sheet),
            Reason = "fogged" });
        var costs = new CostReading(_file.Ledger.Costs(Some.Day(1, 1), Some.Day(12, 31), formula));
        Assert.Equal((film, thrownAway), (costs.Film.Amount, costs.Facts.Discarded.Amount));
        Assert.Equal(film + thrownAway, costs.Of("pan").Film.Amount);
        Assert.Equal(525m - film - thrownAway, costs.OnHand.Amount - new CostReading(_file.Ledger.Costs(
            Some.Day(1, 1), Some.Day(12, 31))).OnHand.Amount + 80m);
        Assert.Equal(film, costs.Sheets.Sum(sheet => sheet.Film.Amount));
    }

    /// <summary>Costed anew by lot, a period is what the ledger posted: nothing is forgotten on the way.</summary>
    [Fact]
    public void By_lot_the_facts_are_costed_anew_to_what_was_posted()
    {
        _file.Accept(Some.Delivery("pan", 1, 199.99m, month: 2));
        _file.Accept(Some.Session("S01", 55, month: 3));
        _file.Accept(Some.Session("S02", 3, Fate.Reject, month: 4));
        _file.Accept(new StockCount
        {
            Key = Some.Key(), Date = Some.Day(7, 7), What = "syrup", Found = Quantity.Of(903.337m, Unit.Millilitre),
            Reason = "dregs",
        });
        _file.Accept(new Discard { Key = Some.Key(), Date = Some.Day(8, 8), What = "F1", Reason = "spent" });
        var (from, to) = (Some.Day(1, 1), Some.Day(12, 31));
        var posted = new CostReading(_file.Ledger.Costs(from, to));
        var recosting = new Recosting(new(_file.Ledger.StockMoves(to), CostFormula.SpecificLot, from));
        var anew = new CostReading(recosting.Of(_file.Ledger.Costs(from, to, recosted: recosting.Of)));
        Assert.Equal(Figures(posted), Figures(anew));
        Assert.Equal(posted.Sheets, anew.Sheets);
        Assert.Equal(posted.Facts.Losses.OrderBy(loss => loss.Date), anew.Facts.Losses.OrderBy(loss => loss.Date));

        static Money[] Figures(CostReading costs) =>
        [
            costs.Opening, costs.Facts.Bought, costs.Film, costs.Chemistry, costs.Supplies,
            costs.Waste, costs.NeverUsedInBaths, costs.OnHand, costs.StillInBaths,
        ];
    }

    [Fact]
    public void A_changed_month_is_noticed()
    {
        using (var command = _file.Ledger.Connection.CreateCommand())
        {
            command.CommandText = "UPDATE stock_month SET change = change + 1 WHERE month = '2025-01'";
            Assert.Equal(1, command.ExecuteNonQuery());
        }

        var problems = _file.Ledger.Check(null, default).Problems;
        Assert.StartsWith("the stock's value is kept as changed by ", Assert.Single(problems),
            StringComparison.Ordinal);
        Assert.Equal(problems, _file.Ledger.Mend(null, default).Mended);
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }

    /// <summary>
    /// The lines' costs are rounded so that they add up to the delivery: one alone may be a millionth off its own
    /// amounts.
    /// </summary>
    [Fact]
    public void A_delivery_of_several_lines_in_another_currency_passes_the_check()
    {
        for (var amount = 1; amount <= 9; amount++)
            _file.Accept(Entry((1, amount, amount + 3, 5), amount));
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }

    /// <summary>Deliveries, sessions, counts, discards and undos on any day, in any order.</summary>
    [Fact]
    public void Whatever_is_entered_every_month_reconciles() => Steps.Sample(steps =>
    {
        using var file = new TemporaryLedger();
        Some.Stock(file);
        for (var i = 0; i < steps.Length; i++)
            file.Ledger.Post(Entry(steps[i], i));
        EveryMonthReconciles(file.Ledger, isInOrder: false);
    }, iter: 15, threads: 1);

    /// <summary>What is entered at random is unlikely, and is so.</summary>
    private static Entry Entry((int Kind, int Amount, int Day, int Month) step, int index) =>
        Made(step, index) with { Anyway = true };

    private static Entry Made((int Kind, int Amount, int Day, int Month) step, int index)
    {
        var (key, date) = (Some.Key(), Some.Day(step.Month, step.Day));
        return step.Kind switch
        {
            0 => Some.Delivery("pan", step.Amount * 0.12m, 123.45m) with { Key = key, Date = date },
            1 => new Delivery
            {
                Key = key, Date = date, Reference = $"inv-{index}", Shipping = Money.Of(step.Amount * 0.37m),
                Currency = "USD", Rate = 0.77m, Lines = [Line("pan", 1, 99.97m), Line("syrup", 1, step.Day)],
            },
            2 => new Discard { Key = key, Date = date, What = "pan", Quantity = new(step.Amount, Unit.Sheet),
                Reason = "fogged" },
            3 => new StockCount
            {
                Key = key, Date = date, What = "syrup", Found = Quantity.Of(step.Amount * 97.3m, Unit.Millilitre),
                Reason = "dregs",
            },
            4 => new Discard { Key = key, Date = date, What = "F1", Reason = "spent" },
            5 => new Undo { Key = key, Date = date, Number = 6 + step.Amount + index / 2, Reason = "mistaken" },
            _ => Some.Session($"S{index}", step.Amount, (Fate)(step.Day % 5)) with { Key = key, Date = date },
        };
    }

    private static DeliveryLine Line(string item, decimal packs, decimal price) =>
        new() { Item = item, Packs = packs, Price = Money.Of(price) };

    private CostReading Year(int year) => new(_file.Ledger.Costs(new(year, 1, 1), new(year, 12, 31)));

    /// <summary>
    /// Entries on random days may draw before a count found it; that is another matter than their cost.
    /// </summary>
    private static void EveryMonthReconciles(LedgerFile ledger, bool isInOrder = true)
    {
        foreach (var formula in Enum.GetValues<CostFormula>())
            EveryMonthReconciles(ledger, formula);
        Assert.DoesNotContain(
            ledger.Check(null, default).Problems,
            problem => isInOrder || !problem.EndsWith("an entry is dated too early", StringComparison.Ordinal));
    }

    private static void EveryMonthReconciles(LedgerFile ledger, CostFormula formula)
    {
        var left = Money.Zero;
        for (var month = new LocalDate(2025, 1, 1); month <= ledger.Today; month = month.PlusMonths(1))
        {
            var costs = new CostReading(ledger.Costs(month, month.PlusMonths(1).PlusDays(-1), formula));
            Assert.True(costs.Reconciles,
                $"{month} by {formula}: spent {costs.Spent}, used {costs.Used}, left {costs.Closing}");
            Assert.Equal(left, costs.Opening);
            left = costs.Closing;
            foreach (var grouping in Enum.GetValues<CostGrouping>())
                Assert.Equal(costs.Used.Millionths, CostSlices.Of(costs, grouping).Sum(slice => slice.Used.Millionths));
        }
    }
}
