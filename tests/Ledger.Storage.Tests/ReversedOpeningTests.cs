namespace Ledger.Storage.Tests;

public sealed class ReversedOpeningTests : IDisposable
{
    private readonly TemporaryLedger _file = new();

    public void Dispose() => _file.Dispose();

    [Fact]
    public void A_bottle_that_was_drawn_from_since_is_not_sealed_again()
    {
        _file.Accept(Some.Define(Some.Syrup()));
        _file.Accept(Some.Delivery("syrup"));
        var opening = _file.Accept(Draw(100));
        _file.Accept(Draw(200));
        _file.Accept(new Undo { Key = Some.Key(), Date = _file.Ledger.Today, Number = opening.Number,
            Reason = "mistake" });

        var bottle = Assert.Single(_file.Ledger.HoldingsOn(_file.Ledger.Today).ContainersOf("syrup"));
        Assert.Equal(Quantity.Of(800, Unit.Millilitre), bottle.Held);
        Assert.False(bottle.IsSealed);
        var refusal = _file.Refuse(new Opening { Key = Some.Key(), Date = _file.Ledger.Today,
            Container = bottle.Code });
        Assert.Equal("syrup/1 is open since 2025-05-01; open another, or amend that entry first", refusal.Sentence);
    }

    private static Discard Draw(decimal millilitres) => new()
    {
        Key = Some.Key(), Date = Some.Day(5, 1), What = "syrup", Quantity = Quantity.Of(millilitres, Unit.Millilitre),
        Reason = "spilt",
    };
}
