namespace Ledger.App.Commands.Show;

/// <summary>A bath in documents, the same among all baths and alone.</summary>
internal static class BathShape
{
    private static readonly Shape<RoomForFilm> _room = new Shape<RoomForFilm>()
        .Text("format", room => room.Format.Code)
        .Figure("fixerFactor", room => room.FactorThousandths / 1000m)
        .Texts("films", room => room.Films)
        .Whole("sheets", room => room.Sheets);

    public static Shape<BathReading> Of { get; } = new Shape<BathReading>()
        .Text("bath", reading => reading.Bath.Code)
        .Text("item", reading => reading.Bath.Item)
        .Text("role", reading => reading.Bath.Role.Name())
        .Text("material", reading => reading.Bath.Material.Name())
        .Volume("workingVolume", reading => reading.Bath.WorkingVolume)
        .Text("dilution", reading => reading.Bath.Dilution.Text)
        .Date("mixedOn", reading => reading.Bath.MixedOn)
        .Area("areaSqIn", reading => reading.Bath.Worked, "the area that went through it")
        .Area("weightedAreaSqIn", reading => reading.Bath.WorkedWeighted, "that area by each film's fixer factor")
        .Figure("throughputSqInPerLitre", reading => reading.ThroughputSquareInchesPerLitre)
        .Area("capacitySqInPerLitre", reading => reading.Bath.Capacity?.PerLitre)
        .Word("capacityBasis", reading => reading.Bath.Capacity?.Basis)
        .Area("totalCapacitySqIn", reading => reading.Bath.TotalCapacity)
        .Figure("usedPercent", reading => reading.UsedPercent)
        .Area("remainingSqIn", reading => reading.Remaining)
        .Counts("remainingSheets", (reading, view) => RoomForFilm.Heaviest(RoomForFilm.Of(reading, view.Holdings))
            .Select(room => KeyValuePair.Create(room.Format.Code, room.Sheets)),
                "whole sheets of each format, of the film that asks for most")
        .Table("remainingByFilm", (reading, view) => RoomForFilm.Of(reading, view.Holdings), _room)
        .Word("indicator", reading => reading.Bath.Indicator)
        .Whole("ageDays", reading => reading.AgeDays)
        .Date("goodUntil", reading => reading.GoodUntil?.Date)
        .Word("goodUntilRule", reading => reading.GoodUntil?.Rule.Name())
        .Word("endsBy", reading => reading.EndedBy?.Name())
        .Text("state", reading => reading.State.Name(), "in use, exhausted, expired or discarded")
        .Word("suspicion", reading => reading.Bath.Suspicion?.Reason)
        .Date("suspectSince", reading => reading.Bath.Suspicion?.Since)
        .Word("pairedWith", reading => reading.Bath.PairedWith)
        .Flag("isSecond", (reading, view) => view.Holdings.IsSecond(reading.Bath))
        .Whole("rotations", reading => reading.Bath.Rotations)
        .Money("value", reading => reading.Bath.Value)
        .With((reading, _) => reading, BathStoryShape.Of);
}
