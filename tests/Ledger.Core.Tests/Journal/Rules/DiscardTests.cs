namespace Ledger.Core.Tests.Journal.Rules;

public sealed class DiscardTests
{
    private readonly InMemoryLedger _ledger = Shelves.WithBath();

    [Fact]
    public void A_bath_is_poured_out_whole()
    {
        var posting = _ledger.Post("discard what=f1 reason=yellow");
        Assert.Equal("discarded bath F1: yellow", posting.Summary);
        Assert.Equal((Places.UsedUp, 300_000L), (posting.Movements.Single().To, posting.Movements.Single().Quantity));
        Assert.Equal([new Effect("F1", "in use", "discarded")], posting.Effects);
        Assert.Empty(_ledger.Holdings.Baths);
        Assert.Equal(_ledger.Balances(), _ledger.Held());
    }

    [Fact]
    public void A_container_is_thrown_away_with_all_that_is_in_it()
    {
        var posting = _ledger.Post("discard what=fen80/2 reason=fogged");
        Assert.Equal("discarded 25 sheets of fen80/2: fogged", posting.Summary);
        Assert.Equal(Places.Discarded, posting.Movements.Single().To);
        Assert.Null(_ledger.Holdings.Container("fen80/2"));
    }

    [Fact]
    public void A_part_of_an_item_is_thrown_away_from_where_it_is_reached_for()
    {
        var posting = _ledger.Post("discard what=fen80 quantity=1sheet reason=cut_up");
        Assert.Equal([new Effect("fen80/1", "25 sheets", "24 sheets")], posting.Effects);
        Assert.False(_ledger.Holdings.Container("fen80/1")!.IsSealed);
    }

    [Fact]
    public void What_is_thrown_away_needs_no_remark_about_its_age()
    {
        _ledger.Post("delivery item=fix expires=2026-03-01 date=2026-02-01");
        Assert.Empty(_ledger.Post("discard what=fix/2 reason=old to=collection_point").Remarks);
    }
}
