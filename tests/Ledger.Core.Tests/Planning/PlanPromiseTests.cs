using CsCheck;

namespace Ledger.Core.Tests.Planning;

/// <summary>What a plan promises is what posting it moves.</summary>
public sealed class PlanPromiseTests
{
    private static readonly Gen<RequestedSheets> Line = Gen.Select(
        Gen.OneOf("fen80", "reed400"), Gen.OneOf("N", "N+1", "N-1"), Gen.Int[1, 7], (film, group, count) =>
            new RequestedSheets { Film = film, Group = group, Count = count });

    [Fact]
    public void Posting_a_plan_moves_exactly_what_it_promised() => Gen.Select(
        Line.Array[1, 4], Gen.OneOf("1", "3", "4 4x5=6"), Gen.OneOf("exact", "0.5", "5", "7"))
            .Sample((lines, limit, graduate) =>
        {
            var ledger = Mixed();
            ledger.Post($"setting setting=batch-sheets value={limit.Replace(' ', '_')}");
            ledger.Post($"setting setting=graduate value={graduate}");
            var plan = Assert.IsType<Planned>(SessionPlanning.Of(new() { Process = "pm", Sheets = lines },
                ledger.Holdings)).Plan;
            Assert.True(plan.CanRun, string.Join("; ", plan.Shortages.Select(shortage => shortage.Cure)));

            var posting = ledger.Post(plan.ToLog(Some.Key(), "S1", Some.Today));
            Assert.Equal(
                plan.Uses.SelectMany(use => use.Draws)
                    .GroupBy(draw => draw.From.Place)
                    .Select(draws => (draws.Key, draws.Sum(draw => draw.Quantity.Base),
                        draws.Sum(draw => draw.Cost.Millionths)))
                    .Order(
                        Comparer<(PlaceId Place, long, long)>.Create((a, b) => a.Place.Value.CompareTo(b.Place.Value))),
                posting.Movements
                    .GroupBy(movement => movement.From)
                    .Select(moves => (moves.Key, moves.Sum(move => move.Quantity),
                        moves.Sum(move => move.Value.Millionths)))
                    .Order(
                        Comparer<(PlaceId Place, long, long)>.Create((a,
                            b) => a.Place.Value.CompareTo(b.Place.Value))));
            Assert.Equal(plan.Baths[0].After, ledger.Holdings.Bath("F1")!.WorkedWeighted);
            Assert.Equal(plan.Cost.Total - plan.Cost.Baths,
                new(posting.Movements.Sum(movement => movement.Value.Millionths)));
        }, iter: 200);

    [Fact]
    public void What_expires_first_is_drawn_first_and_what_has_expired_is_left_alone()
    {
        var ledger = Mixed();
        var plan = Assert.IsType<Planned>(SessionPlanning.Of(
            new() { Process = "pm", Sheets = [new() { Film = "fen80", Count = 4, Group = "N" }] },
            ledger.Holdings)).Plan;
        Assert.Equal("fen80/4", plan.Uses.Single(use => use.Item.Code == "fen80").Draws[0].From.Code);
        Assert.Equal(25, plan.Uses.Single(use => use.Item.Code == "fen80").Expired.Base);
        ledger.Post(plan.ToLog(Some.Key(), "S1", Some.Today));
        Assert.Equal([25, 25, 25, 21],
            ledger.Holdings.Containers.Where(box => box.Lot.Item == "fen80").Select(box => box.Held.Base));
    }

    /// <summary>A shelf on which the order of buying is not the order of expiring.</summary>
    private static InMemoryLedger Mixed()
    {
        var ledger = Shelves.WithBath();
        ledger.Post("delivery item=fen80 price=150 expires=2026-03-01 date=2026-02-01");
        ledger.Post("delivery item=fen80 price=171.13 expires=2026-06-01 date=2026-02-02");
        ledger.Post("delivery item=reed400 packs=1 price=79.99 expires=2026-04-01 date=2026-02-02");
        ledger.Post("delivery item=syrup packs=1 price=44.07 expires=2026-05-01 date=2026-02-03");
        ledger.Post("delivery item=stop packs=1 price=9.50 expires=2026-05-01 date=2026-02-03");
        return ledger;
    }
}
