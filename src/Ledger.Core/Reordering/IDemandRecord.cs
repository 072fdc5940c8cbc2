namespace Ledger.Core.Reordering;

/// <summary>What the journal remembers of use and deliveries, as the readings of this folder take it.</summary>
public interface IDemandRecord
{
    /// <summary>
    /// What was used of each item that ever came, period by period up to a day. Film counts as used when it is
    /// developed as a negative, a keeper or a reject; sheets for tests and practice, which nobody repeats by rule, do
    /// not count. Chemistry and supplies count when a session or a bath takes them. What was discarded, found missing
    /// by a count, or taken back, does not count.
    /// </summary>
    /// <param name="asOf">The last day of the last period.</param>
    /// <param name="periodDays">The length of a period.</param>
    IReadOnlyList<DemandSeries> Demand(LocalDate asOf, int periodDays);

    /// <summary>How long each delivery of an order line took up to a day.</summary>
    IReadOnlyList<DeliveryTime> DeliveryTimes(LocalDate asOf);

    /// <summary>What the last delivery of each item up to a day cost.</summary>
    IReadOnlyList<LastPrice> LastPrices(LocalDate asOf);
}

/// <summary>The days from an order to one of its deliveries.</summary>
/// <param name="Item">The item's code.</param>
/// <param name="OrderedOn">The day of the order.</param>
/// <param name="Days">The days it took.</param>
public sealed record DeliveryTime(string Item, LocalDate OrderedOn, int Days);

/// <summary>
/// What a pack cost when the item was last bought, before shipping and duty, in the ledger's currency.
/// </summary>
/// <param name="Item">The item's code.</param>
/// <param name="On">The day it came.</param>
/// <param name="Pack">The price of a pack.</param>
public sealed record LastPrice(string Item, LocalDate On, Measures.Money Pack);
