namespace Ledger.Storage.Tests;

public sealed class PostingTests : IDisposable
{
    private readonly TemporaryLedger _file = new();

    public void Dispose() => _file.Dispose();

    private Holdings Now => _file.Ledger.HoldingsOn(_file.Ledger.Today);

    [Fact]
    public void A_session_draws_film_developer_and_supplies_and_works_the_bath()
    {
        Some.Stock(_file);
        _file.Accept(Some.Session());

        Assert.Equal(46, Now.OnHand(Now.Item("pan")!).Base);
        Assert.Equal(975_000, Now.OnHand(Now.Item("syrup")!).Base);
        Assert.Equal(700_000, Now.OnHand(Now.Item("fix")!).Base);
        Assert.Equal(99, Now.OnHand(Now.Item("gloves")!).Base);
        var bath = Now.Bath("f1")!;
        Assert.Equal(320, bath.Worked.SquareInches);
        Assert.Equal(4_770_000, bath.Value.Millionths);
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }

    [Fact]
    public void Sending_an_entry_again_adds_nothing()
    {
        Some.Stock(_file);
        var session = Some.Session();
        var first = _file.Accept(session);
        Assert.Equal(first.Number, Assert.IsType<AlreadyPosted>(_file.Ledger.Post(session)).Number);
        Assert.Equal(46, Now.OnHand(Now.Item("pan")!).Base);
    }

    [Fact]
    public void A_refusal_changes_nothing()
    {
        Some.Stock(_file);
        var entries = _file.Ledger.Check(null, default).Entries;
        Assert.Equal(RefusalKind.MoreThanHeld, _file.Refuse(Some.Session(sheets: 51)).Kind);
        Assert.Equal(RefusalKind.Unknown, _file.Refuse(Some.Session() with { Process = "none" }).Kind);
        Assert.Equal(entries, _file.Ledger.Check(null, default).Entries);
        Assert.Equal(50, Now.OnHand(Now.Item("pan")!).Base);
    }

    [Fact]
    public void An_undo_brings_everything_back_on_the_day_of_what_it_reverses()
    {
        Some.Stock(_file);
        var session = _file.Accept(Some.Session());
        var before = _file.Ledger.HoldingsOn(Some.Day(2, 28));
        _file.Accept(new Undo { Key = Some.Key(), Date = _file.Ledger.Today, Number = session.Number,
            Reason = "wrong bath" });

        Assert.Equal(
            before.Containers.Select(container => (container.Code, container.Held, container.Value)),
            Now.Containers.Select(container => (container.Code, container.Held, container.Value)));
        Assert.Equal(Area.Zero, Now.Bath("F1")!.Worked);
        Assert.All(Now.Containers, container => Assert.True(container.IsSealed || container.Lot.Item == "fix"));
        Assert.Equal(50, _file.Ledger.HoldingsOn(Some.Day(3, 1)).OnHand(Now.Item("pan")!).Base);
        _file.Accept(Some.Session());
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }

    [Fact]
    public void The_ledger_as_of_an_earlier_day_shows_that_day()
    {
        Some.Stock(_file);
        _file.Accept(Some.Session());
        _file.Accept(Some.Session("S02", month: 5));

        var april = _file.Ledger.HoldingsOn(Some.Day(4, 1));
        Assert.Equal(46, april.OnHand(april.Item("pan")!).Base);
        Assert.Equal(320, april.Bath("F1")!.Worked.SquareInches);
        Assert.Empty(_file.Ledger.HoldingsOn(Some.Day(1, 1)).Containers);
        Assert.Null(_file.Ledger.HoldingsOn(Some.Day(1, 31)).Bath("F1"));
    }

    [Fact]
    public void A_full_and_an_empty_period_both_reconcile()
    {
        Some.Stock(_file);
        _file.Accept(Some.Session());
        _file.Accept(Some.Session("S02", 2, Ledger.Core.Sessions.Fate.Reject, month: 4));
        _file.Accept(new Discard { Key = Some.Key(), Date = Some.Day(5, 1), What = "F1", Reason = "specks" });
        _file.Accept(new StockCount { Key = Some.Key(), Date = Some.Day(5, 2), What = "syrup",
            Found = Quantity.Of(940, Unit.Millilitre), Reason = "dregs" });

        var year = new CostReading(_file.Ledger.Costs(Some.Day(1, 1), Some.Day(12, 31)));
        Assert.True(year.Reconciles);
        Assert.Equal(404.9m, year.Spent.Amount);
        Assert.Equal(26m, year.Film.Amount);
        Assert.Equal(13m, year.SpoiledFilm.Amount);
        Assert.Equal(0.42m, year.Facts.Lost.Amount);
        Assert.Equal(4.77m, (year.NeverUsedInBaths + year.Chemistry).Amount - 0.050m * 42m);
        foreach (var month in Enumerable.Range(1, 12))
            Assert.True(new CostReading(_file.Ledger.Costs(Some.Day(month, 1), Some.Day(month, 28))).Reconciles);
    }

    /// <summary>
    /// A number typed with noughts at its end is the same number: what is derived anew from the words is what was
    /// written at first.
    /// </summary>
    [Fact]
    public void Noughts_at_the_end_of_a_number_make_no_difference()
    {
        Some.Stock(_file);
        _file.Accept(Some.Define(Some.Film("ortho") with { ServiceLevel = 0.950m }));
        _file.Accept(Some.Delivery("pan", 0.60m, 123.450m) with { Currency = "USD", Rate = 0.7700m });
        var process = Some.Process();
        _file.Accept(process with
        {
            Key = Some.Key(), Process = "warm tray",
            Steps = [.. process.Steps.Select(step => step with { Minutes = 5.0m, Celsius = 20.00m })],
        });
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }

    /// <summary>
    /// The only bath that fits is written into the session: a bath mixed before it, and recorded late, leaves it where
    /// it was.
    /// </summary>
    [Fact]
    public void What_was_chosen_because_nothing_else_fitted_stays_chosen()
    {
        Some.Stock(_file);
        var session = _file.Accept(Some.Session(bath: null, month: 4));
        Assert.Equal("F1", Assert.IsType<SessionLog>(_file.Ledger.Said(session.Number)).Bath);
        _file.Accept(Some.Bath("F2", month: 3));
        Assert.Equal(320, Now.Bath("F1")!.Worked.SquareInches);
        Assert.Equal(0, Now.Bath("F2")!.Worked.SquareInches);
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }
}
