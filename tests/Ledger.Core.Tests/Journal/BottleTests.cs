using CsCheck;

namespace Ledger.Core.Tests.Journal;

public sealed class BottleTests
{
    [Fact]
    public void Decanting_moves_all_of_a_bottle_and_starts_each_ones_clock()
    {
        var ledger = Shelves.Stocked();
        ledger.Post(Decant("syrup", 250, 4));
        var bottles = ledger.Holdings.ContainersOf("syrup").Where(bottle => !bottle.IsSealed).ToList();
        Assert.Equal(["syrup/3", "syrup/4", "syrup/5", "syrup/6"], bottles.Select(bottle => bottle.Code));
        Assert.All(bottles,
            bottle => Assert.Equal((Some.Today, 250_000, 10.5m),
                (bottle.OpenedOn, bottle.Held.Base, bottle.Value.Amount)));
        Assert.Null(ledger.Holdings.Container("syrup/1"));
        Assert.Equal(ledger.Balances(), ledger.Held());
    }

    [Fact]
    public void Quantity_and_cost_are_conserved_whatever_is_decanted() =>
        Gen.Select(Gen.Long[1, 1_000_000], Gen.Long[1, 1_000_000].Array[1, 6]).Sample((_, sizes) =>
        {
            var ledger = Shelves.Stocked();
            var before = Sums(ledger, "syrup");
            var decanting = new Decanting
            {
                Key = Some.Key(), Date = Some.Today, From = "syrup/1",
                Bottles = [.. sizes.Select(size => new FilledBottle(new(size, Unit.Millilitre)))],
            };
            if (ledger.Preview(decanting) is not Accepted)
                return;
            ledger.Post(decanting);
            Assert.Equal(before, Sums(ledger, "syrup"));
            ledger.Post($"undo entry={ledger.Last}");
            Assert.Equal(before, Sums(ledger, "syrup"));
        });

    [Fact]
    public void Cost_is_conserved_whatever_stock_is_mixed() =>
        Gen.Select(Gen.Long[1, 1_000_000_000], Gen.Long[1, 5_000_000], Gen.Int[1, 5]).Sample((price, volume, bottles) =>
        {
            var ledger = Powder(new Money(price));
            var each = volume / bottles + 1;
            var mixing = Mix(volume) with
            {
                Bottles = [.. Enumerable.Range(0, bottles).Select(_ => new FilledBottle(new(each, Unit.Millilitre)))],
            };
            if (ledger.Preview(mixing) is not Accepted)
                return;
            ledger.Post(mixing);
            Assert.Equal((0, 0), Sums(ledger, "powder"));
            Assert.Equal((volume, price), Sums(ledger, "stock"));
        });

    [Fact]
    public void A_stock_solution_lives_from_its_mixing_and_working_solutions_are_drawn_from_it()
    {
        var ledger = Powder(Money.Of(12));
        ledger.Post(Mix(1_000_000));
        var bottle = ledger.Holdings.Container("stock/1")!;
        Assert.True(bottle.Lot.IsMixed);
        Assert.Equal(
            (Some.Today.PlusDays(180), KeepingRule.SinceMixing),
            (bottle.GoodUntil(ledger.Holdings.Item("stock")!.Keeping)!.Date,
                bottle.GoodUntil(ledger.Holdings.Item("stock")!.Keeping)!.Rule));
        ledger.Post("bath bath=D1 item=stock working_ml=1000 dilution=1+1");
        Assert.Equal(6m, ledger.Holdings.Bath("D1")!.Value.Amount);
    }

    [Fact]
    public void Packs_are_mixed_whole_and_a_weighed_part_is_remarked_upon()
    {
        var ledger = Powder(Money.Of(12));
        Assert.Equal(RefusalKind.MoreThanHeld,
            Assert.IsType<Refused>(ledger.Preview(Mix(1_000_000) with { Packs = 2 })).Refusal.Kind);
        var part = Assert.IsType<Accepted>(ledger.Preview(Mix(500_000) with { Amount = Quantity.Of(50, Unit.Gram) }));
        Assert.Contains("mixed whole", string.Join(' ', part.Posting.Remarks), StringComparison.Ordinal);
    }

