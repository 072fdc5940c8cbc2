using Ledger.Storage.Reading;

namespace Ledger.Storage;

/// <content>What the journal remembers of use and deliveries.</content>
public sealed partial class LedgerFile : IDemandRecord
{
    /// <inheritdoc/>
    public IReadOnlyList<DemandSeries> Demand(LocalDate asOf, int periodDays) =>
        Read(snapshot => new DemandReader(snapshot).Demand(asOf, periodDays));

    /// <inheritdoc/>
    public IReadOnlyList<DeliveryTime> DeliveryTimes(LocalDate asOf) =>
        Read(snapshot => new DemandReader(snapshot).DeliveryTimes(asOf));

    /// <inheritdoc/>
    public IReadOnlyList<LastPrice> LastPrices(LocalDate asOf) =>
        Read(snapshot => new DemandReader(snapshot).LastPrices(asOf));
}
