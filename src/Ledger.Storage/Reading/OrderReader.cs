using Dapper;
using Ledger.Core.Journal;
using Ledger.Core.Measures;
using Ledger.Core.Stock;
using Microsoft.Data.Sqlite;
using NodaTime;

namespace Ledger.Storage.Reading;

/// <summary>Reads what is on order on a day, the announced price rises and the order terms.</summary>
internal sealed class OrderReader(SqliteConnection connection)
{
    public void ReadInto(Holdings holdings)
    {
        var asOf = Dates.Text(holdings.AsOf);
        foreach (var order in Lines(asOf).GroupBy(row => row.OrderId))
            holdings.Orders.Put(ToOrder([.. order], holdings));
        foreach (var rise in PriceRises(asOf))
            holdings.Orders.Put(rise);
        foreach (var terms in Terms(asOf))
            holdings.Orders.Put(terms);
    }

    /// <summary>The lines of every order; the last word about each counts. A closed order falls out when it is put into the book.</summary>
    private IEnumerable<LineRow> Lines(string asOf) => connection.Query<LineRow>(
        """
        SELECT o.entry_id AS OrderId, o.code AS Code, e.date AS PlacedOn, o.supplier AS Supplier, o.prepaid AS Prepaid, i.code AS Item,
            coalesce((SELECT c.packs FROM order_line_change c CROSS JOIN standing_entry s ON s.id = c.entry_id
                WHERE c.order_id = l.order_id AND c.item_id = l.item_id AND s.date <= @asOf AND c.packs IS NOT NULL
                ORDER BY c.entry_id DESC LIMIT 1), l.packs) AS Packs,
            coalesce((SELECT c.quantity FROM order_line_change c CROSS JOIN standing_entry s ON s.id = c.entry_id
                WHERE c.order_id = l.order_id AND c.item_id = l.item_id AND s.date <= @asOf AND c.quantity IS NOT NULL
                ORDER BY c.entry_id DESC LIMIT 1), l.quantity) AS Quantity,
            coalesce((SELECT c.price FROM order_line_change c CROSS JOIN standing_entry s ON s.id = c.entry_id
                WHERE c.order_id = l.order_id AND c.item_id = l.item_id AND s.date <= @asOf AND c.price IS NOT NULL
                ORDER BY c.entry_id DESC LIMIT 1), l.price) AS Price,
            coalesce((SELECT c.expected_on FROM order_line_change c CROSS JOIN standing_entry s ON s.id = c.entry_id
                WHERE c.order_id = l.order_id AND c.item_id = l.item_id AND s.date <= @asOf AND c.expected_on IS NOT NULL
                ORDER BY c.entry_id DESC LIMIT 1), l.expected_on) AS ExpectedOn,
            coalesce((SELECT c.back_ordered FROM order_line_change c CROSS JOIN standing_entry s ON s.id = c.entry_id
                WHERE c.order_id = l.order_id AND c.item_id = l.item_id AND s.date <= @asOf AND c.back_ordered IS NOT NULL
                ORDER BY c.entry_id DESC LIMIT 1), l.back_ordered) AS BackOrdered,
            EXISTS (SELECT 1 FROM order_line_change c CROSS JOIN standing_entry s ON s.id = c.entry_id
                WHERE c.order_id = l.order_id AND c.item_id = l.item_id AND s.date <= @asOf AND c.cancelled = 1) AS Cancelled,
            (SELECT coalesce(sum(d.quantity), 0) FROM order_delivery d CROSS JOIN standing_entry s ON s.id = d.entry_id
                WHERE d.order_id = l.order_id AND d.item_id = l.item_id AND s.date <= @asOf) AS Delivered
        FROM purchase_order o CROSS JOIN standing_entry e ON e.id = o.entry_id JOIN order_line l ON l.order_id = o.entry_id JOIN item i ON i.id =
            l.item_id
        WHERE e.date <= @asOf ORDER BY o.entry_id, l.number
        """,
        new { asOf });

    private IEnumerable<PriceRise> PriceRises(string asOf) => connection.Query<RiseRow>(
        """
        SELECT i.code AS Item, r.starts_on AS StartsOn, r.thousandths AS Thousandths
        FROM price_rise r CROSS JOIN standing_entry e ON e.id = r.entry_id JOIN item i ON i.id = r.item_id
        WHERE e.date <= @asOf AND r.starts_on > @asOf ORDER BY r.entry_id
        """,
        new { asOf })
        .Select(row => new PriceRise(row.Item, Days.Read(row.StartsOn), row.Thousandths));

    private IEnumerable<OrderTerms> Terms(string asOf) => connection.Query<TermsRow>(
        """
        SELECT i.code AS Item, t.cover_days AS CoverDays, t.window_opens AS Opens, t.window_closes AS Closes, t.order_cost AS OrderCost,
            t.holding_thousandths AS HoldingThousandths
        FROM order_terms t CROSS JOIN standing_entry e ON e.id = t.entry_id JOIN item i ON i.id = t.item_id
        WHERE e.date <= @asOf ORDER BY t.entry_id
        """,
        new { asOf })
        .Select(row => new OrderTerms(
            row.Item, row.CoverDays, Annual(row.Opens), Annual(row.Closes), row.OrderCost is { } cost ? new Money(cost) : null,
                row.HoldingThousandths));

    private static Order ToOrder(IReadOnlyList<LineRow> rows, Holdings holdings) => new(
        rows[0].Code, Days.Read(rows[0].PlacedOn), rows[0].Supplier, rows[0].Prepaid == 1,
        [
            .. rows.Select(row =>
            {
                var item = holdings.Item(row.Item)!;
                return new OrderLine(
                    item.Code, row.Packs, item.Of(row.Quantity), new(row.Price), Days.ReadOptional(row.ExpectedOn), row.BackOrdered == 1,
                    item.Of(row.Delivered), row.Cancelled == 1);
            }),
        ]);

    private static AnnualDate? Annual(string? text) => text is null ? null
        : Dates.ParseAnnual(text) ?? throw new LedgerFileException(
            $"the file holds \"{text}\" where a month and day belong; run `trayledger check`");

    internal sealed record LineRow(
        long OrderId, string Code, string PlacedOn, string Supplier, long Prepaid, string Item, long Packs, long Quantity, long Price,
        string? ExpectedOn, long BackOrdered, long Cancelled, long Delivered);

    internal sealed record RiseRow(string Item, string StartsOn, int Thousandths);

    internal sealed record TermsRow(string Item, int? CoverDays, string? Opens, string? Closes, long? OrderCost, int? HoldingThousandths);
}
