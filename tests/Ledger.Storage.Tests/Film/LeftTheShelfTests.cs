using static Ledger.Storage.Tests.Support.Holders;

namespace Ledger.Storage.Tests.Film;

/// <summary>
/// What left the shelf for good, which the shelf shows by month: no decanting, no loading, nothing that was taken back.
/// </summary>
public sealed class LeftTheShelfTests : IDisposable
{
    private readonly TemporaryLedger _file = new();

    public LeftTheShelfTests() => Some.Stock(_file);

    public void Dispose() => _file.Dispose();

    [Fact]
    public void Decanting_moves_from_bottle_to_bottle_and_nothing_left()
    {
        _file.Accept(new Decanting
        {
            Key = Some.Key(), Date = Some.Day(3, 1), From = "syrup",
            Bottles = [new(Quantity.Of(250, Unit.Millilitre), null), new(Quantity.Of(250, Unit.Millilitre), null)],
        });
        Assert.Empty(Left("syrup"));
        _file.Accept(Some.Session(month: 4));
        Assert.Equal([(Some.Day(4, 1), 25_000L)], Left("syrup"));
    }

    [Fact]
    public void Loaded_film_has_not_left_and_developed_film_has()
    {
        _file.Accept(Holder("E01"));
        _file.Accept(Load(Some.Day(3, 1), "E01-1"));
        Assert.Empty(Left("pan"));
        _file.Accept(Some.Session(sheets: 3, month: 4));
        Assert.Equal([(Some.Day(4, 1), 3L)], Left("pan"));
    }

    [Fact]
    public void What_was_taken_back_has_not_left()
    {
        var session = _file.Accept(Some.Session(month: 4));
        Assert.NotEmpty(Left("pan"));
        _file.Accept(new Undo { Key = Some.Key(), Date = Some.Day(4, 2), Number = session.Number, Reason = "wrong" });
        Assert.Empty(Left("pan"));
        Assert.Empty(Left("syrup"));
    }

    [Fact]
    public void What_was_discarded_or_counted_off_has_left()
    {
        _file.Accept(new StockCount
        {
            Key = Some.Key(), Date = Some.Day(5, 1), What = "pan/1", Found = new(20, Unit.Sheet), Reason = "lost",
        });
        Assert.Equal([(Some.Day(5, 1), 5L)], Left("pan"));
    }

    private IEnumerable<(NodaTime.LocalDate, long)> Left(string item) =>
        _file.Ledger.LeftOf(item, null, Some.Day(1, 1), _file.Ledger.Today).Select(gone => (gone.Date, gone.Quantity));
}
