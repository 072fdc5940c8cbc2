namespace Ledger.Core.Tests.Journal.Rules;

public sealed class BathMixingTests
{
    private readonly InMemoryLedger _ledger = Shelves.Stocked();

    [Fact]
    public void The_concentrate_leaves_its_bottle_and_the_bath_begins_to_age()
    {
        var posting = _ledger.Post("bath bath=F1 working_ml=1500 date=2026-02-01");
        Assert.Equal("mixed bath F1: 300 ml of fix for 1500 ml, 1+4", posting.Summary);
        Assert.Equal([new Effect("fix/1", "1000 ml", "700 ml"), new Effect("F1", "-", "1500 ml 1+4")], posting.Effects);
        var movement = Assert.Single(posting.Movements);
        Assert.Equal((300_000L, Money.Of(4.77m)), (movement.Quantity, movement.Value));

        var bath = _ledger.Holdings.Bath("f1")!;
        Assert.Equal((new(2026, 2, 1), ItemRole.Fixer, BathMaterial.Film, 0),
            (bath.MixedOn, bath.Role, bath.Material, bath.Rotations));
        Assert.Equal(3000m, bath.TotalCapacity!.Value.SquareInches);
        Assert.Equal(Money.Of(4.77m), bath.Value);
        Assert.Equal("300 ml", Assert.Single(bath.Contents).Quantity.ToString());
    }

    [Fact]
    public void What_was_measured_and_set_goes_before_the_items_own()
    {
        _ledger.Post(
            "bath bath=F1 working_ml=1000 dilution=1+9 concentrate_ml=110ml capacity_sq_in_per_litre=1333 "
                + "capacity_basis=strict");
        var bath = _ledger.Holdings.Bath("F1")!;
        Assert.Equal(("1+9", "strict", "110 ml"),
            (bath.Dilution.Text, bath.Capacity!.Basis, bath.Contents.Single().Quantity.ToString()));
    }

    [Fact]
    public void A_powder_is_measured() => Assert.Equal(
        "mixed bath S1: 30 g of stop for 1500 ml, "
            + "1+19", _ledger.Post("bath bath=S1 item=stop dilution=1+19 concentrate_ml=30g").Summary);

    [Fact]
    public void A_bath_takes_from_the_next_bottle_when_one_is_empty()
    {
        _ledger.Post("delivery item=fix price=17.90");
        var posting = _ledger.Post("bath working_ml=6000");
        Assert.Equal([1_000_000L, 200_000L], posting.Movements.Select(movement => movement.Quantity));
        Assert.Equal(2, _ledger.Holdings.Bath("F1")!.Contents.Count);
        Assert.Equal(_ledger.Balances(), _ledger.Held());
    }

    [Fact]
    public void Without_an_order_a_short_bottle_refuses_and_with_it_the_difference_is_booked()
    {
        Assert.Equal(RefusalKind.MoreThanHeld, _ledger.Refuse("bath working_ml=5500").Kind);
        var posting = _ledger.Post("bath working_ml=5500 book_difference=yes");
        Assert.Equal(
            [(Places.LostOrGained, 100_000L, "1.59"), (new PlaceId(105), 1_100_000L, "17.49")],
            posting.Movements.Select(movement => (movement.From, movement.Quantity,
                movement.Value.Text(MeasureStyle.Metric))));
        Assert.Equal(
            ["fix/1 held 100 ml more than the book says; the difference is booked as found by a count"],
            posting.Remarks);
        Assert.Null(_ledger.Holdings.Container("fix/1"));
        Assert.Equal(_ledger.Balances(), _ledger.Held());
    }

    [Fact]
    public void A_second_bath_joins_the_first_and_moves_up_when_that_is_poured_out()
    {
        _ledger.Post("bath bath=F1 working_ml=500 date=2026-02-01");
        Assert.EndsWith("second after F1",
            _ledger.Post("bath bath=F2 working_ml=500 paired_with=F1 date=2026-02-01").Summary,
            StringComparison.Ordinal);
        Assert.Equal(["F1"], _ledger.Holdings.WorkingBaths.Select(bath => bath.Code));
        Assert.Equal("F2", _ledger.Holdings.SecondAfter(_ledger.Holdings.Bath("F1")!)?.Code);

        _ledger.Post("discard what=F1 date=2026-02-20");
        Assert.Equal(["F2"], _ledger.Holdings.WorkingBaths.Select(bath => bath.Code));
        Assert.Equal(new(2026, 2, 1), _ledger.Holdings.Bath("F2")!.MixedOn);
    }

    [Fact]
    public void Each_rotation_is_counted_and_one_beyond_the_ceiling_is_remarked()
    {
        _ledger.Post("setting setting=rotation-ceiling value=1");
        _ledger.Post("bath bath=F1 working_ml=500");
        _ledger.Post("bath bath=F2 working_ml=500 paired_with=F1");
        _ledger.Post("discard what=F1");
        Assert.Empty(_ledger.Post("bath bath=F3 working_ml=500 paired_with=F2").Remarks);
        _ledger.Post("discard what=F2");
        Assert.Equal(
            ["this is rotation 2 of the pair; the ceiling is 1: mix a fresh pair next time"],
            _ledger.Post("bath bath=F4 working_ml=500 paired_with=F3").Remarks);
        Assert.Equal([1, 2], _ledger.Holdings.Baths.Select(bath => bath.Rotations));
    }

    [Fact]
    public void Concentrate_past_its_day_is_remarked()
    {
        _ledger.Post("delivery item=fix expires=2026-03-01 date=2026-02-01");
        Assert.Equal(
            ["fix/2 was good until 2026-03-01 (expiry date)"],
            _ledger.Post("bath container=fix/2 working_ml=500").Remarks);
    }
}
