using CsCheck;

namespace Ledger.Core.Tests.Journal.Rules;

public sealed class DeliveryTests
{
    private readonly InMemoryLedger _ledger = Shelves.Empty();

    [Fact]
    public void What_was_paid_for_all_lines_is_shared_by_their_value()
    {
        var posting = _ledger.Post(Delivery(
            "inv-1", shipping: 10, duty: 0, discount: 30, ("fen80", 2, 150), ("syrup", 1, 60), ("fen80", 1, 240)));
        Assert.Equal(
            "delivery inv-1, 580.00: 2 packs of fen80, 50 sheets for 290.00; 1 pack of syrup, 1000 ml for 58.00; "
            + "1 pack of fen80, 25 sheets for 232.00", posting.Summary);
        Assert.Equal(3, posting.Facts.OfType<LotReceived>().Count());
        Assert.Equal(
            ["fen80/1", "fen80/2", "fen80/3", "syrup/1"],
            _ledger.Holdings.Containers.Select(box => box.Code).Order(StringComparer.Ordinal));
        Assert.Equal(Money.Of(145), _ledger.Holdings.Container("fen80/1")!.Value);
        Assert.Equal(Money.Of(232), _ledger.Holdings.Container("fen80/3")!.Value);
    }

    [Fact]
    public void Another_currency_is_changed_once_and_nothing_of_it_is_lost()
    {
        _ledger.Post("delivery item=gloves price=11 currency=EUR");
        var delivery = Delivery("inv-2", 10, 0, 0, ("fen80", 1, 100), ("syrup", 1, 100), ("stop", 1, 100));
        var posting = _ledger.Post(delivery with { Currency = "USD", Rate = 0.919191m });
        Assert.Equal(Money.Of(310).At(0.919191m).Millionths,
            posting.Movements.Sum(movement => movement.Value.Millionths));
    }

    [Theory]
    [InlineData("EUR", "the price of fen80, 99.999, is finer than EUR is counted, which has 2 decimals")]
    [InlineData("JPY", "the price of fen80, 99.999, is finer than JPY is counted, which has no decimals")]
    [InlineData("KWD", null)]
    [InlineData("XQQ", null)]
    public void Nobody_is_billed_a_part_of_the_smallest_coin(string currency, string? refusal)
    {
        var decision = _ledger.Preview(Delivery("inv-3", 0, 0, 0, ("fen80", 1, 99.999m)) with { Currency = currency });
        Assert.Equal(refusal, (decision as Refused)?.Refusal.Sentence);
    }

    [Theory]
    [InlineData("delivery item=fen80 price=99.999 currency=EUR",
        "the price of fen80, 99.999, is finer than EUR is counted, which has 2 decimals")]
    [InlineData("delivery item=fen80 price=99 duty=0.5 currency=JPY",
        "the duty, 0.5, is finer than JPY is counted, which has no decimals")]
    public void Nor_for_a_single_delivery(string entry, string refusal) =>
        Assert.Equal(refusal, _ledger.Refuse(entry).Sentence);

    [Fact]
    public void A_delivery_is_taken_back_whole()
    {
        var before = _ledger.Held();
        _ledger.Post(Delivery("inv-4", 1, 2, 3, ("fen80", 2, 150), ("syrup", 1, 60)));
        _ledger.Post($"undo entry={_ledger.Last}");
        Assert.Equal(before, _ledger.Held());
    }

    [Fact]
    public void A_delivery_without_lines_or_with_more_discount_than_goods_is_refused()
    {
        Refuses("a delivery has from 1 to", Delivery("inv-5", 0, 0, 0));
        Refuses("the discount, 101.00, is more than the 100.00", Delivery("inv-5", 20, 0, 101, ("fen80", 1, 100)));
        Refuses("there is no item \"nothing\"", Delivery("inv-5", 0, 0, 0, ("nothing", 1, 100)));
        Refuses("the packs of fen80 must be more than 0", Delivery("inv-5", 0, 0, 0, ("fen80", -1, 100)));
    }

    /// <summary>
    /// Whatever is bought at whatever rate: the boxes on the shelf cost what was paid, changed into the ledger's
    /// currency once; and a line's share of the shipping is within a millionth of its quota, as the largest remainder
    /// is defined.
    /// </summary>
    [Fact]
    public void Nothing_is_lost_in_rounding() => Gen.Select(
        Gen.Select(Gen.Int[0, 3], Gen.Int[1, 40], Gen.Int[0, 99_999]).Array[1, 8],
        Gen.Int[0, 5000], Gen.Int[0, 5000], Gen.Int[1, 3_000_000])
        .Sample((lines, shipping, duty, rate) =>
        {
            var ledger = Shelves.Empty();
            ledger.Post("delivery item=gloves price=11 currency=EUR");
            var items = new[] { "fen80", "syrup", "stop", "gloves" };
            var delivery = Delivery(
                "inv", shipping * 0.01m, duty * 0.01m, 0,
                [.. lines.Select(line => (items[line.Item1], (decimal)line.Item2, line.Item3 * 0.01m))]);
            var posting = ledger.Post(delivery with { Currency = "USD", Rate = rate * 0.000001m, Anyway = true });
            var paid = lines.Sum(line => line.Item2 * line.Item3 * 0.01m) + (shipping + duty) * 0.01m;
            Assert.Equal(Money.Of(paid).At(rate * 0.000001m).Millionths,
                posting.Movements.Sum(movement => movement.Value.Millionths));
            var shared = new Core.Costing.SharedCost(
                [.. delivery.Lines.Select(line => (line.Price!.Value, line.Packs!.Value))],
                delivery.Discount, delivery.Shipping, delivery.Duty, 1);
            Assert.Equal(shipping * 0.01m, shared.Lines.Sum(line => line.Shipping.Amount));
            Assert.All(shared.Lines.Where(_ => shared.Value != Money.Zero), line =>
            {
                var quota = (decimal)shipping * 10_000 * line.Price.At(line.Packs).Millionths / shared.Value.Millionths;
                Assert.True(Math.Abs(line.Shipping.Millionths - quota) < 1);
            });
        }, iter: 300);

    private void Refuses(string beginning, Delivery delivery) => Assert.StartsWith(
        beginning, Assert.IsType<Refused>(_ledger.Preview(delivery)).Refusal.Sentence, StringComparison.Ordinal);

    private static Delivery Delivery(
        string name, decimal shipping, decimal duty, decimal discount,
        params (string Item, decimal Packs, decimal Price)[] lines) => new()
    {
        Key = Some.Key(), Date = Some.Today, Reference = name,
        Shipping = Money.Of(shipping), Duty = Money.Of(duty), Discount = Money.Of(discount),
        Lines = [.. lines.Select(line => new DeliveryLine { Item = line.Item, Packs = line.Packs,
            Price = Money.Of(line.Price) })],
    };
}
