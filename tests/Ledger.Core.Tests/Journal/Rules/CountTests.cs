namespace Ledger.Core.Tests.Journal.Rules;

public sealed class CountTests
{
    private readonly InMemoryLedger _ledger = Shelves.Stocked();

    [Fact]
    public void A_bottle_that_holds_less_loses_the_difference()
    {
        var posting = _ledger.Post("count item=syrup/1 found=989ml");
        Assert.Equal("counted syrup/1: 989 ml, -11 ml, dregs", posting.Summary);
        var movement = Assert.Single(posting.Movements);
        Assert.Equal((Places.LostOrGained, 11_000L, Money.Of(0.462m)),
            (movement.To, movement.Quantity, movement.Value));
        Assert.Equal([new Effect("syrup/1", "1000 ml", "989 ml")], posting.Effects);
    }

    [Fact]
    public void A_bottle_that_holds_more_gains_it_at_what_its_lot_cost()
    {
        var posting = _ledger.Post("count item=syrup/2 found=1010ml anyway=yes");
        Assert.Equal("counted syrup/2: 1010 ml, +10 ml, dregs", posting.Summary);
        var movement = Assert.Single(posting.Movements);
        Assert.Equal((Places.LostOrGained, 10_000L, Money.Of(0.42m)),
            (movement.From, movement.Quantity, movement.Value));
        Assert.Equal("1010 ml", _ledger.Holdings.Container("syrup/2")!.Held.ToString());
    }

    [Fact]
    public void An_item_is_counted_over_all_its_containers()
    {
        Assert.Equal("counted fen80: 48 sheets, -2 sheets, dregs",
            _ledger.Post("count item=fen80 found=48sheet").Summary);
        Assert.Equal("counted fen80: 50 sheets, +2 sheets, dregs",
            _ledger.Post("count item=fen80 found=50sheet").Summary);
        Assert.Equal(50, _ledger.Holdings.OnHand(Some.Film()).Base);
        Assert.Equal(_ledger.Balances(), _ledger.Held());
    }

    [Fact]
    public void Everything_can_be_gone()
    {
        _ledger.Post("count item=fen80 found=0sheet");
        Assert.Empty(_ledger.Holdings.ContainersOf("fen80"));
        Assert.Equal(_ledger.Balances(), _ledger.Held());
    }
}
