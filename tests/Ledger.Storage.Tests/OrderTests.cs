namespace Ledger.Storage.Tests;

public sealed class OrderTests : IDisposable
{
    private readonly TemporaryLedger _file = new();

    public OrderTests() => Some.Stock(_file);

    public void Dispose() => _file.Dispose();

    [Fact]
    public void What_was_written_of_an_order_is_read_back_whole()
    {
        _file.Accept(Order("spring", ("pan", 2, 186.50m), ("syrup", 1, 42)) with { Supplier = "mail-order shop",
            IsPrepaid = true });
        _file.Accept(new OrderChange { Key = Some.Key(), Date = Some.Day(4, 2), Order = "spring",
            Item = "pan", ExpectedOn = Some.Day(5, 20), IsBackOrdered = true });
        var delivery = Some.Delivery("pan", 1, 186.50m, month: 5, order: "SPRING");
        _file.Accept(delivery);

        var posted = OrderNow("spring")!;
        _file.Reopen();
        var read = OrderNow("spring")!;
        Assert.Equal(posted.Lines, read.Lines);
        Assert.Equal(posted with { Lines = [] }, read with { Lines = [] });
        Assert.Equal(("spring", Some.Day(4, 1), "mail-order shop", true),
            (read.Code, read.PlacedOn, read.Supplier, read.IsPrepaid));
        Assert.Equal(
            new OrderLine("pan", 2, new(50, Unit.Sheet), Money.Of(186.50m), Some.Day(5, 20),
                true, new(25, Unit.Sheet), false), read.LineOf("pan"));
        Assert.Equal(
            new OrderLine("syrup", 1, new(1_000_000, Unit.Millilitre), Money.Of(42), Some.Day(4, 15),
                false, new(0, Unit.Millilitre), false),
            read.LineOf("syrup"));
    }

    [Fact]
    public void Other_packs_and_another_price_are_read_back_and_an_undo_takes_back_them()
    {
        _file.Accept(Order("spring", ("pan", 2, 186)));
        var changed = _file.Accept(new OrderChange { Key = Some.Key(), Date = Some.Day(4, 2),
            Order = "spring", Packs = 3, Price = Money.Of(191.50m) });
        _file.Reopen();
        Assert.Equal((3, new(75, Unit.Sheet), Money.Of(191.50m)), Ordered());
        Assert.Equal((2, new(50, Unit.Sheet), Money.Of(186)),
            Ordered(_file.Ledger.HoldingsOn(Some.Day(4, 1)).Orders.Order("spring")));
        _file.Accept(new OrderChange { Key = Some.Key(), Date = Some.Day(4, 3), Order = "spring",
            ExpectedOn = Some.Day(9, 1) });
        _file.Reopen();
        Assert.Equal((3, new(75, Unit.Sheet), Money.Of(191.50m)), Ordered());
        Reverse(changed.Number);
        Assert.Equal((2, new(50, Unit.Sheet), Money.Of(186)), Ordered());
        Assert.Empty(_file.Ledger.Check(null, default).Problems);

        (long, Quantity, Money) Ordered(Order? order = null) =>
            (order ?? OrderNow("spring")!).Lines[0] is var line ? (line.Packs, line.Ordered, line.Price) : default;
    }

    [Fact]
    public void An_earlier_day_shows_the_order_as_it_was_then()
    {
        _file.Accept(Order("spring", ("pan", 2, 186)));
        _file.Accept(new OrderChange { Key = Some.Key(), Date = Some.Day(4, 20), Order = "spring",
            ExpectedOn = Some.Day(6, 1) });
        _file.Accept(Some.Delivery("pan", 2, 186, month: 5, order: "spring"));
        Assert.Empty(_file.Ledger.HoldingsOn(Some.Day(3, 31)).Orders.Open);
        Assert.Equal(Some.Day(4, 15),
            _file.Ledger.HoldingsOn(Some.Day(4, 19)).Orders.Order("spring")!.Lines[0].ExpectedOn);
        Assert.Equal(Some.Day(6, 1),
            _file.Ledger.HoldingsOn(Some.Day(4, 20)).Orders.Order("spring")!.Lines[0].ExpectedOn);
        Assert.Empty(_file.Ledger.HoldingsOn(Some.Day(5, 2)).Orders.Open);
    }

