using CsCheck;
using static Ledger.Storage.Tests.Support.Holders;

namespace Ledger.Storage.Tests.Film;

/// <summary>
/// Any sequence of loads, exposures, unloads, sessions, counts and undos keeps every sheet in one place, and the total.
/// </summary>
public sealed class PlacesOfSheetsTests
{
    private const long Received = 50;

    private static readonly string[] Sides = ["E01-1", "E01-2", "E02-1", "E02-2"];

    private static readonly string[] Groups = ["N", "N-1"];

    private static readonly Gen<(int Kind, int Which, int Other)[]> Steps =
        Gen.Select(Gen.Int[0, 10], Gen.Int[0, 3], Gen.Int[0, 30]).Array[1, 40];

    [Fact]
    public void Every_sheet_is_in_one_place_after_every_entry() => Steps.Sample(Run, iter: 40, threads: 1);

    private static void Run((int Kind, int Which, int Other)[] steps)
    {
        using var file = new TemporaryLedger();
        Some.Stock(file);
        file.Accept(Holder("E01"));
        file.Accept(Holder("E02"));
        var first = file.Ledger.Check(null, default).Entries;
        var accepted = 0;
        for (var i = 0; i < steps.Length; i++)
        {
            accepted += file.Ledger.Post(Entry(steps[i], i, first)) is Posted ? 1 : 0;
            var places = file.Ledger.PlacesOf("pan", file.Ledger.Today);
            Assert.Equal(0, places.Sum(place => place.Held.Base));
            Assert.Equal(-Received, places.Single(place => place.Place == "supplier").Held.Base);
            var now = file.Ledger.HoldingsOn(file.Ledger.Today);
            Assert.All(now.Film.Holders.SelectMany(holder => holder.Sides),
                side => Assert.InRange(now.Film.At(side.Place).Count(), 0, 1));
            Assert.Equal(
                places.Where(place => place.Kind is "holder side" or "exposed box").Sum(place => place.Held.Base),
                now.Film.Sheets.Count());
            Assert.Equal(now.Film.Sheets.Count(), now.Film.Sheets.Select(sheet => sheet.Id).Distinct().Count());
        }

        Assert.Empty(file.Ledger.Check(null, default).Problems);
        Assert.True(new CostReading(file.Ledger.Costs(Some.Day(1, 1), Some.Day(12, 31))).Reconciles);
        Assert.Equal(first + accepted, file.Ledger.Check(null, default).Entries);
    }

    private static Entry Entry((int Kind, int Which, int Other) step, int index, long first)
    {
        var (date, side, group) = (Some.Day(6, 1), Sides[step.Which], Groups[step.Other % 2]);
        return step.Kind switch
        {
            0 or 1 => Load(date, side),
            2 => Expose(date, group, side) with { Anyway = step.Other % 3 == 0 },
            3 => Unload(date, side),
            4 => Unload(date, $"pan {group}") with { Group = Groups[step.Other / 2 % 2] },
            5 => Develop(date, $"S{index}", From(step.Other % 2 == 0 ? side : $"pan {group}",
                1 + step.Other % 3, step.Which == 0 ? Fate.Reject : Fate.Negative)) with
            {
                Anyway = step.Other > 15,
            },
            6 => new Discard { Key = Some.Key(), Date = date, What = side, Reason = "fogged" },
            7 => new StockCount { Key = Some.Key(), Date = date, What = step.Which % 2 == 0 ? side : $"pan {group}",
                Found = new(step.Other % 2, Unit.Sheet), Reason = "lost" },
            8 => new KeeperNaming { Key = Some.Key(), Date = date, Negative = $"#{step.Other}" },
            9 => new SideService { Key = Some.Key(), Date = date, Sides = [side], IsInService = step.Other % 2 == 0,
                Reason = "leaks" },
            _ => new Undo { Key = Some.Key(), Date = date, Number = first + 1 + step.Other, Reason = "mistake" },
        };
    }
}
