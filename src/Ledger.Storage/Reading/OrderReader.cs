using Ledger.Storage.Files;

namespace Ledger.Storage.Reading;

/// <summary>Reads what is on order on a day, the announced price rises and the order terms.</summary>
internal sealed class OrderReader(Snapshot snapshot)
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

    /// <summary>
    /// The lines of every order, as it stands now. A closed order falls out when it is put into the book.
    /// </summary>
    private IEnumerable<LineRow> Lines(string asOf)
    {
        var changes = Changes(asOf);
        return snapshot.Connection.Query<LineRow>(
            """
            SELECT o.entry_id AS OrderId, o.code AS Code, e.date AS PlacedOn, o.supplier AS Supplier,
                o.prepaid AS Prepaid,
                l.item_id AS ItemId, i.code AS Item, l.packs AS Packs, l.quantity AS Quantity, l.price AS Price,
                l.expected_on AS ExpectedOn, l.back_ordered AS BackOrdered,
                (SELECT coalesce(sum(d.quantity), 0) FROM order_delivery d
                    CROSS JOIN standing_entry s ON s.id = d.entry_id
                    WHERE d.order_id = l.order_id AND d.item_id = l.item_id AND s.date <= @asOf) AS Delivered
            FROM purchase_order o CROSS JOIN standing_entry e ON e.id = o.entry_id
                JOIN order_line l ON l.order_id = o.entry_id
                JOIN item i ON i.id = l.item_id
            WHERE e.date <= @asOf ORDER BY o.entry_id, l.number
            """,
            new { asOf })
            .Select(line => changes[(line.OrderId, line.ItemId)].Aggregate(line, Changed));
    }

    private ILookup<(long OrderId, long ItemId), ChangeRow> Changes(string asOf) =>
        snapshot.Connection.Query<ChangeRow>(
            """
            SELECT c.order_id AS OrderId, c.item_id AS ItemId, c.packs AS Packs, c.quantity AS Quantity,
                c.price AS Price,
                c.expected_on AS ExpectedOn, c.back_ordered AS BackOrdered, c.cancelled AS Cancelled
            FROM order_line_change c CROSS JOIN standing_entry s ON s.id = c.entry_id
            WHERE s.date <= @asOf ORDER BY c.entry_id
            """,
            new { asOf })
            .ToLookup(row => (row.OrderId, row.ItemId));

    /// <summary>
    /// The last word about each figure counts; what a change does not name stays. A cancelled line stays cancelled.
    /// </summary>
    private static LineRow Changed(LineRow line, ChangeRow change) => line with
    {
        Packs = change.Packs ?? line.Packs,
        Quantity = change.Quantity ?? line.Quantity,
        Price = change.Price ?? line.Price,
        ExpectedOn = change.ExpectedOn ?? line.ExpectedOn,
        BackOrdered = change.BackOrdered ?? line.BackOrdered,
        IsCancelled = line.IsCancelled || change.Cancelled == 1,
    };

    private IEnumerable<PriceRise> PriceRises(string asOf) => snapshot.Connection.Query<RiseRow>(
        """
        SELECT i.code AS Item, r.starts_on AS StartsOn, r.thousandths AS Thousandths
        FROM price_rise r CROSS JOIN standing_entry e ON e.id = r.entry_id JOIN item i ON i.id = r.item_id
        WHERE e.date <= @asOf AND r.starts_on > @asOf ORDER BY r.entry_id
        """,
        new { asOf })
        .Select(row => new PriceRise(row.Item, Days.Read(row.StartsOn), row.Thousandths));

    private IEnumerable<OrderTerms> Terms(string asOf) => snapshot.Connection.Query<TermsRow>(
        """
        SELECT i.code AS Item, t.cover_days AS CoverDays, t.window_opens AS Opens, t.window_closes AS Closes,
            t.order_cost AS OrderCost,
            t.holding_thousandths AS HoldingThousandths
        FROM order_terms t CROSS JOIN standing_entry e ON e.id = t.entry_id JOIN item i ON i.id = t.item_id
        WHERE e.date <= @asOf ORDER BY t.entry_id
        """,
        new { asOf })
        .Select(row => new OrderTerms(
            row.Item, row.CoverDays, Annual(row.Opens), Annual(row.Closes),
            row.OrderCost is { } cost ? new Money(cost) : null,
                row.HoldingThousandths));

    private static Order ToOrder(IReadOnlyList<LineRow> rows, Holdings holdings) => new(
        rows[0].Code, Days.Read(rows[0].PlacedOn), rows[0].Supplier, rows[0].Prepaid == 1,
        [
            .. rows.Select(row =>
            {
                var item = holdings.ItemOf(row.Item);
                return new OrderLine(
                    item.Code, row.Packs, item.Of(row.Quantity), new(row.Price), Days.ReadOptional(row.ExpectedOn),
                    row.BackOrdered == 1, item.Of(row.Delivered), row.IsCancelled);
            }),
        ]);

    private static AnnualDate? Annual(string? text) => text is null ? null
        : Dates.ParseAnnual(text) ?? throw new LedgerFileException(
            $"the file holds \"{text}\" where a month and day belong; run `trayledger check`");

    internal sealed record LineRow(
        long OrderId, string Code, string PlacedOn, string Supplier, long Prepaid, long ItemId,
        string Item, long Packs, long Quantity, long Price, string? ExpectedOn, long BackOrdered, long Delivered)
    {
        public bool IsCancelled { get; init; }
    }

    internal sealed record ChangeRow(
        long OrderId, long ItemId, long? Packs, long? Quantity, long? Price, string? ExpectedOn,
        long? BackOrdered, long Cancelled);

    internal sealed record RiseRow(string Item, string StartsOn, int Thousandths);

    internal sealed record TermsRow(string Item, int? CoverDays, string? Opens, string? Closes,
        long? OrderCost, int? HoldingThousandths);
}
