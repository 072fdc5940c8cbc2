using System.Globalization;
using Dapper;
using Ledger.Core.Measures;
using Ledger.Core.Reordering;
using Microsoft.Data.Sqlite;
using NodaTime;

namespace Ledger.Storage.Reading;

/// <summary>Reads what was used of each item, period by period, how long deliveries took, and what was last paid.</summary>
internal sealed class DemandReader(SqliteConnection connection)
{
    /// <summary>No more than so many periods: ten years of weeks.</summary>
    private const int MostPeriods = 522;

    public IReadOnlyList<DemandSeries> Demand(LocalDate asOf, int periodDays)
    {
        var oldest = asOf.PlusDays(1 - MostPeriods * periodDays);
        var uses = Uses(asOf, oldest, periodDays).ToLookup(row => row.Item);
        return [.. FirstDays(asOf).Select(first => ToSeries(first, asOf, oldest, periodDays, uses[first.Item]))];
    }

    public IReadOnlyList<DeliveryTime> DeliveryTimes(LocalDate asOf) =>
    [
        .. connection.Query<DeliveryRow>(
            """
            SELECT i.code AS Item, placed.date AS OrderedOn, came.date AS CameOn
            FROM order_delivery d JOIN standing_entry came ON came.id = d.entry_id JOIN standing_entry placed ON placed.id = d.order_id
            JOIN item i ON i.id = d.item_id
            WHERE came.date <= @asOf ORDER BY d.entry_id
            """,
            new { asOf = Dates.Text(asOf) })
        .Select(row =>
            new DeliveryTime(row.Item, Days.Read(row.OrderedOn), Period.DaysBetween(Days.Read(row.OrderedOn), Days.Read(row.CameOn)))),
    ];

    public IReadOnlyList<LastPrice> LastPrices(LocalDate asOf) =>
    [
        .. connection.Query<PriceRow>(
            """
            SELECT Item, Date, Price, Rate
            FROM (
                SELECT i.code AS Item, e.date AS Date, l.price AS Price, l.rate AS Rate, row_number() OVER (PARTITION BY l.item_id ORDER BY
                    e.date DESC, e.id DESC) AS Place
                FROM lot l JOIN standing_entry e ON e.id = l.entry_id JOIN item i ON i.id = l.item_id WHERE e.date <= @asOf AND l.price > 0)
            WHERE Place = 1
            """,
            new { asOf = Dates.Text(asOf) })
        .Select(row => new LastPrice(
            row.Item, Days.Read(row.Date), new Money(row.Price)
                .At(row.Rate is null ? 1 : decimal.Parse(row.Rate, CultureInfo.InvariantCulture)))),
    ];

    private IEnumerable<FirstRow> FirstDays(LocalDate asOf) => connection.Query<FirstRow>(
        """
        SELECT i.code AS Item, min(e.date) AS Date
        FROM lot l JOIN standing_entry e ON e.id = l.entry_id JOIN item i ON i.id = l.item_id WHERE e.date <= @asOf GROUP BY i.id
        """,
        new { asOf = Dates.Text(asOf) });

    /// <summary>
    /// Film by the sheets that became negatives or rejects; everything else by what went from a container down the drain, into a bath,
    /// into a stock solution or, as paper, into prints.
    /// A bath that is poured out was counted when it was mixed.
    /// </summary>
    private IEnumerable<UseRow> Uses(LocalDate asOf, LocalDate oldest, int periodDays) => connection.Query<UseRow>(
        """
        WITH standing AS MATERIALIZED (
            SELECT e.id, CAST(julianday(@asOf) - julianday(e.date) AS INTEGER) / @periodDays AS ago
            FROM entry e WHERE e.date BETWEEN @oldest AND @asOf AND e.reverses IS NULL AND NOT EXISTS (SELECT 1 FROM entry c WHERE
                c.reverses = e.id)),
        used AS (
            SELECT l.item_id, e.ago, s.sheets AS quantity
            FROM standing e CROSS JOIN session_sheets s ON s.entry_id = e.id JOIN lot l ON l.id = s.lot_id
            WHERE s.fate IN ('negative', 'keeper', 'reject')
            UNION ALL
            SELECT l.item_id, e.ago, m.quantity
            FROM standing e CROSS JOIN movement m ON m.entry_id = e.id JOIN lot l ON l.id = m.lot_id
            WHERE m.to_place IN (4, 7, 8) AND EXISTS (SELECT 1 FROM container f WHERE f.place_id = m.from_place)
            UNION ALL
            SELECT l.item_id, e.ago, m.quantity
            FROM standing e CROSS JOIN movement m ON m.entry_id = e.id JOIN lot l ON l.id = m.lot_id
            JOIN bath b ON b.place_id = m.to_place WHERE EXISTS (SELECT 1 FROM container f WHERE f.place_id = m.from_place))
        SELECT i.code AS Item, u.ago AS Ago, sum(u.quantity) AS Quantity
        FROM used u JOIN item i ON i.id = u.item_id GROUP BY u.item_id, u.ago
        """,
        new { asOf = Dates.Text(asOf), oldest = Dates.Text(oldest), periodDays });

    private static DemandSeries ToSeries(FirstRow first, LocalDate asOf, LocalDate oldest, int periodDays, IEnumerable<UseRow> uses)
    {
        var from = Days.Read(first.Date) is var day && day > oldest ? day : oldest;
        var periods = new long[Period.DaysBetween(from, asOf) / periodDays + 1];
        foreach (var use in uses.Where(use => use.Ago < periods.Length))
            periods[^((int)use.Ago + 1)] = use.Quantity;
        return new(first.Item, periodDays, asOf, periods);
    }

    internal sealed record DeliveryRow(string Item, string OrderedOn, string CameOn);

    internal sealed record PriceRow(string Item, string Date, long Price, string? Rate);

    internal sealed record FirstRow(string Item, string Date);

    internal sealed record UseRow(string Item, long Ago, long Quantity);
}