    [Fact]
    public void Undos_take_back_changes_cancellations_and_deliveries()
    {
        _file.Accept(Order("spring", ("pan", 2, 186)));
        var changed = _file.Accept(new OrderChange { Key = Some.Key(), Date = Some.Day(4, 2),
            Order = "spring", ExpectedOn = Some.Day(9, 1) });
        var delivered = _file.Accept(Some.Delivery("pan", 1, 186, month: 5, order: "spring"));
        var cancelled = _file.Accept(new OrderCancellation { Key = Some.Key(), Date = Some.Day(5, 3),
            Order = "spring", Reason = "too late" });
        Assert.Null(OrderNow("spring"));
        Reverse(cancelled.Number);
        Assert.Equal(25, OrderNow("spring")!.Lines[0].Outstanding.Base);
        Reverse(delivered.Number);
        Assert.Equal(50, OrderNow("spring")!.Lines[0].Outstanding.Base);
        Reverse(changed.Number);
        Assert.Equal(Some.Day(4, 15), OrderNow("spring")!.Lines[0].ExpectedOn);
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }

    [Fact]
    public void An_order_that_was_delivered_cannot_be_reversed_and_its_name_is_not_free()
    {
        var placed = _file.Accept(Order("spring", ("pan", 1, 186)));
        _file.Accept(Some.Delivery("pan", 1, 186, month: 5, order: "spring"));
        Assert.Equal(RefusalKind.DependedOn, _file.Refuse(Undo(placed.Number)).Kind);
        Assert.Equal(RefusalKind.AlreadyThere, _file.Refuse(Order("Spring", ("pan", 1, 186))).Kind);
    }

    [Fact]
    public void Price_rises_and_order_terms_are_read_back_and_the_last_terms_count()
    {
        _file.Accept(new PriceRiseNotice { Key = Some.Key(), Date = Some.Day(4, 1), Item = "PAN",
            From = Some.Day(6, 1), Percent = 6.5m });
        var first = new OrderTerms("pan", 90, new AnnualDate(10, 1), new AnnualDate(10, 31), Money.Of(14.50m), 125);
        _file.Accept(new OrderTermsSetting { Key = Some.Key(), Date = Some.Day(4, 1), Terms = first });
        _file.Reopen();
        Assert.Equal(new PriceRise("pan", Some.Day(6, 1), 65),
            Assert.Single(_file.Ledger.HoldingsOn(Some.Day(5, 31)).Orders.PriceRises));
        Assert.Empty(_file.Ledger.HoldingsOn(Some.Day(6, 1)).Orders.PriceRises);
        Assert.Equal(first, Now.Orders.Terms("pan"));
        _file.Accept(new OrderTermsSetting { Key = Some.Key(), Date = Some.Day(4, 2),
            Terms = OrderTerms.None("pan") with { CoverDays = 30 } });
        _file.Reopen();
        Assert.Equal(OrderTerms.None("pan") with { CoverDays = 30 }, Now.Orders.Terms("pan"));
    }

    private Holdings Now => _file.Ledger.HoldingsOn(_file.Ledger.Today);

    private Order? OrderNow(string code) => Now.Orders.Order(code);

    private void Reverse(long entry) => _file.Accept(Undo(entry));

    private static Undo Undo(long entry) =>
        new() { Key = Some.Key(), Date = Some.Day(6, 1), Number = entry, Reason = "mistaken" };

    private static OrderPlacement Order(string order, params (string Item, int Packs, decimal Price)[] lines) => new()
    {
        Key = Some.Key(), Date = Some.Day(4, 1), Order = order,
        Lines = [.. lines.Select(line => new OrderedPacks { Item = line.Item, Packs = line.Packs,
            Price = Money.Of(line.Price), ExpectedOn = Some.Day(4, 15) })],
    };
}
