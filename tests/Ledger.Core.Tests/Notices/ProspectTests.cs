namespace Ledger.Core.Tests.Notices;

public sealed class ProspectTests
{
    [Fact]
    public void It_says_for_how_many_batches_the_developer_is_and_what_room_the_bath_has()
    {
        var ledger = Shelves.WithBath();
        ledger.Post("session line=4_fen80");
        var prospect = Assert.Single(Prospect.Of(ledger.Holdings));
        Assert.Equal(("pm", "syrup"), (prospect.Process, prospect.Developer));
        Assert.Equal(("1975 ml", 79L), (prospect.DeveloperLeft.ToString(), prospect.Batches));
        Assert.Equal(("F1", 2680m), (prospect.Bath, prospect.RoomInBath!.Value.SquareInches));
    }

    [Fact]
    public void A_batch_that_is_not_quite_there_does_not_count()
    {
        var ledger = Shelves.WithBath();
        ledger.Post("count item=syrup found=74.999ml");
        Assert.Equal(2, Assert.Single(Prospect.Of(ledger.Holdings)).Batches);
    }

    [Fact]
    public void A_spent_bath_has_no_room_and_none_is_no_bath()
    {
        var ledger = Shelves.Stocked();
        Assert.Null(Assert.Single(Prospect.Of(ledger.Holdings)).Bath);
        ledger.Post("bath date=2026-01-13");
        Assert.Equal(Area.Zero, Assert.Single(Prospect.Of(ledger.Holdings)).RoomInBath);
    }

    [Fact]
    public void Paper_baths_do_not_offer_room_for_film()
    {
        var ledger = Shelves.Stocked();
        ledger.Post("bath material=paper");
        Assert.Null(Assert.Single(Prospect.Of(ledger.Holdings)).Bath);
    }

    [Fact]
    public void Without_anything_bought_nothing_can_be_developed()
    {
        var prospect = Assert.Single(Prospect.Of(Shelves.Empty().Holdings));
        Assert.Equal(0, prospect.Batches);
        Assert.True(prospect.DeveloperLeft!.Value.IsZero);
    }
}
