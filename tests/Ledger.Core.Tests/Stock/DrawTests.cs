using CsCheck;

namespace Ledger.Core.Tests.Stock;

public sealed class DrawTests
{
    /// <summary>
    /// Bottles in the order in which they stand; those of a row with a number are reached for in that order.
    /// </summary>
    private const string Order = """
        bottle | received   | lot | opened     | reached for
        1      | 2026-01-10 | 1   |            | 4
        2      | 2026-02-01 | 2   | 2026-02-03 | 2
        3      | 2026-01-05 | 3   |            | 3
        4      | 2026-01-10 | 1   | 2026-03-01 | 1
        5      | 2026-01-10 | 4   |            | 6
        6      | 2026-01-10 | 1   |            | 5
        """;

    [Fact]
    public void Open_before_sealed_then_first_in_first_out()
    {
        var bottles = Table.Read(Order).Select(row => (
            Bottle: Some.Bottle(
                99 + row.Count("bottle"), Some.Lot(row.Count("lot"), received: Dates.Parse(row["received"])),
                opened: Dates.Parse(row["opened"])),
            Reached: row.Count("reached for"))).ToList();
        Assert.Equal(
            bottles.OrderBy(bottle => bottle.Reached).Select(bottle => bottle.Bottle.Code),
            Draw.Reach(bottles.Select(bottle => bottle.Bottle)).Select(bottle => bottle.Code));
    }

    [Fact]
    public void A_draw_goes_on_in_the_next_bottle()
    {
        var draws = Draw.InOrder(
            [Some.Bottle(100, held: 64, value: 2.688m, opened: Some.Earlier), Some.Bottle(101)],
            Millilitres(100), out var missing);
        Assert.Equal([("syrup/1", 64m, 2.688m), ("syrup/2", 36m, 1.512m)],
            draws.Select(draw => (draw.From.Code, draw.Quantity.Value, draw.Cost.Amount)));
        Assert.True(missing.IsZero);
    }

    [Fact]
    public void What_could_not_be_found_is_missing()
    {
        Assert.Empty(Draw.InOrder([], Millilitres(5), out var all));
        Assert.Equal(Millilitres(5), all);
        Assert.Single(Draw.InOrder([Some.Bottle(held: 3)], Millilitres(5), out var missing));
        Assert.Equal(Millilitres(2), missing);
    }

    [Fact]
    public void Nothing_wanted_is_nothing_drawn() => Assert.Empty(Draw.InOrder([Some.Bottle()], Millilitres(0), out _));

    [Fact]
    public void What_is_drawn_and_what_is_missing_are_what_was_wanted() =>
        Gen.Select(Bottles, Gen.Long[0, 5_000_000]).Sample((bottles, wanted) =>
        {
            var draws = Draw.InOrder(bottles, new(wanted, Unit.Millilitre), out var missing);
            Assert.Equal(wanted, draws.Sum(draw => draw.Quantity.Base) + missing.Base);
            Assert.All(draws, draw => Assert.True(draw.Quantity.Base > 0 && draw.Quantity <= draw.From.Held));
            Assert.True(
                missing.IsZero || draws.Sum(draw => draw.Quantity.Base) == bottles.Sum(bottle => bottle.Held.Base));
        });

    [Fact]
    public void Only_the_last_bottle_is_left_with_anything() =>
        Gen.Select(Bottles, Gen.Long[0, 5_000_000]).Sample((bottles, wanted) =>
            Draw.InOrder(bottles, new(wanted, Unit.Millilitre), out _).SkipLast(1)
                .All(draw => draw.Quantity == draw.From.Held));

    [Fact]
    public void Drawing_a_bottle_empty_costs_all_it_cost() =>
        Gen.Select(Gen.Long[1, 1_000_000], Gen.Long[1, 1_000], Gen.Long[1, 1_000]).Sample((value, first, rest) =>
        {
            var bottle = Some.Bottle() with { Held = new(first + rest, Unit.Millilitre), Value = new(value) };
            var less = bottle.Less(new(first, Unit.Millilitre), bottle.CostOf(new(first, Unit.Millilitre)));
            Assert.Equal(new(rest, Unit.Millilitre), less.Held);
            Assert.Equal(less.Value, less.CostOf(less.Held));
        });

    private static Gen<Container[]> Bottles =>
        Gen.Select(Gen.Long[0, 1_000_000], Gen.Long[0, 50_000_000], Gen.Bool).Array[0, 6].Select(
            bottles =>
                bottles.Select((bottle, i) => Some.Bottle(100 + i, opened: bottle.Item3 ? Some.Earlier : null) with
                {
                    Held = new(bottle.Item1, Unit.Millilitre),
                    Value = new(bottle.Item2),
                }).ToArray());

    private static Quantity Millilitres(decimal value) => Quantity.Of(value, Unit.Millilitre);
}