    [Fact]
    public void Dead_volume_is_held_but_neither_usable_nor_drawn()
    {
        var ledger = Shelves.Stocked();
        ledger.Post(Some.Definition(Some.Syrup with { DeadVolume = Quantity.Of(15, Unit.Millilitre) }));
        var shelf = new ShelfReading(ledger.Holdings.Item("syrup")!, ledger.Holdings.ContainersOf("syrup"), Some.Today);
        Assert.Equal((2_000_000, 1_970_000), (shelf.OnHand.Base, shelf.Usable.Base));
        Assert.Contains("cannot be drawn",
            ledger.Refuse("bath bath=D1 item=syrup working_ml=2000 dilution=1+0").Sentence, StringComparison.Ordinal);
        ledger.Post("bath bath=D1 item=syrup working_ml=1970 dilution=1+0");
        Assert.Equal([15_000L, 15_000], ledger.Holdings.ContainersOf("syrup").Select(bottle => bottle.Held.Base));
        Assert.Equal(ledger.Balances(), ledger.Held());
    }

    [Fact]
    public void A_changed_formula_leaves_the_life_of_older_bottles_alone()
    {
        var ledger = Shelves.Empty();
        ledger.Post(Some.Definition(Some.Syrup with { Formula = "1" }));
        ledger.Post("delivery item=syrup price=42 date=2026-01-10");
        ledger.Post(Some.Definition(Some.Syrup with { Formula = "2", Keeping = new(SealedDays: 30) }));
        ledger.Post("delivery item=syrup price=42 date=2026-01-10");
        var limits = ledger.Holdings.Item("syrup")!.Keeping;
        Assert.Equal(
            [Some.Earlier.PlusDays(730), Some.Earlier.PlusDays(30)],
            ledger.Holdings.ContainersOf("syrup").Select(bottle => bottle.GoodUntil(limits)!.Date));
    }

    [Fact]
    public void The_time_in_the_cold_moves_the_date_and_says_so()
    {
        var ledger = Shelves.Empty();
        ledger.Post("delivery item=fen80 price=162 expires=2026-02-01 storage=freezer date=2026-01-10");
        ledger.Post("setting setting=freezer-days value=365");
        var good = Assert.Single(ledger.Holdings.Containers).GoodUntil(KeepingLimits.None)!;
        Assert.Equal((new NodaTime.LocalDate(2026, 4, 6), 64),
            (good.Date, good.ColdDays)); // 10 January to 15 March, day for day
        Assert.Equal("expiry date 2026-02-01 and 64 days for the time in the cold", good.Reason);
    }

    [Fact]
    public void Syrup_is_measured_or_weighed()
    {
        var density = Density.Of(1.25m)!.Value;
        var syrup = Some.Syrup with { Density = density };
        Assert.Equal(Quantity.Of(25, Unit.Millilitre), syrup.Converted(Quantity.Of(31.25m, Unit.Gram)));
        Assert.Equal(Quantity.Of(31.25m, Unit.Gram), density.WeightOf(Quantity.Of(25, Unit.Millilitre)));
        Assert.Null(Some.Syrup.Converted(Quantity.Of(1, Unit.Gram)));
        Gen.Long[0, 1_000_000_000].Sample(volume =>
            Assert.InRange(density.VolumeOf(density.WeightOf(new(volume, Unit.Millilitre))).Base - volume, -1, 1));
    }

    private static Decanting Decant(string from, decimal millilitres, int count) => new()
    {
        Key = Some.Key(),
        Date = Some.Today,
        From = from,
        Bottles = [.. Enumerable.Range(0, count)
            .Select(_ => new FilledBottle(Quantity.Of(millilitres, Unit.Millilitre)))],
    };

    private static StockSolution Mix(long microlitres) =>
        new() { Key = Some.Key(), Date = Some.Today, Item = "stock", Volume = Volume.FromMicrolitres(microlitres) };

    private static InMemoryLedger Powder(Money price)
    {
        var ledger = Shelves.Empty();
        ledger.Post(Some.Definition(Some.Stop with { Code = "powder", Name = "Powder", Role = ItemRole.Developer,
            Pack = Quantity.Of(100, Unit.Gram) }));
        ledger.Post(Some.Definition(Some.Syrup with { Code = "stock", Name = "Stock", StockOf = "powder",
            Keeping = new(OpenedFullDays: 180) }));
        ledger.Post(new Delivery { Key = Some.Key(), Date = Some.Earlier,
            Lines = [new() { Item = "powder", Packs = 1, Price = price }] });
        return ledger;
    }

    private static (long Quantity, long Value) Sums(InMemoryLedger ledger, string item)
    {
        var bottles = ledger.Holdings.ContainersOf(item).ToList();
        return (bottles.Sum(bottle => bottle.Held.Base), bottles.Sum(bottle => bottle.Value.Millionths));
    }
}
