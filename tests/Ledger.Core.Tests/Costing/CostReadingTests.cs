using Ledger.Core.Costing;
using Ledger.Core.Measures;

namespace Ledger.Core.Tests.Costing;

/// <summary>A ledger's whole cost in one small life.</summary>
public sealed class CostReadingTests
{
    private readonly CostReading _reading;

    public CostReadingTests()
    {
        var ledger = Shelves.WithBath();
        ledger.Post("session session=S1 line=pan100:3 line=pan100:1:keeper");
        ledger.Post("session session=S2 line=pan100:1:reject line=tab400:8");
        ledger.Post("discard what=pan100 quantity=1sheet reason=fogged");
        ledger.Post("count what=syrup found=1890ml");
        ledger.Post("bath bath=F2 ml=500");
        ledger.Post("discard what=F1");
        _reading = new(Facts.Of(ledger));
    }

    /// <summary>
    /// Bought: 338.50 + 78 + 84 + 15.90 + 9 + 11. A sheet of pan100 is 6.77, of tab400 3.12. Syrup at 0.042: two batches in each
    /// session, 100 ml in all, and 10 ml that the count found missing. Stop 30 g at 0.018 and gloves 0.22 for each session. F1: 300 ml of
    /// fixer, 4.77 for 3000 sq in; worked 320 + 80 + 160 × 1.5 = 640. Waste: the reject, the fogged sheet, the 10 ml, the rest of F1.
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
        Assert.Equal(["pan100", "tab400"], _reading.ByFilm.Select(film => film.Item));
        var film = _reading.Of("PAN100");
        Assert.Equal((5L, 4L, 1L), (film.SheetsUsed, film.Negatives, film.Keepers));
        Assert.Equal(Money.Of(33.85m), film.Film);
        Assert.Equal(film.Total.Per(4), film.PerNegative);
        Assert.Equal(film.Total, film.PerKeeper);
        Assert.Null(_reading.Of("tab400").PerKeeper);
        Assert.Null(_reading.Of("nothing").PerSheetUsed);
        Assert.Equal(
            _reading.Film + _reading.SpoiledFilm + _reading.Chemistry + _reading.Supplies, _reading.AllFilms.Total);
        Assert.Equal(13, _reading.AllFilms.SheetsUsed);
    }

    [Fact]
    public void Film_thrown_away_undeveloped_counts_as_used()
    {
        var reading = new CostReading(_reading.Facts with { FilmThrownAway = [new("pan100", 1, Money.Of(6.77m))] });
        Assert.Equal(6, reading.Of("pan100").SheetsUsed);
        Assert.Equal(Money.Of(40.62m), reading.Of("pan100").Film);
    }

    private Money Figure(string name) => (Money)typeof(CostReading).GetProperty(name)!.GetValue(_reading)!;
}
