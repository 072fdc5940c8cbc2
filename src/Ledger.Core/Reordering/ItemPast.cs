using Ledger.Core.Journal;
using Ledger.Core.Stock;

namespace Ledger.Core.Reordering;

/// <summary>What the journal remembers of one item.</summary>
/// <param name="Series">What was used of it.</param>
/// <param name="DeliveryDays">How long its deliveries took.</param>
/// <param name="Price">What it last cost; null when it was never bought.</param>
internal sealed record ItemPast(DemandSeries Series, IReadOnlyList<int> DeliveryDays, LastPrice? Price);

/// <summary>The same for every item.</summary>
internal sealed class PastOfItems
{
    private readonly Holdings _holdings;
    private readonly Dictionary<string, DemandSeries> _series;
    private readonly ILookup<string, int> _days;
    private readonly Dictionary<string, LastPrice> _prices;

    public PastOfItems(Holdings holdings, IDemandRecord record)
    {
        _holdings = holdings;
        _series = record.Demand(holdings.AsOf, holdings.Settings.DemandDays)
            .ToDictionary(series => series.Item, StringComparer.OrdinalIgnoreCase);
        _days = record.DeliveryTimes(holdings.AsOf).ToLookup(time => time.Item, time => time.Days,
            StringComparer.OrdinalIgnoreCase);
        _prices = record.LastPrices(holdings.AsOf).ToDictionary(price => price.Item, StringComparer.OrdinalIgnoreCase);
    }

    public ItemPast Of(Item item) => new(
        _series.GetValueOrDefault(item.Code) ?? new(item.Code, _holdings.Settings.DemandDays, _holdings.AsOf, []),
        [.. _days[item.Code]],
        _prices.GetValueOrDefault(item.Code));
}
