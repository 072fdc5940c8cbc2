namespace Ledger.Core.Tests.Costing;

/// <summary>A ledger's whole cost in one small life.</summary>
public sealed class CostReadingTests
{
    private readonly CostReading _reading;
    private readonly IReadOnlyList<SessionUse> _sessions;

    public CostReadingTests()
    {
        var ledger = Shelves.WithBath();
        ledger.Post("session session=S1 line=3_fen80 line=1_fen80_keeper");
        ledger.Post("session session=S2 line=1_fen80_reject line=8_reed400");
        ledger.Post("discard what=fen80 quantity=1sheet reason=fogged");
        ledger.Post("count item=syrup found=1890ml");
        ledger.Post("bath bath=F2 working_ml=500");
        ledger.Post("discard what=F1");
        _reading = new(Facts.Of(ledger));
        _sessions = Facts.SessionsOf(ledger);
    }

    /// <summary>
    /// Bought: 338.50 + 78 + 84 + 15.90 + 9 + 11. A sheet of fen80 is 6.77, of reed400 3.12. Syrup at 0.042: two
    /// batches in each session, 100 ml in all, and 10 ml that the count found missing. Stop 30 g at 0.018 and gloves
    /// 0.22 for each session. F1: 300 ml of fixer, 4.77 for 3000 sq in; worked 320 + 80 + 160 × 1.5 = 640. Waste: the
    /// reject, the fogged sheet, the 10 ml, the rest of F1.
    /// </summary>
    private const string Figures = """
        figure               | amount
        Spent                | 536.40
        Film                 | 52.04
        Chemistry            | 6.2976
        Supplies             | 0.44
        SpoiledFilm          | 6.77
        NeverUsedInBaths     | 3.7524
        Waste                | 17.7124
        StillInBaths         | 1.59
        """;

    [Fact]
    public void Every_figure_can_be_done_by_hand() => Assert.All(Table.Read(Figures), row =>
        Assert.Equal(row.Number("amount"), Figure(row["figure"]).Amount));

    [Fact]
    public void It_reconciles()
    {
        Assert.True(_reading.Reconciles);
        Assert.Equal(_reading.Spent, _reading.Used + _reading.OnHand + _reading.StillInBaths);
    }

    [Fact]
    public void A_millionth_too_much_does_not_reconcile() => Assert.False(
        new CostReading(_reading.Facts with { Bought = _reading.Facts.Bought + new Money(1) }).Reconciles);

    [Fact]
    public void Films_are_told_apart()
    {
        Assert.Equal(["fen80", "reed400"], _reading.ByFilm.Select(film => film.Item));
        var film = _reading.Of("FEN80");
        Assert.Equal((5L, 4L, 1L), (film.SheetsUsed, film.Negatives, film.Keepers));
        Assert.Equal(Money.Of(33.85m), film.Film);
        Assert.Equal(film.Total.Per(4), film.PerNegative);
        Assert.Equal(film.Total, film.PerKeeper);
        Assert.Null(_reading.Of("reed400").PerKeeper);
        Assert.Null(_reading.Of("nothing").PerSheetUsed);
        Assert.Equal(
            _reading.Film + _reading.SpoiledFilm + _reading.Chemistry + _reading.Supplies, _reading.AllFilms.Total);
        Assert.Equal(13, _reading.AllFilms.SheetsUsed);
    }

    [Fact]
    public void Film_thrown_away_undeveloped_counts_as_used()
    {
        var reading = new CostReading(_reading.Facts with { FilmDiscarded = [new("fen80", 1, Money.Of(6.77m))] });
        Assert.Equal(6, reading.Of("fen80").SheetsUsed);
        Assert.Equal(Money.Of(40.62m), reading.Of("fen80").Film);
    }

    [Fact]
    public void Practice_is_kept_out_of_what_a_negative_cost_unless_it_is_asked_for()
    {
        var ledger = Shelves.WithBath();
        ledger.Post("session session=S1 line=3_fen80 line=1_fen80_practice");
        var facts = Facts.Of(ledger);
        var (without, with) = (new CostReading(facts), new CostReading(facts, countsPractice: true));
        Assert.Equal((3L, 4L), (without.AllFilms.SheetsUsed, with.AllFilms.SheetsUsed));
        Assert.Equal(Money.Of(6.77m), without.Practice.Film);
        Assert.Equal(with.AllFilms.Total, without.AllFilms.Total + without.Practice.Total);
        Assert.Equal((without.Waste, without.Spent), (with.Waste, with.Spent));
        Assert.True(without.AllFilms.PerNegative < with.AllFilms.PerNegative);
    }

