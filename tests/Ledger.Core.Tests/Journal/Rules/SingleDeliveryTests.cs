namespace Ledger.Core.Tests.Journal.Rules;

public sealed class SingleDeliveryTests
{
    private readonly InMemoryLedger _ledger = Shelves.Empty();

    [Fact]
    public void A_delivery_is_one_lot_and_one_container_for_each_pack()
    {
        var posting = _ledger.Post(
            "delivery item=fen80 packs=2 price=162 shipping=14.50 batch=A7 expires=2028-11-30 storage=freezer");
        Assert.Equal("2 packs of fen80, 50 sheets for 338.50", posting.Summary);
        var lot = Assert.Single(posting.Facts.OfType<LotReceived>()).Lot;
        Assert.Equal(("A7", "2028-11-30", "freezer"), (lot.Batch, Dates.Text(lot.ExpiresOn!.Value), lot.Storage));
        Assert.Equal(
            [(Places.Supplier, 25, "169.25"), (Places.Supplier, 25, "169.25")],
            posting.Movements.Select(movement => (movement.From, movement.Quantity,
                movement.Value.Text(MeasureStyle.Metric))));
        Assert.Equal(
            [new Effect("fen80/1", "-", "25 sheets"), new Effect("fen80/2", "-", "25 sheets")], posting.Effects);
        Assert.All(_ledger.Holdings.ContainersOf("fen80"), container => Assert.True(container.IsSealed));
    }

    [Fact]
    public void A_part_of_a_pack_is_an_open_container()
    {
        var posting = _ledger.Post("delivery item=fen80 packs=1.56 price=25");
        Assert.Equal(
            [("fen80/2", 14L, Some.Today), ("fen80/1", 25L, null)],
            _ledger.Holdings.ContainersOf("fen80").Select(box => (box.Code, box.Held.Base, box.OpenedOn)));
        Assert.Equal("1.56 packs of fen80, 39 sheets for 39.00", posting.Summary);
    }

    [Theory]
    [InlineData("3", "10.00")]
    [InlineData("7", "0.000001")]
    [InlineData("2.5", "33.333333")]
    [InlineData("1000", "0.10")]
    public void The_containers_cost_what_the_lot_cost(string packs, string price)
    {
        _ledger.Post($"delivery item=gloves packs={packs} price={price}");
        Assert.Equal(
            _ledger.All[^1].Facts.OfType<LotReceived>().Single().Lot.Cost.Millionths,
            _ledger.Holdings.ContainersOf("gloves").Sum(box => box.Value.Millionths));
        Assert.Equal(_ledger.Balances(), _ledger.Held());
    }

    [Fact]
    public void Numbers_go_on_where_the_last_delivery_ended()
    {
        _ledger.Post("delivery item=fen80 packs=2");
        _ledger.Post("delivery item=fen80 packs=1");
        Assert.Equal(["fen80/1", "fen80/2", "fen80/3"], _ledger.Holdings.Containers.Select(box => box.Code));
        _ledger.Post("discard what=fen80/3");
        Assert.Equal("fen80/4", _ledger.Post("delivery item=FEN80").Effects.Single().What);
    }

    [Fact]
    public void The_first_delivery_names_the_currency_and_others_need_a_rate()
    {
        Assert.StartsWith(
            "the ledger has no currency yet", _ledger.Refuse("delivery item=fen80 currency=USD rate=0.9").Sentence,
            StringComparison.Ordinal);
        _ledger.Post("delivery item=fen80 price=100 currency=EUR");
        Assert.EndsWith("needs no rate", _ledger.Refuse("delivery item=fen80 currency=EUR rate=0.9").Sentence,
            StringComparison.Ordinal);
        Assert.Equal("EUR", _ledger.Holdings.Settings.Currency);
        Assert.EndsWith(
            "needs the rate, the EUR for one USD",
            _ledger.Refuse("delivery item=fen80 price=100 currency=USD").Sentence, StringComparison.Ordinal);
        _ledger.Post("delivery item=fen80 price=100 currency=USD rate=0.9");
        Assert.Equal(Money.Of(90), _ledger.Holdings.Container("fen80/2")!.Value);
        Assert.Equal("EUR", _ledger.Holdings.Settings.Currency);
        Assert.Contains("kept in EUR", _ledger.Refuse("setting setting=currency value=USD").Sentence,
            StringComparison.Ordinal);
    }
}
