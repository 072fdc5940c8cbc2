namespace Ledger.App.Commands.Show;

/// <summary>A box or bottle in documents, the same on the shelf and beside an item.</summary>
internal static class ContainerShape
{
    public static Shape<ContainerReading> Of { get; } = new Shape<ContainerReading>()
        .Text("container", reading => reading.Container.Code)
        .Whole("lot", reading => reading.Container.Lot.Id.Value, "the delivery or preparation that it came from")
        .Text("batch", reading => reading.Container.Lot.Batch,
            "the maker's number: emulsion number of film, batch number of a bottle")
        .Text("storage", reading => reading.Container.Storage)
        .Date("opensFrom", reading => reading.Container.OpensFrom,
            "the day from which it has warmed up and may be opened")
        .Figure("exposureIndex", reading => reading.Container.Lot.ExposureIndex)
        .Date("receivedOn", reading => reading.Container.Lot.ReceivedOn)
        .Quantity("quantity", reading => reading.Container.Held)
        .Quantity("size", reading => reading.Container.Size)
        .Date("openedOn", reading => reading.Container.OpenedOn)
        .Date("expiresOn", reading => reading.Container.Lot.ExpiresOn, "the expiry date that the maker printed")
        .Date("goodUntil", reading => reading.GoodUntil?.Date, "the last day by all its rules")
        .Word("goodUntilRule", reading => reading.GoodUntil?.Rule.Name())
        .Whole("coldStorageDays", reading => reading.GoodUntil?.ColdDays ?? 0, "days that the cold added")
        .Date("mixedOn", reading => reading.Container.Lot.IsMixed ? reading.Container.Lot.ReceivedOn : null)
        .Date("halfEmptyOn", reading => reading.Container.HalfEmptyOn)
        .Word("formula", reading => reading.Container.Lot.Formula)
        .Flag("isExpired", reading => reading.IsPast)
        .Word("suspicion", reading => reading.Container.Suspicion?.Reason)
        .Date("suspectSince", reading => reading.Container.Suspicion?.Since)
        .Flag("isPriced", reading => reading.Container.Lot.IsPriced)
        .Money("unitCost", reading => reading.Container.Lot.IsPriced ? reading.Container.Lot.UnitCost : null)
        .Money("value", reading => reading.Container.Lot.IsPriced ? reading.Container.Value : null);
}