    [Theory]
    [InlineData(CostGrouping.Film, "fen80, reed400, other stock")]
    [InlineData(CostGrouping.Session, "S1, S2, other stock")]
    [InlineData(CostGrouping.Month, "2026-03")]
    [InlineData(CostGrouping.Year, "2026")]
    public void Whatever_it_is_divided_by_the_parts_add_up_to_all_of_it(CostGrouping grouping, string names)
    {
        var slices = CostSlices.Of(_reading, grouping);
        Assert.Equal(names, string.Join(", ", slices.Select(slice => slice.Name)));
        Assert.Equal(_reading.Film.Millionths, slices.Sum(slice => slice.Film.Millionths));
        Assert.Equal(_reading.Chemistry.Millionths, slices.Sum(slice => slice.Chemistry.Millionths));
        Assert.Equal(_reading.Supplies.Millionths, slices.Sum(slice => slice.Supplies.Millionths));
        Assert.Equal(_reading.Waste.Millionths, slices.Sum(slice => slice.Waste.Millionths));
        Assert.Equal(_reading.Used.Millionths, slices.Sum(slice => slice.Used.Millionths));
    }

    [Fact]
    public void A_print_session_of_the_same_name_stands_apart_and_all_of_them_by_date()
    {
        var (first, date) = (_sessions[0], _sessions[0].Date);
        PrintUse[] prints = [new(90, "S1", date.PlusDays(-1), Money.Of(2), []),
            new(91, "S2", date.PlusDays(1), Money.Of(3), [])];
        var sessions = SessionCosts.Of(
            [.. _sessions, first with { Session = "A9", Date = date.PlusDays(2), Entry = 92 }]);
        var slices = CostSlices.Of(new(_reading.Facts with { Prints = prints, Sessions = sessions }),
            CostGrouping.Session);
        Assert.Equal(
            "prints S1 2.00, S1 0.00, S2 0.00, prints S2 3.00, A9 0.00, other stock 0.00",
            string.Join(", ", slices.Select(slice => $"{slice.Name} {slice.Prints.Text(MeasureStyle.Metric)}")));
    }

    [Fact]
    public void A_film_that_is_called_prints_is_no_print_session()
    {
        var sessions = _sessions.Select(
            session => session with { Lines = [.. session.Lines.Select(line => line with { Item = "prints" })] });
        PrintUse[] prints = [new(90, "P1", _reading.Facts.To, Money.Of(2), [])];
        var slices = CostSlices.Of(new(_reading.Facts with { Prints = prints, Sessions = SessionCosts.Of(sessions), Losses = [] }),
            CostGrouping.Film);
        Assert.Equal(["0.00", "0.00", "2.00"],
            slices.OrderBy(slice => slice.Prints).Select(slice => slice.Prints.Text(MeasureStyle.Metric)));
    }

    [Fact]
    public void The_rate_of_use_is_measured_from_the_first_use_on()
    {
        var budget = BudgetReading.Of(_reading, Money.Of(100))!;
        Assert.Equal(1, budget.Days);
        Assert.Equal(_reading.Used.Millionths * 487 / 16, budget.UsedPerMonth.Millionths);
        Assert.True(budget.Left < Money.Zero);
        Assert.Null(BudgetReading.Of(new(_reading.Facts with { Sessions = SessionCosts.Of([]), Losses = [] }), Money.Of(100)));
    }

    [Fact]
    public void A_period_that_begins_with_stock_is_measured_whole_and_its_last_month_is_told()
    {
        var whole = new CostReading(_reading.Facts with { OnHandBefore = Money.Of(1),
            From = _reading.Facts.To.PlusDays(-59) });
        var budget = BudgetReading.Of(whole, Money.Of(100))!;
        Assert.Equal(60, budget.Days);
        Assert.Equal(_reading.Used, budget.LastMonth!.Used);
        Assert.Contains(
            $"{_reading.Used.Text(MeasureStyle.Metric)} of the 100.00 are used so far",
            budget.Sentence(MeasureStyle.Metric), StringComparison.Ordinal);
    }

    [Fact]
    public void The_next_session_costs_the_lots_that_are_reached_for()
    {
        var ledger = Shelves.WithBath();
        var preview = ledger.Preview(EntryWords.Read("session session=S1 line=4_fen80"));
        var posting = Assert.IsType<Accepted>(preview).Posting;
        var cost = SessionEstimate.Of(posting, ledger.Holdings);

        // Four sheets at 6.77; 25 ml at 0.042; 30 g at 0.018; 320 of 3000 sq in of a bath of 4.77; a pair of gloves.
        Assert.Equal(
            (27.08m, 1.05m, 0.54m, 0.5088m, 0.22m),
            (cost.Film.Amount, cost.Developer.Amount, cost.OtherChemistry.Amount, cost.Baths.Amount,
                cost.Supplies.Amount));
        Assert.Equal(4, cost.Sheets);
        ledger.Post("session session=S1 line=4_fen80");
        Assert.Equal(new CostReading(Facts.Of(ledger)).AllFilms.Total, cost.Total);
    }

    private Money Figure(string name) => (Money)typeof(CostReading).GetProperty(name)!.GetValue(_reading)!;
}
