namespace Ledger.Storage.Reading;

/// <summary>
/// Reads what was used of each item, period by period, how long deliveries took, and what was last paid.
/// </summary>
internal sealed class DemandReader(Snapshot snapshot)
{
    /// <summary>No more than so many periods: ten years of weeks.</summary>
    private const int MostPeriods = 522;

    public IReadOnlyList<DemandSeries> Demand(LocalDate asOf, int periodDays)
    {
        var oldest = asOf.PlusDays(1 - MostPeriods * periodDays);
        var pasts = FirstDays(asOf).ToDictionary(first => first.ItemId,
            first => (first.Item, Uses: Periods(first, asOf, oldest, periodDays)));
        foreach (var use in Uses(asOf, oldest, periodDays))
            if (pasts.TryGetValue(use.ItemId, out var past) && use.Ago < past.Uses.Length)
                past.Uses[^((int)use.Ago + 1)] += use.Quantity;
        return [.. pasts.Values.Select(past => new DemandSeries(past.Item, periodDays, asOf, past.Uses))];
    }

    public IReadOnlyList<DeliveryTime> DeliveryTimes(LocalDate asOf) =>
    [
        .. snapshot.Connection.Query<DeliveryRow>(
            """
            SELECT i.code AS Item, placed.date AS OrderedOn, came.date AS CameOn
            FROM order_delivery d CROSS JOIN standing_entry came ON came.id = d.entry_id
                CROSS JOIN standing_entry placed ON placed.id = d.order_id
                CROSS JOIN item i ON i.id = d.item_id
            WHERE came.date <= @asOf ORDER BY d.entry_id
            """,
            new { asOf = Dates.Text(asOf) })
        .Select(row =>
            new DeliveryTime(row.Item, Days.Read(row.OrderedOn),
                Period.DaysBetween(Days.Read(row.OrderedOn), Days.Read(row.CameOn)))),
    ];

    public IReadOnlyList<LastPrice> LastPrices(LocalDate asOf) =>
    [
        .. snapshot.Connection.Query<PriceRow>(
            """
            SELECT Item, Date, Price, Rate
            FROM (
                SELECT i.code AS Item, e.date AS Date, l.price AS Price, l.rate AS Rate,
                    row_number() OVER (PARTITION BY l.item_id ORDER BY
                    e.date DESC, e.ord DESC) AS Place
                FROM lot l CROSS JOIN standing_entry e ON e.id = l.entry_id CROSS JOIN item i ON i.id = l.item_id
                    WHERE e.date <= @asOf AND l.price > 0)
            WHERE Place = 1
            """,
            new { asOf = Dates.Text(asOf) })
        .Select(row => new LastPrice(
            row.Item, Days.Read(row.Date), new Money(row.Price)
                .At(row.Rate is null ? 1 : decimal.Parse(row.Rate, CultureInfo.InvariantCulture)))),
    ];

    private IEnumerable<FirstRow> FirstDays(LocalDate asOf) => snapshot.Connection.Query<FirstRow>(
        """
        SELECT i.id AS ItemId, i.code AS Item, min(e.date) AS Date
        FROM lot l CROSS JOIN standing_entry e ON e.id = l.entry_id CROSS JOIN item i ON i.id = l.item_id
        WHERE e.date <= @asOf GROUP BY i.id
        """,
        new { asOf = Dates.Text(asOf) });

    /// <summary>What was used, by the periods that end with the day.</summary>
    private IEnumerable<UseRow> Uses(LocalDate asOf, LocalDate oldest, int periodDays) =>
        snapshot.Connection.Query<UseRow>(
            """
            SELECT item_id AS ItemId, CAST(julianday(@asOf) - julianday(date) AS INTEGER) / @periodDays AS Ago,
                sum(quantity) AS Quantity
            FROM use_day WHERE date BETWEEN @oldest AND @asOf GROUP BY 1, 2
            """,
            new { asOf = Dates.Text(asOf), oldest = Dates.Text(oldest), periodDays });

    private static long[] Periods(FirstRow first, LocalDate asOf, LocalDate oldest, int periodDays)
    {
        var from = Days.Read(first.Date) is var day && day > oldest ? day : oldest;
        return new long[Period.DaysBetween(from, asOf) / periodDays + 1];
    }

    internal sealed record DeliveryRow(string Item, string OrderedOn, string CameOn);

    internal sealed record PriceRow(string Item, string Date, long Price, string? Rate);

    internal sealed record FirstRow(long ItemId, string Item, string Date);

    internal sealed record UseRow(long ItemId, long Ago, long Quantity);
}
